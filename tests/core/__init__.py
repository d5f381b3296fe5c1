"""Tests of the domain."""
