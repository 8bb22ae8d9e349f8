"""Parts and minutes of an hour."""
