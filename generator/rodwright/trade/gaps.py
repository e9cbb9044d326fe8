"""Gaps and allowances: what is left free, and what is left on to be trimmed, mm.

Common practice, no source, unless said.
"""

GLUE_UP_TRIM = 6.0
"""Left on layers in length and width, trimmed after glue-up."""
