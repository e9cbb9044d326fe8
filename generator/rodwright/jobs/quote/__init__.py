"""What is asked for a unit: a quote for the client, the costing for the maker."""

from __future__ import annotations

from rodwright.jobs.quote.quoted_json import quoted_json
from rodwright.jobs.quote.quoting import Quoted, quote

__all__ = ["Quoted", "quote", "quoted_json"]
