"""Computations for decisions: pure."""
