"""Rods: every size of a unit along its height, its width and its depth, full size, from one end.

A rod is the joiner's setting-out board: a lath with every line along one direction on it, from
which all pieces are marked out without measuring again.
"""
