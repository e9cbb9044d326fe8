"""Property tests take fresh examples on a developer's machine and the same ones in CI.

None may fail because a machine is slow or busy: no example has a time limit.
"""

from __future__ import annotations

import os

from hypothesis import HealthCheck, settings

settings.register_profile(
    "suite", deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True
)
settings.register_profile("ci", settings.get_profile("suite"), derandomize=True, database=None)
settings.load_profile("ci" if os.environ.get("CI") else "suite")
