"""From an inbox row to a committed step: load facts, decide, apply the effects, in one transaction."""
