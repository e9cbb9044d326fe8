"""Handover: the files that leave the workshop's computer."""
