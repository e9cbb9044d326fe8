"""Meshes cut by what their sides show, and where their points lie in pictures; by hand."""

from __future__ import annotations

import numpy as np
import pytest

from rodwright.handover.dressed import Dress, Look, Pictures, cut_by_side, look_at, places
from rodwright.handover.gltf import flat_mesh
from rodwright.pictures.triangles import Mesh

SIZE = (600.0, 200.0, 20.0)
BOX = flat_mesh((SIZE, ()))
PICTURES = Pictures(b"face", b"edge", b"end", (1200.0, 400.0, 20.0))
WOOD = Look("wood", "#c0a080", 0.5, pictures=PICTURES)
TAPE = Look("tape", "#202020", 0.4)
VENEER = Look("veneer", "#a08060", 0.5, pictures=PICTURES)


def span(mesh: Mesh) -> list[float]:
    return np.ptp(mesh.points, axis=0).tolist()


def test_a_plain_part_is_one_mesh() -> None:
    cut = cut_by_side(BOX, SIZE, Dress(TAPE))
    assert list(cut) == ["face"]
    assert len(cut["face"].triangles) == len(BOX.triangles)


def test_a_board_shows_faces_edges_and_ends() -> None:
    cut = cut_by_side(BOX, SIZE, Dress(WOOD))
    assert {side: len(each.triangles) for side, each in cut.items()} == {
        "face": 4,
        "edge": 4,
        "end": 4,
    }
    assert set(cut["edge"].points[:, 1]) == {0.0, 200.0}
    assert set(cut["end"].points[:, 0]) == {0.0, 600.0}
    across = cut_by_side(BOX, SIZE, Dress(WOOD, across=True))
    assert set(across["end"].points[:, 1]) == {0.0, 200.0}


def test_what_is_glued_on_an_edge_is_there_and_nowhere_else() -> None:
    dress = Dress(WOOD, {"-y": VENEER, "+x": TAPE})
    cut = cut_by_side(BOX, SIZE, dress)
    assert span(cut["-y"]) == [600.0, 0.0, 20.0]
    assert set(cut["-y"].points[:, 1]) == {0.0}
    assert set(cut["edge"].points[:, 1]) == {200.0}
    assert set(cut["+x"].points[:, 0]) == {600.0}
    assert look_at(dress, "-y") == (VENEER, b"edge")
    assert look_at(dress, "+x") == (TAPE, None)
    assert look_at(dress, "end") == (WOOD, b"end")
    # Triangles that look out of the edge, but lie 5 mm within: a rebate's.
    inner = Mesh(BOX.points * [1, 0.95, 1] + [0, 5, 0], BOX.normals, BOX.triangles)
    assert "-y" not in cut_by_side(inner, SIZE, dress)


@pytest.mark.parametrize("across", [False, True])
def test_places_run_along_and_across_the_grain_at_true_scale(across: bool) -> None:
    dress = Dress(WOOD, across=across, lie=(-1.0, 1500.0, 1.0, 100.0))
    cut = cut_by_side(BOX, SIZE, dress)
    along, beside = (200.0, 600.0) if across else (600.0, 200.0)
    found = {side: np.ptp(places(each, dress, side), axis=0).tolist() for side, each in cut.items()}
    assert found["face"] == pytest.approx([along / 1200, beside / 400])
    assert found["edge"] == pytest.approx([along / 1200, 1.0])  # from the reverse to the face
    assert found["end"] == pytest.approx([beside / 400, 1.0])
    # The near corner: 1500 mm on along the grain is 300 mm into the next picture.
    face = cut["face"]
    corner = int(np.argmin(np.abs(face.points[:, :2]).sum(axis=1)))
    assert places(face, dress, "face")[corner] == pytest.approx([300 / 1200, 100 / 400])


def test_what_has_no_pictures_has_no_places() -> None:
    with pytest.raises(ValueError, match="tape"):
        places(BOX, Dress(TAPE), "face")
