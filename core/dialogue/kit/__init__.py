"""Shared by all conversations: events, common effects and messages, command rows, the step builder."""
