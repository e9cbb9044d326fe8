"""`unit.json` and its reader."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from kit.samples import bookcase, worked_part
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.geometry import Box
from rodwright.handover.lists import like_parts
from rodwright.handover.unit_json import read_unit, unit_json, unit_schema
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import unit_weight
from rodwright.problems import KeyPath, ProblemsError
from rodwright.setout import set_out_unit
from rodwright.unit import (
    Bevel,
    Blank,
    Clearance,
    Easing,
    Edging,
    Fixing,
    Grain,
    Groove,
    Hole,
    Housing,
    Joint,
    JointKind,
    Loading,
    Mitre,
    Mortise,
    Notch,
    Opening,
    OpeningPlane,
    Part,
    Piece,
    Placement,
    PocketHole,
    Rebate,
    Role,
    Slide,
    Stock,
    Surface,
    Swing,
    Unit,
    Working,
)
from rodwright.unit.laid import laid_unit
from rodwright.unit.shop_part import shop_part
from rodwright.wishes import read_spec

VALIDATOR = Draft202012Validator(unit_schema())


def full_unit() -> Unit:
    """A unit that has something in every field."""
    part = worked_part()
    stock = replace(part.blank.stock, pieces=(Piece(2400.0, 150.0, 4),), price=9.8)
    blank = replace(part.blank, stock=stock, trim_length=20.0)
    part = replace(
        part,
        blank=blank,
        lipped=("front",),
        withdraw=(0.0, -1.0, 0.0),
        edged=(Edging(Surface.FACE_EDGE, "abs", 0.8, "white"),),
    )
    return Unit(
        "Étagère “1/3”",
        Box((0.0, 0.0, 0.0), (400.0, 120.0, 0.1 + 0.2)),
        (part, replace(part, ref="X2")),
        (
            Joint(
                JointKind.RESTING,
                "X1",
                "X2",
                (1.0, 2.0, 1 / 3),
                (Fixing("pin", 4, "5 x 16", "5 x 8"),),
            ),
        ),
        (Clearance("X1", "X2", 1.5),),
        Opening(1209.0, 2027.0, None),
        0.5,
        "in",
        motions=(Swing(("X1",), (400.0, -20.0), -110.0), Slide(("X1", "X2"), (0.0, -300.0, 0.0))),
        fixings=(Fixing("handle", 2, "128 centres"),),
        levelling=15.0,
    )


@pytest.mark.parametrize("unit", [bookcase(), full_unit()], ids=["bookcase", "full"])
def test_what_is_written_reads_back_equal(unit: Unit, tmp_path: Path) -> None:
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit


@pytest.mark.parametrize("name", model_names())
def test_every_ready_model_reads_back_equal(name: str, tmp_path: Path) -> None:
    unit = set_out_unit(read_spec(model_path(name)).spec)
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit


# Any finite figures and any text that UTF-8 can hold, on blanks that keep some wood.
FIGURES = st.floats(-1e4, 1e4)
SMALL = st.floats(0.1, 5.0)
TEXTS = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=12)
VECTORS = st.tuples(FIGURES, FIGURES, FIGURES)
PLACES = st.floats(10.0, 90.0)
STARTS = st.floats(0.0, 40.0)
STOPS = st.none() | st.floats(50.0, 95.0)
FACES = st.sampled_from([Surface.FACE, Surface.REVERSE])
EDGES = st.sampled_from([Surface.FACE_EDGE, Surface.BACK_EDGE])
ENDS = st.sampled_from([Surface.NEAR_END, Surface.FAR_END])
WORKINGS: st.SearchStrategy[Working] = st.one_of(
    st.builds(Rebate, FACES, EDGES | ENDS, SMALL, SMALL, STARTS, STOPS),
    st.builds(Groove, FACES | EDGES, SMALL, SMALL, SMALL, STARTS, STOPS),
    st.builds(Housing, FACES, PLACES, SMALL, SMALL, STARTS, STOPS),
    st.builds(Notch, PLACES, PLACES, SMALL, SMALL),
    st.builds(Mitre, ENDS, st.floats(1.0, 20.0), EDGES | FACES),
    st.builds(Easing, FACES, EDGES, SMALL, STARTS, STOPS),
    st.builds(Hole, FACES, st.tuples(PLACES, PLACES), SMALL, st.none() | SMALL),
    st.builds(Bevel, FACES, EDGES | ENDS, SMALL, SMALL),
    st.builds(
        Mortise, FACES, st.tuples(PLACES, PLACES), st.tuples(SMALL, SMALL), SMALL, st.booleans()
    ),
    st.builds(PocketHole, FACES, ENDS, PLACES, SMALL, SMALL, SMALL, SMALL),
)


@st.composite
def units(draw: st.DrawFn) -> Unit:
    pieces = st.builds(Piece, PLACES, PLACES, st.integers(1, 9))
    stocks = draw(
        st.lists(
            st.builds(
                Stock,
                TEXTS,
                st.sampled_from(["sheet", "board"]),
                TEXTS,
                SMALL,
                st.sampled_from(Grain),
                st.floats(100.0, 1000.0),
                TEXTS,
                st.just("#a1b2c3"),
                st.none() | st.tuples(PLACES, PLACES),
                st.lists(pieces, max_size=2).map(tuple),
                st.none() | SMALL,
            ),
            min_size=1,
            max_size=3,
            unique_by=lambda stock: stock.name,
        )
    )
    lengths = st.floats(100.0, 3000.0)
    blanks = st.builds(
        Blank,
        lengths,
        lengths,
        st.floats(12.0, 40.0),
        st.sampled_from(stocks),
        st.sampled_from(Grain),
        st.lists(st.sampled_from(Surface), max_size=3).map(tuple),
        SMALL,
        SMALL,
        st.lists(st.sampled_from(Surface), max_size=2).map(tuple),
    )
    parts = st.builds(
        Part,
        TEXTS,
        TEXTS,
        st.sampled_from(Role),
        TEXTS,
        blanks,
        st.builds(Placement, VECTORS, VECTORS, VECTORS),
        st.lists(WORKINGS, max_size=2).map(tuple),
        st.lists(TEXTS, max_size=2).map(tuple),
        VECTORS,
        st.lists(st.builds(Edging, st.sampled_from(Surface), TEXTS, SMALL, TEXTS), max_size=2).map(
            tuple
        ),
    )
    fixing = st.builds(Fixing, TEXTS, st.integers(1, 99), TEXTS, TEXTS)
    fixings = st.lists(fixing, max_size=2).map(tuple)
    refs = st.lists(TEXTS, max_size=2).map(tuple)
    motion = st.builds(Swing, refs, st.tuples(FIGURES, FIGURES), FIGURES) | st.builds(
        Slide, refs, VECTORS
    )
    joints = st.builds(Joint, st.sampled_from(JointKind), TEXTS, TEXTS, VECTORS, fixings)
    return Unit(
        draw(TEXTS),
        draw(st.builds(Box, VECTORS, VECTORS)),
        tuple(draw(st.lists(parts, min_size=1, max_size=3, unique_by=lambda part: part.ref))),
        tuple(draw(st.lists(joints, max_size=2))),
        tuple(draw(st.lists(st.builds(Clearance, TEXTS, TEXTS, SMALL), max_size=2))),
        draw(st.none() | st.builds(Opening, FIGURES, FIGURES, st.none() | FIGURES)),
        draw(SMALL),
        draw(st.sampled_from(["mm", "in"])),
        motions=tuple(draw(st.lists(motion, max_size=2))),
        fixings=draw(fixings),
        levelling=draw(st.none() | SMALL),
    )


@settings(max_examples=60)
@given(unit=units())
def test_any_unit_reads_back_equal(unit: Unit, tmp_path_factory: pytest.TempPathFactory) -> None:
    path = tmp_path_factory.getbasetemp() / "any-unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit


def test_the_document_says_what_its_figures_mean() -> None:
    document = json.loads(unit_json(bookcase()))
    assert document["schema_version"] == 1
    assert document["measures"]["length"] == "mm"
    assert set(document["frames"]) == {"unit", "part", "surfaces", "as_cut", "matrix"}


def test_the_show_face_is_what_the_blank_says_and_nothing_else() -> None:
    """A side that is worked on its inner face lies with its show face down."""
    document = json.loads(unit_json(laid_unit(bookcase())))
    assert "show face" not in document["frames"]["part"]
    side, *_ = document["parts"]
    assert side["blank"]["show_surfaces"] == ["reverse"]
    assert {working["surface"] for working in side["workings"]} == {"face"}


def test_the_outline_as_cut_says_where_the_part_frame_lies_in_its_file() -> None:
    unit = bookcase()
    side = unit.part("SD1")
    edging = (Edging(Surface.FACE_EDGE, "veneer", 0.6), Edging(Surface.FAR_END, "veneer", 0.6))
    edged = replace(side, edged=edging)
    document = json.loads(unit_json(replace(unit, parts=(edged,), joints=())))
    assert document["parts"][0]["as_cut"] == {
        "size": [999.4, 299.4, 18.0],
        "finished": {"low": [0.0, -0.6, 0.0], "high": [1000.0, 299.4, 18.0]},
    }


def test_a_document_from_before_there_were_loads_still_reads(tmp_path: Path) -> None:
    unit = unit_from("size: {width: 600, height: 700, depth: 300}\nloads: books\nwall: studs")
    assert unit.loading.loads
    document = json.loads(unit_json(unit))
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document))
    assert read_unit(path) == unit
    del document["loading"]
    path.write_text(json.dumps(document))
    assert read_unit(path) == replace(unit, loading=Loading())


def test_a_document_from_before_there_were_motions_still_reads(tmp_path: Path) -> None:
    document = json.loads(unit_json(bookcase()))
    for key in ("motions", "fixings", "levelling", "moisture"):
        del document[key]
    for part in document["parts"]:
        del part["edged"]
    for joint in document["joints"]:
        for fixing in joint["fixings"]:
            del fixing["size"], fixing["pilot"]
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document))
    assert read_unit(path) == bookcase()


@pytest.mark.parametrize("name", model_names())
def test_a_place_in_the_document_is_that_place_in_the_parts_file(name: str) -> None:
    """Once the finished outline's corner in the blank as cut is added to it."""
    unit = laid_unit(set_out_unit(read_spec(model_path(name)).spec))
    recorded = {part["ref"]: part for part in json.loads(unit_json(unit))["parts"]}
    for parts in like_parts(unit):
        shop = shop_part(parts)
        record = recorded[parts[0].ref]
        assert record["as_cut"]["size"] == pytest.approx(shop.part.blank.size)
        low = record["as_cut"]["finished"]["low"]
        bores = [each for each in shop.part.workings if isinstance(each, Hole)]
        told = [each for each in record["workings"] if each["kind"] == "hole"]
        for bore, hole in zip(bores, told, strict=True):
            assert hole["surface"] == bore.surface
            axes = [axis for axis in range(3) if axis != bore.surface.axis]
            moved = [at + low[axis] for at, axis in zip(hole["position"], axes, strict=True)]
            assert moved == pytest.approx(bore.position)


def test_matrices_take_the_blank_to_its_place() -> None:
    unit = bookcase()
    for record, part in zip(json.loads(unit_json(unit))["parts"], unit.parts, strict=True):
        matrix = np.array(record["matrix"])
        assert math.isclose(np.linalg.det(matrix[:3, :3]), 1.0)
        corners = matrix @ [[0, part.blank.length], [0, part.blank.width],
                            [0, part.blank.thickness], [1, 1]]  # fmt: skip
        np.testing.assert_allclose(corners[:3].min(axis=1), part.bounds().low, atol=1e-9)
        np.testing.assert_allclose(corners[:3].max(axis=1), part.bounds().high, atol=1e-9)


def test_masses_add_up() -> None:
    document = json.loads(unit_json(bookcase()))
    total = sum(record["mass"] for record in document["parts"])
    assert total == pytest.approx(document["mass"], abs=1e-5)
    assert document["mass"] == pytest.approx(unit_weight(bookcase()), abs=1e-6)


def test_two_stocks_of_one_name_are_refused() -> None:
    unit = full_unit()
    first, second = unit.parts
    other = replace(second.blank.stock, density=1.0)
    parts = (first, replace(second, blank=replace(second.blank, stock=other)))
    with pytest.raises(ValueError, match="two different stocks are called `ash`"):
        unit_json(replace(unit, parts=parts))


@pytest.mark.parametrize(
    ("content", "message"),
    [
        (b"{", "isn't JSON"),
        (b"\xff\xfe\x00", "isn't JSON"),
        (b"[]", "isn't a unit of schema version 1"),
        (b'{"schema_version": 2}', "isn't a unit of schema version 1"),
        (b'{"schema_version": 1}', "doesn't hold a whole unit"),
    ],
)
def test_other_files_are_refused_in_plain_words(
    content: bytes, message: str, tmp_path: Path
) -> None:
    path = tmp_path / "unit.json"
    path.write_bytes(content)
    with pytest.raises(ProblemsError, match=message):
        read_unit(path)


def test_a_working_of_no_known_kind_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(bookcase()).replace(b'"housing"', b'"carving"'))
    with pytest.raises(ProblemsError, match="carving"):
        read_unit(path)


def test_a_file_that_isnt_there(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError, match="can't be read: No such file"):
        read_unit(tmp_path / "unit.json")


# --- the schema --------------------------------------------------------------------------

SCHEMA = Path(__file__).parents[2] / "docs" / "unit.schema.json"


def test_the_published_schema_is_current() -> None:
    """If not: rodwright schema unit > docs/unit.schema.json."""
    assert json.loads(SCHEMA.read_text(encoding="utf-8")) == unit_schema()


def test_the_schema_is_one() -> None:
    assert unit_schema()["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator.check_schema(unit_schema())


@pytest.mark.parametrize("name", model_names())
def test_every_ready_model_is_as_the_schema_says(name: str) -> None:
    document = json.loads(unit_json(set_out_unit(read_spec(model_path(name)).spec)))
    assert [each.message for each in VALIDATOR.iter_errors(document)] == []


def test_the_schema_describes_every_key_of_a_document() -> None:
    """And no other: a unit with something in every field has them all."""
    document = json.loads(unit_json(full_unit()))
    assert list(document) == list(unit_schema()["properties"])
    part = unit_schema()["$defs"]["Part"]
    assert set(document["parts"][0]) == set(part["properties"]) == set(part["required"])


@pytest.mark.parametrize(
    ("way", "value"),
    [
        (("parts", 0, "workings", 0, "kind"), "carving"),
        (("parts", 0, "workings", 0, "depth"), "deep"),
        (("parts", 0, "matrix"), None),
        (("stocks", "ash", "kind"), "log"),
        (("envelope", "low"), [0.0, 0.0]),
    ],
)
def test_the_schema_refuses_what_isnt_such_a_document(way: KeyPath, value: object) -> None:
    document = json.loads(unit_json(full_unit()))
    _put(document, way, value)
    assert not VALIDATOR.is_valid(document)


# --- documents that were tampered with -----------------------------------------------------


def _put(document: Any, way: KeyPath, value: object) -> None:
    *inner, last = way
    for step in inner:
        document = document[step]
    document[last] = value


def _ways(value: Any, way: KeyPath = ()) -> Iterator[KeyPath]:
    inside = value.items() if isinstance(value, dict) else enumerate(value)
    for step, each in inside:
        yield (*way, step)
        if isinstance(each, dict | list):
            yield from _ways(each, (*way, step))


ANYTHING = st.recursive(
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=6)
    | st.sampled_from(["oak", "case", "mm", "face", "housing", 10**400, "\ud800"]),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner, max_size=3)
    ),
    max_leaves=5,
)
DOCUMENT = unit_json(full_unit())
WAYS = sorted(_ways(json.loads(DOCUMENT)), key=str)


@settings(max_examples=300)
@given(way=st.sampled_from(WAYS), value=ANYTHING | st.just("leave it out"))
def test_what_was_tampered_with_is_a_unit_still_or_told(
    way: KeyPath, value: object, tmp_path_factory: pytest.TempPathFactory
) -> None:
    document = json.loads(DOCUMENT)
    if value == "leave it out":
        *above, last = way
        holder = document
        for step in above:
            holder = holder[step]
        del holder[last]
    else:
        _put(document, way, value)
    path = tmp_path_factory.getbasetemp() / "tampered.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    try:
        assert isinstance(read_unit(path), Unit)
    except ProblemsError as error:
        assert all(str(path) in problem.message for problem in error.problems)


@pytest.mark.parametrize(
    ("way", "value", "told"),
    [
        (("parts", 1, "workings", 0, "width"), "wide", "`parts[1].workings[0].width`: "),
        (("parts", 0, "blank", "stock"), "teak", "`parts[0].blank.stock`: No stock is called"),
        (("stocks", "ash", "density"), None, "`stocks.ash.density`: "),
        (("parts", 1, "ref"), "X1", "two parts of a unit have the same ref"),
        (("parts", 0, "placement", "origin", 2), float("inf"), "Figures should be finite"),
        (("parts",), {}, "`parts`: Input should be a valid"),
        (("stocks",), [], "`stocks`: Input should be"),
        (("opening", "shape"), {"front": [[0, 0]]}, "`opening.shape.front"),
    ],
)
def test_where_a_document_is_wrong(way: KeyPath, value: object, told: str, tmp_path: Path) -> None:
    document = json.loads(DOCUMENT)
    _put(document, way, value)
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    with pytest.raises(ProblemsError) as caught:
        read_unit(path)
    assert told in str(caught.value)


def test_what_is_read_is_written_again_alike(tmp_path: Path) -> None:
    path = tmp_path / "unit.json"
    path.write_bytes(DOCUMENT)
    assert unit_json(read_unit(path)) == DOCUMENT


@settings(max_examples=30)
@given(wish=wishes())
def test_the_unit_of_any_wish_reads_back_equal(
    wish: Wish, tmp_path_factory: pytest.TempPathFactory
) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        return
    path = tmp_path_factory.getbasetemp() / "wished.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit
    assert VALIDATOR.is_valid(json.loads(path.read_bytes()))


def test_an_opening_from_before_its_walls_were_lines(tmp_path: Path) -> None:
    """Documents that hold nothing but corners are read as straight."""
    unit = set_out_unit(read_spec(model_path("reading-alcove")).spec)
    assert unit.opening is not None and unit.opening.shape is not None
    document = json.loads(unit_json(unit))
    del document["opening"]["readings"]
    shape = document["opening"]["shape"]
    shape["front"] = shape["front"]["corners"]
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    found = read_unit(path).opening
    assert found is not None and found.shape is not None
    assert found.readings is None
    assert found.shape.front == OpeningPlane.straight(unit.opening.shape.front.corners)
