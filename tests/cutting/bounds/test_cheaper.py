"""Plans that cost less, or the proof that there is none."""

from __future__ import annotations
