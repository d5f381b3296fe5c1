"""What every part of `bot` builds on: clock, settings, errors, log, metrics, retry rules, and who reads a message."""
