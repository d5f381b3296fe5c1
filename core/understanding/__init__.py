"""From a message to readings: several answers in one text, and whether a value is plausible."""
