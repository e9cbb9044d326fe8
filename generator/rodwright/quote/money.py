"""Amounts of money: worked out exactly, and rounded by one rule.

An amount is a decimal with as many places as its currency has.  What lies halfway between two of
them goes to the one farther from nothing, as makers reckon and spreadsheets round: rule B of ISO
80000-1, annex B (from memory).
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction


def rounded(amount: Fraction | Decimal, decimals: int) -> Decimal:
    """An amount to so many decimals, halves away from nothing.

    It is worked out in whole numbers, so that no digit is lost before.
    """
    scaled = abs(Fraction(amount)) * 10**decimals
    whole = int(scaled + Fraction(1, 2))
    return Decimal(whole if amount >= 0 else -whole).scaleb(-decimals)


def rounded_up(amount: Decimal, step: Decimal) -> Decimal:
    """An amount (0 or more), or the next multiple of a step (more than 0) above it."""
    steps = -(-Fraction(amount) // Fraction(step))
    return (steps * step).quantize(amount) if steps else amount
