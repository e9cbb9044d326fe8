"""Property tests take fresh examples on a developer's machine and the same ones in CI."""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("ci", derandomize=True, database=None)
if os.environ.get("CI"):
    settings.load_profile("ci")
