"""Lippings, edging, and biscuits in edges."""
