"""What a spec says that a unit carries, as it is read and as it is refused."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from kit.specs import spec_from
from rodwright.problems import ProblemsError
from rodwright.wishes.loads import FloorSpec, LoadSpec, LoadsSpec
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.documents import read_document
from rodwright.wishes.reading.validation import validate

HEAD = """\
title: Shelves
size: {width: 900, height: 1000, depth: 300}
stock: {case: {kind: sheet, material: birch plywood, thickness: 18}}
carcass: {stock: case}
"""


def told(text: str) -> list[str]:
    """What is wrong with a spec, with line, column and remedy."""
    document = read_document(HEAD + text, "x.yaml")
    with pytest.raises(ProblemsError) as refused:
        validate(UnitSpec, document.data, document.places, "x.yaml")
    return [str(problem) for problem in refused.value.problems]


def test_short_and_long_say_the_same() -> None:
    short = spec_from("size: {width: 900}\nloads: books\ninterior: {load: 30 kg}\nfloor: carpet")
    long = spec_from(
        "size: {width: 900}\nloads: {of: books}\ninterior: {load: {of: 30 kg}}\n"
        "floor: {covering: carpet}"
    )
    assert (short.loads, short.interior.load) == (long.loads, long.interior.load)
    assert short.floor == long.floor
    assert isinstance(short.interior.load, LoadSpec)


def test_nothing_said() -> None:
    spec = spec_from("size: {width: 900}")
    assert (spec.loads, spec.floor, spec.wall) == (LoadsSpec(), FloorSpec(), None)
    assert (spec.loads.of, spec.loads.limit, spec.loads.years) == (None, 200, 10)


def test_bare_numbers_of_lengths_are_in_the_files_unit() -> None:
    spec = spec_from("unit: in\nsize: {width: 40}\ninterior: {load: {of: books, from: 1, to: 10}}")
    load = spec.interior.load
    assert load is not None
    assert (load.start, load.stop) == (25.4, 254)
    assert spec.floor.over == 36 * 25.4


ONE = "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`."
KEYS = "a use or weight or the keys `of`, `television`, `from`, `to`, `growing_to` and `points`"


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("loads: 25", f"x.yaml:5:8: `loads`: `25` has no unit\n  {ONE}"),
        ("loads: {of: 2.5}", f"x.yaml:5:13: `of`: `2.5` has no unit\n  {ONE}"),
        ("loads: -25 kg/m", f"x.yaml:5:8: `loads`: `-25 kg/m` is less than zero\n  {ONE}"),
        ("loads: nan kg/m", f"x.yaml:5:8: `loads`: `nan kg/m` is no number\n  {ONE}"),
        (
            "loads: 10 t/m",
            "x.yaml:5:8: `loads`: `10 t/m` is more than a shelf carries: at most 714.3 kg/m makes "
            "sense (ten times a row of large textbooks: A. Kaw, numerical methods notes, chapter "
            "03.00C, from pages per inch)\n  Check the figure and its unit.",
        ),
        (
            "loads: bokos",
            "x.yaml:5:8: `loads`: `bokos` isn't among what is known to lie on shelves; did you "
            "mean `books`?\n  Write `books`.",
        ),
        (
            "loads: clothes on a rail",
            "x.yaml:5:8: `loads`: `clothes on a rail` hangs, and nothing hangs here\n"
            "  Write `folded clothes` or a weight; on a rail, `load:` goes with the space that it "
            "hangs in.",
        ),
        (
            "interior: {load: television}",
            "x.yaml:5:18: `load`: no weight of a television is published\n"
            "  Take it from its data plate and write it: `television 18 kg`.",
        ),
        (
            "interior: {load: 680 kg/m3}",
            "x.yaml:5:18: `load`: `680 kg/m3` is a density, where a weight per length, a weight "
            f"per area or a weight is wanted\n  {ONE}",
        ),
        (
            "interior: {load: {television: 18 kg/m}}",
            "x.yaml:5:31: `television`: `18 kg/m` is a weight per length, where a weight is wanted"
            "\n  Write it like `30 kg` or `65 lb`.",
        ),
        (
            "interior: {load: {from: 100}}",
            "x.yaml:5:12: `load`: it doesn't say what is carried\n"
            "  Add `of:`, `television:` or `points:`.",
        ),
        (
            "interior: {load: {television: 18 kg, from: 100}}",
            "x.yaml:5:12: `load`: `from`, `to` and `growing_to` say where something lies, and "
            "nothing does\n  Add `of:` and what it is, or take them out.",
        ),
        (
            "interior: {load: {of: books, from: 300, to: 200}}",
            "x.yaml:5:12: `load`: `to` isn't farther to the right than `from`\n"
            "  Swap or mend the two.",
        ),
        (
            "interior: {load: {of: coats, points: [{weight: 3 kg, at: 100}]}}",
            "x.yaml:5:12: `load`: clothes hang on a rail from side to side\n"
            "  Leave `from`, `to`, `growing_to` and `points` out.",
        ),
        (
            "interior: {load: {of: 30 kg, growing_to: 40 kg}}",
            "x.yaml:5:12: `load`: a weight can't grow to a weight\n  Give both per metre or both "
            "per area: `of: 25 kg/m` and `growing_to: 40 kg/m`.",
        ),
        (
            "interior: {load: {of: books, growing_to: 40 kg/m2}}",
            "x.yaml:5:12: `load`: a weight per length can't grow to a weight per area\n  Give both "
            "per metre or both per area: `of: 25 kg/m` and `growing_to: 40 kg/m`.",
        ),
        (
            "interior: {shelves: {count: 2, load: [books, bokos]}}",
            "x.yaml:5:46: item 2 of `load`: `bokos` isn't among what is known to lie on shelves; "
            "did you mean `books`?\n  Write `books`.",
        ),
        (
            "interior: {shelves: {count: 2, load: [{off: books}]}}",
            "x.yaml:5:40: `off` isn't a key of item 1 of `load`; did you mean `of`?\n"
            "  Write `of:`.",
        ),
        (
            "interior: {shelves: {count: 2, load: true}}",
            f"x.yaml:5:38: `load` takes {KEYS.replace(' or the', ', the')} or a list of such; "
            f"`true` is written here\n  Write {KEYS.replace(' or the', ', the')} or a list of "
            "such.",
        ),
        (
            "interior: {shelves: {count: 2, load: coats}}",
            "x.yaml:5:38: `load`: `coats` hangs, and nothing hangs here\n"
            "  Write `folded clothes` or a weight; on a rail, `load:` goes with the space that it "
            "hangs in.",
        ),
        (
            "worktop: {stock: case, load: [books]}",
            f"x.yaml:5:24: `load` takes {KEYS}; a list is written here\n  Write {KEYS}.",
        ),
        (
            "interior: {load: {points: [{weight: 18, at: 100}]}}",
            "x.yaml:5:37: `weight`: `18` has no unit\n  Write it like `30 kg` or `65 lb`.",
        ),
        (
            "interior: {loads: books}",
            "x.yaml:5:12: `loads` isn't a key of `interior`; did you mean `load`?\n"
            "  Write `load:`.",
        ),
        (
            "load: books",
            "x.yaml:5:1: `load` isn't a key of the spec; did you mean `loads`?\n  Write `loads:`.",
        ),
        (
            "contents: books",
            "x.yaml:5:1: `contents` isn't a key of the spec; it is called `loads:` here\n"
            "  Write `loads:`.",
        ),
        (
            "interior: {contents: books}",
            "x.yaml:5:12: `contents` isn't a key of `interior`; it is called `load:` here\n"
            "  Write `load:`.",
        ),
        (
            "loads: {of: books, deflection: 300}",
            "x.yaml:5:20: `deflection` isn't a key of `loads`; it is called `limit:` here\n"
            "  Write `limit:`.",
        ),
        (
            "loads: {limit: 10, years: -1}",
            "x.yaml:5:16: `limit` has to be at least 50; it is `10`\n  Write a larger number.",
        ),
        (
            "loads: {room: cold}",
            "x.yaml:5:15: `room` takes `heated`, `unheated` or `outside`; `cold` isn't one of "
            "them\n  Write one of them.",
        ),
        (
            "wall: drywall",
            "x.yaml:5:7: `wall` takes `masonry`, `studs` or `plasterboard`; `drywall` is called "
            "`plasterboard` here\n  Write `plasterboard`.",
        ),
        (
            "wall: brick",
            "x.yaml:5:7: `wall` takes `masonry`, `studs` or `plasterboard`; `brick` is called "
            "`masonry` here\n  Write `masonry`.",
        ),
        (
            "floor: tiles",
            "x.yaml:5:8: `floor` takes `hard` or `carpet`; `tiles` is called `hard` here\n"
            "  Write `hard`.",
        ),
        (
            "floor: {falls: 84}",
            "x.yaml:5:1: `floor`: a floor that falls by more than 1 in 12 is a ramp\n"
            "  Check `falls` and `over`.",
        ),
        (
            "floor: {falls: -5}",
            "x.yaml:5:16: `falls`: `-5` is less than zero; a length can't be negative\n"
            "  Write a length.",
        ),
    ],
)
def test_what_is_refused(text: str, problem: str) -> None:
    assert told(text)[0] == problem


@given(
    load=st.recursive(
        st.none()
        | st.booleans()
        | st.integers()
        | st.floats(allow_nan=False, allow_infinity=False)
        | st.text(max_size=20)
        | st.sampled_from(["books", "25 kg/m", "30 kg", "television 18 kg", "coats"]),
        lambda inner: (
            st.lists(inner, max_size=3)
            | st.dictionaries(
                st.sampled_from(["of", "television", "from", "to", "growing_to", "points", "at"]),
                inner,
                max_size=4,
            )
        ),
        max_leaves=6,
    )
)
def test_anything_is_a_load_or_told(load: Any) -> None:
    interior = {"load": load, "shelves": {"count": 1, "load": load}}
    try:
        spec = spec_from("size: {width: 900}", interior=interior)
    except ValidationError:
        return
    assert spec.interior.load is None or isinstance(spec.interior.load, LoadSpec)
