"""Simulated players play the sentences: scene, kernel, recording."""
