"""Pure geometry: boxes, even spacing, tidy packing. No football in here; lengths in metres."""
