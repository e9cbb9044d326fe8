"""Finite elements of wood, added to those of PyNiteFEA.

PyNiteFEA's quads bend alike in all directions and its springs work along themselves alone.
Boards are stiffer along the grain, and joints give way in some directions and not in others, so
both get an element derived from PyNiteFEA's own, which assembles, supports and solves them.
N, mm and radians; what is global is the unit frame.
"""

from __future__ import annotations

from itertools import product
from typing import TYPE_CHECKING, Any

import numpy as np
from Pynite.Quad3D import Quad3D
from Pynite.Spring3D import Spring3D

from rodwright.geometry import Vector, minus
from rodwright.strength.model.sheet import Sheet

if TYPE_CHECKING:
    from Pynite import FEModel3D

NO_MATERIAL = "none"
"""PyNiteFEA asks for a material of each quad; a plate's stiffness is its own."""
GAUSS = 3**-0.5
"""Gauss's places on either side of the middle."""
IN_PLANE = [5, 11, 17, 23]
"""The freedoms that turn in the plane of a plate."""
BOUND = 1.0
"""How stiffly turns in the plane are bound to the material's, as a share of its shear modulus."""


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

    def ke(self) -> Any:
        """The stiffness in its own axes, 24 x 24.

        PyNiteFEA holds turns in the plane of the plate by weak springs to what doesn't move.
        Joints whose place is beside a node need more, and less of that: such turns are bound to
        those of the plate's own material instead (Hughes and Brezzi, Computer Methods in Applied
        Mechanics and Engineering 72, 1989; from memory).
        """
        whole = super().ke()
        whole[IN_PLANE, IN_PLANE] = 0.0
        for xi, eta in product((-GAUSS, GAUSS), repeat=2):
            jacobian = self.J(xi, eta)
            slopes = np.linalg.inv(jacobian) @ np.array(
                [[eta - 1, 1 - eta, 1 + eta, -1 - eta], [xi - 1, -1 - xi, 1 + xi, 1 - xi]]
            )
            lag = np.zeros(24)
            lag[0::6], lag[1::6] = slopes[1] / 8, -slopes[0] / 8
            lag[5::6] = [self.N_i(corner, xi, eta) for corner in (1, 2, 3, 4)]
            weight = BOUND * self.sheet.membrane_shear * abs(np.linalg.det(jacobian))
            whole += weight * np.outer(lag, lag)
        return whole

    def Ke(self) -> Any:  # noqa: N802
        """The global stiffness, 24 x 24."""
        if self.key not in self.known:
            self.known[self.key] = super().Ke()
        return self.known[self.key]

    def FER(self, combo_name: str = "Combo 1") -> Any:  # noqa: ARG002, N802
        """What holds it still under its own loads, 24 x 1: nothing, as all loads are on nodes."""
        return np.zeros((24, 1))


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
