"""The opening as measured, and what of it a unit can use."""
