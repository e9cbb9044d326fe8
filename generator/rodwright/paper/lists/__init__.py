"""Lists for the bench: what is cut, in the saw's order; hardware by the box; set-ups; labels."""
