"""Typer commands."""
