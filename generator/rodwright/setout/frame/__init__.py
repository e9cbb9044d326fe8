"""The face frame, and what holds it."""
