"""Turnout: a practice is a working model, not a drawing."""

__version__ = "0.1.0"
