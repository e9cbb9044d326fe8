"""Cuts in their order: what is set, what is cut, what falls off."""
