"""A board by its name alone, without a stock: what is known of it, under a modulus of one's own."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.trade.given_strength import Given, counts_as, unknown_but_given, with_given
from rodwright.trade.materials import known_materials, material_called, near_materials
from rodwright.trade.mechanics import Family, Mechanics, mechanics_of
from rodwright.trade.sources import Figure, Source

__all__ = ["PlainBoard", "UnanswerableError"]

_HEAVY = Figure(800.0, "kg/m3", Source("assumed, on the safe side: it isn't known"))
_NO_GRAIN = (Family.MDF, Family.HARDBOARD, Family.CHIPBOARD, Family.GLASS)
_USUAL_THICKNESS = 18.0


class UnanswerableError(ValueError):
    """No shelf answers the question, and what to ask instead (``remedy``)."""

    def __init__(self, message: str, remedy: str) -> None:
        """``message`` says what is wrong, ``remedy`` what to do."""
        super().__init__(message)
        self.remedy = remedy


class PlainBoard:
    """A material; ``modulus`` is its maker's own, N/mm2, or None.

    Raises:
        UnanswerableError: nothing is known of how stiff it is.
    """

    def __init__(self, material: str, modulus: Figure | None = None) -> None:
        self.material = material
        self.modulus = modulus
        self._named = material_called(material)
        self._counted = counts_as("sheet", material)
        if self._named is None and modulus is None:
            near = near_materials(material)
            hint = f"{near} If not, give" if near else "Give"
            raise UnanswerableError(
                f"it isn't known how stiff `{material}` is",
                f'{hint} its modulus of elasticity: `--e "9300 N/mm2"` or `--e "1350000 psi"`. '
                f"Known are: {known_materials('board')}; {known_materials('sheet')}.",
            )

    @property
    def density(self) -> Figure:
        """kg/m3; where it isn't known, more than most boards weigh."""
        if self._named is None:
            return _HEAVY
        return Figure(self._named.density, "kg/m3", self._named.source)

    def known(self, thickness: float) -> Mechanics | None:
        """What is known of it ``thickness`` mm thick, in a heated room; None where its stiffness
        isn't."""
        base = mechanics_of(self.material, thickness)
        if self.modulus is None:
            return base
        if base is not None:
            own = {"along": self.modulus.value}
            return with_given(base, Given(own, base.characteristic, None, self.modulus.source))
        counted = self._counted or (Family.SOLID_WOOD, "solid timber")
        return unknown_but_given(self.material, self.density.value, counted, self.modulus, 1)

    def check(self, thickness: float | None, years: float) -> None:
        """Refuse a thickness (mm) or years that nothing is known of.

        Raises:
            UnanswerableError: its stiffness isn't known so thick, or not how it creeps.
        """
        known = self.known(thickness or _USUAL_THICKNESS)
        if known is None and thickness is not None:
            raise UnanswerableError(
                f"it isn't known how stiff `{self.material}` is {thickness:g} mm thick",
                'Give its modulus of elasticity: `--e "9300 N/mm2"`.',
            )
        if years > 0 and known is not None and known.creep is None:
            raise UnanswerableError(
                f"it isn't known how much `{self.material}` creeps in a heated room",
                "Ask for the sag at once, `--years 0`, or take another board.",
            )

    def notes(self, thickness: float | None, years: float) -> Iterator[str]:
        """What was taken for granted of it."""
        known = self.known(thickness or _USUAL_THICKNESS)
        if known is None or known.family not in _NO_GRAIN:
            yield "its grain, or that of its face, runs along the span"
        if known is not None and known.borrowed:
            yield f"its stiffness and strength are borrowed: {known.borrowed}"
        if self._named is not None:
            return
        yield f"its density isn't known: {_HEAVY.value:g} kg/m3 is assumed, on the safe side"
        if self._counted is None and years > 0:
            yield (
                "it is counted as solid timber for creep; put `plywood`, `MDF` or `chipboard` "
                "into its name if it is that"
            )
