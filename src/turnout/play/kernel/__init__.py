"""The playing itself: plain arrays, one function per trade idea, the player loop inside."""
