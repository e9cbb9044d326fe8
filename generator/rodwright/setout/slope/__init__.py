"""A unit under a sloping ceiling."""
