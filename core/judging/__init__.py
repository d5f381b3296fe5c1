"""What readings mean: change against measurement error, trends, goals, training load, chart data."""
