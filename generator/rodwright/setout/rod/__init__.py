"""The rod: sizes and main lines, from which every part is taken."""
