"""Drawings for paper: what the maker takes to the site and the client signs."""
