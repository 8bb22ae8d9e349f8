"""Fair turns: who plays where in every block, and the proof of how fair it can be."""
