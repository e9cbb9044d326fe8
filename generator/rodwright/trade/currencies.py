"""Currencies: how finely money is counted in each."""

from __future__ import annotations

_FINER_OR_COARSER = {
    **dict.fromkeys(
        (
            *("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI"),
            *("VND", "VUV", "XAF", "XOF", "XPF"),
        ),
        0,
    ),
    **dict.fromkeys(("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"), 3),
    **dict.fromkeys(("CLF", "UYW"), 4),
}
"""Decimals of the minor unit of each currency that hasn't two: ISO 4217, list one (from memory)."""


def decimals_of(currency: str) -> int:
    """Decimals of an amount in a currency, by its code: 2 for EUR, 0 for JPY.

    A code that isn't known has two, as all but a few of ISO 4217's have (from memory).
    """
    return _FINER_OR_COARSER.get(currency, 2)
