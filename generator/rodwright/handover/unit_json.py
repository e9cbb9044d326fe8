"""`unit.json`: the whole resolved unit as one document, and its reader.

The document holds everything that :class:`rodwright.unit.Unit` does, so that reading it
gives back an equal unit, and beside it what others would otherwise have to work out:
matrices, overall sizes and masses.  The reader takes no notice of those.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import asdict, fields
from pathlib import Path
from typing import Any

from rodwright.geometry import Box, vector
from rodwright.handover.cut_edges import outlines
from rodwright.handover.json_text import json_text
from rodwright.mass import centre_of_mass, mass_of, unit_weight, weight
from rodwright.problems import Problem, ProblemsError
from rodwright.unit import (
    Bevel,
    Blank,
    Clearance,
    Contradiction,
    Easing,
    Edging,
    Fitting,
    Fixing,
    Grain,
    Groove,
    Hole,
    Housing,
    Joint,
    JointKind,
    LinePoint,
    Mitre,
    Mortise,
    Motion,
    Notch,
    Opening,
    OpeningPlane,
    OpeningReadings,
    OpeningShape,
    Part,
    Piece,
    Placement,
    PocketHole,
    Quadrilateral,
    Rebate,
    Rod,
    Role,
    Slide,
    Stock,
    Surface,
    Swing,
    Unit,
    Working,
)
from rodwright.unit.way import Corner, Doorway, Mouth, Skirting, WayIn

SCHEMA_VERSION = 1
"""Goes up when a document written before can no longer be read."""

_WORKINGS: dict[str, type[Any]] = {
    kind.__name__.lower(): kind
    for kind in (
        Rebate, Groove, Housing, Notch, Mitre, Easing, Hole, Bevel, Mortise, PocketHole,
    )
}  # fmt: skip
_MOTIONS: dict[str, type[Any]] = {kind.__name__.lower(): kind for kind in (Swing, Slide)}
_SURFACE_FIELDS = {"surface", "edge", "end", "long"}

_FRAMES = {
    "unit": "x to the right seen from the front, y from the front to the back, z up; "
    "origin at the carcass's front lower left corner on the floor line",
    "part": "x along the length, y across the width, z through the thickness, up as the part is "
    "laid to be worked; the finished blank fills 0 to its size, and show_surfaces say what is seen",
    "surfaces": "near end x = 0, face edge y = 0, reverse z = 0; opposite them far end, back edge "
    "and face",
    "as_cut": "size of the blank before it is trimmed and edged, and the finished outline in its "
    "frame: a place of the part frame lies there with the outline's low corner added",
    "matrix": "rows of the 4 x 4 transform from part frame to unit frame",
}
_MEASURES = {
    "length": "mm",
    "mass": "kg",
    "angle": "degree",
    "volume": "mm3",
    "density": "kg/m3",
    "moisture": "% of the oven-dry mass",
}


def unit_json(unit: Unit) -> bytes:
    """The document, UTF-8, the same bytes for the same unit.

    Raises:
        ValueError: two different stocks have the same name.
    """
    stocks: dict[str, Stock] = {}
    for part in unit.parts:
        stock = part.blank.stock
        if stocks.setdefault(stock.name, stock) != stock:
            raise ValueError(f"two different stocks are called `{stock.name}`")
    document = {
        "schema_version": SCHEMA_VERSION,
        "frames": _FRAMES,
        "measures": _MEASURES,
        "title": unit.title,
        "display_unit": unit.display_unit,
        "least_gap": unit.least_gap,
        "envelope": asdict(unit.envelope),
        "opening": asdict(unit.opening) if unit.opening else None,
        "way_in": asdict(unit.way_in) if unit.way_in else None,
        "mass": round(unit_weight(unit), 6),
        "centre_of_mass": [round(each, 4) for each in centre_of_mass(unit)],
        "stocks": {name: _stock_record(stock) for name, stock in sorted(stocks.items())},
        "parts": [_part_record(part) for part in unit.parts],
        "joints": [asdict(joint) for joint in unit.joints],
        "clearances": [asdict(clearance) for clearance in unit.clearances],
        "motions": [
            {"kind": type(motion).__name__.lower(), **asdict(motion)} for motion in unit.motions
        ],
        "fixings": [asdict(fixing) for fixing in unit.fixings],
        "fittings": [
            {
                "ref": each.ref,
                "inner": each.inner,
                "shapes": [
                    {"kind": type(shape).__name__.lower(), **asdict(shape)} for shape in each.shapes
                ],
            }
            for each in unit.fittings
        ],
        "levelling": unit.levelling,
        "services": unit.services,
        "hung": unit.hung,
        "moisture": unit.moisture,
        "author": unit.author,
        "organisation": unit.organisation,
        "date": unit.date,
    }
    return json_text(document)


def read_unit_json(path: Path) -> Unit:
    """The unit that a document holds.

    Raises:
        ProblemsError: the file can't be read, or isn't such a document.
    """
    try:
        document = json.loads(path.read_bytes())
    except OSError as error:
        raise _problem(
            path, f"can't be read: {error.strerror}", "Give a file that is there."
        ) from None
    except ValueError as error:
        raise _problem(path, f"isn't JSON: {error}", "Build the unit again.") from None
    version = document.get("schema_version") if isinstance(document, dict) else None
    if version != SCHEMA_VERSION:
        raise _problem(
            path,
            f"isn't a unit of schema version {SCHEMA_VERSION}, the only one known here",
            "Build the unit again with this version of Rodwright.",
        )
    try:
        return _unit(document)
    except (KeyError, TypeError, ValueError, AttributeError, IndexError) as error:
        raise _problem(
            path, f"doesn't hold a whole unit ({type(error).__name__}: {error})",
            "Build the unit again; the file has been changed since.",
        ) from error  # fmt: skip


def _problem(path: Path, what: str, remedy: str) -> ProblemsError:
    return ProblemsError([Problem(f"`{path}` {what}", remedy)])


# --- writing ---------------------------------------------------------------------------


def _stock_record(stock: Stock) -> dict[str, Any]:
    record = asdict(stock)
    del record["name"]
    return record


def _part_record(part: Part) -> dict[str, Any]:
    blank = asdict(part.blank)
    blank["stock"] = part.blank.stock.name
    mass = mass_of(part.shape)
    return {
        "ref": part.ref,
        "name": part.name,
        "role": part.role,
        "group": part.group,
        "blank": blank,
        "rough_size": part.rough_size,
        "as_cut": _as_cut_record(part),
        "workings": [asdict(working) for working in part.workings],
        "lipped": part.lipped,
        "edged": [asdict(edging) for edging in part.edged],
        "withdraw": part.withdraw,
        "placement": asdict(part.placement),
        "matrix": [[value + 0.0 for value in row] for row in part.placement.matrix()],
        "mass": round(weight(part), 6),
        "volume": round(mass.volume, 3),
        "centroid": [round(each, 4) for each in mass.centroid],
    }


def _as_cut_record(part: Part) -> dict[str, Any]:
    size, finished = outlines(part)
    return {"size": size, "finished": asdict(finished)}


# --- reading ---------------------------------------------------------------------------


def _unit(document: Mapping[str, Any]) -> Unit:
    stocks = {name: _stock(name, record) for name, record in document["stocks"].items()}
    opening = document["opening"]
    return Unit(
        title=document["title"],
        envelope=_box(document["envelope"]),
        parts=tuple(_part(record, stocks) for record in document["parts"]),
        joints=tuple(map(_joint, document["joints"])),
        clearances=tuple(Clearance(**record) for record in document["clearances"]),
        opening=_opening(opening) if opening else None,
        least_gap=document["least_gap"],
        display_unit=document["display_unit"],
        # Documents from before there were these have no such keys.
        way_in=_way_in(document["way_in"]) if document.get("way_in") else None,
        motions=tuple(map(_motion, document.get("motions", []))),
        fixings=tuple(Fixing(**fixing) for fixing in document.get("fixings", [])),
        fittings=tuple(map(_fitting, document.get("fittings", []))),
        levelling=document.get("levelling"),
        services=tuple(document.get("services", ())),
        hung=document.get("hung", False),
        moisture=tuple(document.get("moisture", (6.0, 12.0))),
        author=document.get("author", ""),
        organisation=document.get("organisation", ""),
        date=document.get("date", ""),
    )


def _way_in(record: Mapping[str, Any]) -> WayIn:
    return WayIn(
        **{
            **record,
            "doors": tuple(Doorway(**door) for door in record["doors"]),
            "corners": tuple(Corner(**corner) for corner in record["corners"]),
            "skirting": Skirting(**record["skirting"]) if record["skirting"] else None,
            "mouth": Mouth(**record["mouth"]) if record["mouth"] else None,
        }
    )


def _opening(record: Mapping[str, Any]) -> Opening:
    shape, readings = record.get("shape"), record.get("readings")
    if shape is not None:
        planes = {name: shape[name] and _plane(shape[name]) for name in ("front", "rear")}
        shape = OpeningShape(**{**shape, **planes})
    if readings is not None:
        readings = OpeningReadings(
            **{
                **readings,
                "levelled": tuple(readings["levelled"]),
                "contradictions": tuple(
                    Contradiction(**each) for each in readings["contradictions"]
                ),
            }
        )
    return Opening(**{**record, "shape": shape, "readings": readings})


def _plane(record: Any) -> OpeningPlane:
    # Documents from before walls were read as lines have nothing but the corners.
    if isinstance(record, list):
        return OpeningPlane.straight(_quadrilateral(record))
    lines = {
        side: tuple(LinePoint(**point) for point in record[side])
        for side in ("left", "right", "bottom", "top")
    }
    return OpeningPlane(_quadrilateral(record["corners"]), **lines)


def _quadrilateral(points: list[list[float]]) -> Quadrilateral:
    a, b, c, d = ((x, z) for x, z in points)
    return (a, b, c, d)


def _box(record: Mapping[str, Any]) -> Box:
    return Box(vector(record["low"]), vector(record["high"]))


def _stock(name: str, record: Mapping[str, Any]) -> Stock:
    return Stock(
        name,
        **{
            **record,
            "grain": Grain(record["grain"]),
            "size": tuple(record["size"]) if record["size"] else None,
            "pieces": tuple(Piece(**piece) for piece in record["pieces"]),
        },
    )


def _part(record: Mapping[str, Any], stocks: Mapping[str, Stock]) -> Part:
    blank = record["blank"]
    placement = record["placement"]
    return Part(
        ref=record["ref"],
        name=record["name"],
        role=Role(record["role"]),
        group=record["group"],
        blank=Blank(
            **{
                **blank,
                "stock": stocks[blank["stock"]],
                "grain": Grain(blank["grain"]),
                "show_surfaces": tuple(map(Surface, blank["show_surfaces"])),
                "trim_at": tuple(map(Surface, blank.get("trim_at", ()))),
            }
        ),
        placement=Placement(*(vector(placement[each]) for each in ("origin", "length", "width"))),
        workings=tuple(map(_working, record["workings"])),
        lipped=tuple(record["lipped"]),
        edged=tuple(map(_edging, record.get("edged", []))),
        withdraw=vector(record["withdraw"]),
    )


def _edging(record: Mapping[str, Any]) -> Edging:
    return Edging(**{**record, "surface": Surface(record["surface"])})


def _working(record: Mapping[str, Any]) -> Working:
    kind = _WORKINGS[record["kind"]]
    values = {
        each.name: _working_value(each.name, record[each.name])
        for each in fields(kind)
        # Documents from before there was a use have none.
        if each.init and (each.name != "use" or "use" in record)
    }
    make: Callable[..., Working] = kind
    return make(**values)


def _working_value(name: str, value: Any) -> Any:
    if name in _SURFACE_FIELDS:
        return Surface(value)
    return tuple(value) if isinstance(value, list) else value


def _motion(record: Mapping[str, Any]) -> Motion:
    values = {
        name: tuple(value) if isinstance(value, list) else value
        for name, value in record.items()
        if name != "kind"
    }
    make: Callable[..., Motion] = _MOTIONS[record["kind"]]
    return make(**values)


def _fitting(record: Mapping[str, Any]) -> Fitting:
    shapes: list[Box | Rod] = []
    for shape in record["shapes"]:
        if shape["kind"] == "rod":
            shapes.append(Rod(tuple(shape["start"]), tuple(shape["end"]), shape["diameter"]))
        else:
            shapes.append(_box(shape))
    return Fitting(record["ref"], tuple(shapes), record["inner"])


def _joint(record: Mapping[str, Any]) -> Joint:
    return Joint(
        **{
            **record,
            "kind": JointKind(record["kind"]),
            "at": vector(record["at"]),
            "fixings": tuple(Fixing(**fixing) for fixing in record["fixings"]),
        }
    )
