"""Photographs of a unit in a room: scenes as plain data, path traced."""
