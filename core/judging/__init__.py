"""What readings mean: change against measurement error, trends, goals, training load, what a chart shows."""
