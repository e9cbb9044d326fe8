"""What loads count for: how much of them lasts, and by how much they are raised for strength."""

from __future__ import annotations

from rodwright.trade.sources import Source

PSI2 = 0.8
"""The share of what is stored that counts as lying there for good: category E, storage."""
PSI2_SOURCE = Source("EN 1990:2002, table A1.1, category E", seen=False)

PERMANENT, VARIABLE = 1.35, 1.5
"""Own weight and what is stored count for so much where strength is judged."""
FACTORS = Source("EN 1990:2002, table A1.2(B)", seen=False)
