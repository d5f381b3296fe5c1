"""Sentences people might write, invented, in six languages, and how well we understand them."""
