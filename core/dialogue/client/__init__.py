"""A client's conversation: its facts, states, messages and effects, and a module for each thing it is about."""
