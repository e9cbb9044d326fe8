"""What a test wants to be installed."""

from __future__ import annotations

import os

import pytest


def need(there: object, what: str) -> None:
    """Skip a test where ``what`` it wants isn't ``there``; in CI, where all is to be, fail it."""
    if not there:
        assert not os.environ.get("CI"), f"needs {what}"
        pytest.skip(f"needs {what}")
