"""Drawers, and what they run on."""
