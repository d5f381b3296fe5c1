"""From message text to readings: several answers in one message, and plausibility of values."""
