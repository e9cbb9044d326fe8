"""Figures of the trade, with their sources."""
