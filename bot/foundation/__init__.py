"""What every part of `bot` stands on: clock, settings, errors, log, metrics, retry rules, and who reads a message."""
