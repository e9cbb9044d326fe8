"""Checks: parts, solids and meshes are read, findings come out, nothing is changed."""
