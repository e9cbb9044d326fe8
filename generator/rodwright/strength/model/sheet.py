"""How stiff a plate is."""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class Sheet:
    """How stiff a plate is, per mm of its width.

    Along its local x and y: ``membrane`` E t and ``bending`` E t3 / 12, of which ``membrane_shear``
    G t and ``twisting`` G t3 / 12 go with the shear in its plane; ``across`` is the shear through
    the thickness, 5/6 G t.  Poisson's ratio is 0: it is not known of most boards, and a strip then
    bends as a beam does.  N/mm and N mm.
    """

    membrane: tuple[float, float]
    membrane_shear: float
    bending: tuple[float, float]
    twisting: float
    across: tuple[float, float]

    def weaker(self, share: float) -> Sheet:
        """The same with a share of its bending stiffness along x."""
        if share == 1.0:
            return self
        return replace(self, bending=(self.bending[0] * share, self.bending[1]))
