"""Doors, and what they hang on."""
