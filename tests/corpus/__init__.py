"""Sentences people might write, invented by speakers of six languages, and how well we understand them."""
