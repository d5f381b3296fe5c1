"""A client's conversation: its facts, states, messages and effects, and a module per topic."""
