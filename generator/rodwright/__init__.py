"""Rodwright: from one spec to everything a fitted piece of furniture needs."""
