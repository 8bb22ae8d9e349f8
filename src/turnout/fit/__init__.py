"""Numbers, space, time and kit become a fitted evening that says why."""
