"""Questions put to the simulator."""
