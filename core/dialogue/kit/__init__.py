"""What every conversation is made of: events, the effects and messages all share, commands as rows, the step kit."""
