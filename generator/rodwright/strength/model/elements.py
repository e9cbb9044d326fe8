"""Finite elements of wood, added to those of PyNiteFEA.

PyNiteFEA's quads bend alike in all directions and its springs work along themselves alone.
Boards are stiffer along the grain, and joints give way in some directions and not in others, so
both get an element derived from PyNiteFEA's own, which assembles, supports and solves them.
N, mm and radians; what is global is the unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from Pynite.Quad3D import Quad3D
from Pynite.Spring3D import Spring3D

from rodwright.geometry import Vector, minus

if TYPE_CHECKING:
    from Pynite import FEModel3D

NO_MATERIAL = "none"
"""PyNiteFEA asks for a material of each quad; a plate's stiffness is its own."""


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


class Plate(Quad3D):  # type: ignore[misc]
    """A rectangular plate that is stiffer along one edge than along the other.

    The element is PyNiteFEA's (Katili's DKMQ in bending, bilinear in its plane); its
    stress-strain matrices are those of an orthotropic plate (Timoshenko and Woinowsky-Krieger,
    Theory of plates and shells, 2nd edition, article 85; from memory).  ``known`` holds the
    stiffness of plates that are alike, so that each is worked out once.
    """

    def __init__(
        self,
        name: str,
        nodes: tuple[Any, Any, Any, Any],
        sheet: Sheet,
        model: FEModel3D,
        known: dict[Any, Any],
    ) -> None:
        super().__init__(name, *nodes, 1.0, NO_MATERIAL, model)
        self.sheet, self.known = sheet, known
        i, j, n = (_place(node) for node in (nodes[0], nodes[1], nodes[3]))
        self.key = (sheet, minus(j, i), minus(n, i))

    def Cm(self) -> Any:  # noqa: N802  # PyNiteFEA's name
        """Membrane: forces per mm from strains."""
        return np.diag([*self.sheet.membrane, self.sheet.membrane_shear])

    def Hb(self) -> Any:  # noqa: N802
        """Bending: moments per mm from curvatures."""
        return np.diag([*self.sheet.bending, self.sheet.twisting])

    def Hs(self) -> Any:  # noqa: N802
        """Shear through the thickness: forces per mm from strains."""
        return np.diag(self.sheet.across)

    def phi_k(self, k: Any) -> float:
        """How much shear through the thickness counts along edge ``k`` beside
        bending: 12 D / (S L2)."""
        along = 0 if abs(self.dir_cos(k)[0]) > 0.5 else 1
        return float(12 * self.sheet.bending[along] / (self.sheet.across[along] * self.L_k(k) ** 2))

    def Ke(self) -> Any:  # noqa: N802
        """The global stiffness, 24 x 24."""
        if self.key not in self.known:
            self.known[self.key] = super().Ke()
        return self.known[self.key]


class Link(Spring3D):  # type: ignore[misc]
    """Two nodes held to each other by any 12 x 12 stiffness, global axes."""

    def __init__(self, name: str, i: Any, j: Any, stiffness: Any, model: FEModel3D) -> None:
        super().__init__(name, i, j, 0.0, model.load_combos)
        self.stiffness = stiffness

    def Ke(self) -> Any:  # noqa: N802
        """The global stiffness, 12 x 12."""
        return self.stiffness

    def F(self, combo_name: str = "Combo 1") -> Any:  # noqa: N802
        """The forces on its two nodes, 12 x 1."""
        return self.stiffness @ self.D(combo_name)


def _place(node: Any) -> Vector:
    return (node.X, node.Y, node.Z)
