import json
from pathlib import Path
from typing import Annotated, Literal

import jsonschema
import pytest
from pydantic import Field
from ruamel.yaml import YAML

from rodwright.wishes.fields import Length, LengthOrShare, LengthOrZero, SpecModel
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.reference import reference_table
from rodwright.wishes.reading.schema import json_schema

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))


class Slab(SpecModel):
    """A slab."""

    kind: Literal["slab"]
    length: Length
    """Its length."""


class Stick(SpecModel):
    """A stick."""

    kind: Literal["stick"]
    length: Length
    """Its length."""
    girth: LengthOrZero = 3.5
    """All round | about."""


class Bay(SpecModel):
    """A bay."""

    width: LengthOrShare
    """Clear width."""
    bays: list["Bay"] = Field([])
    """Bays in it."""


class Coil(SpecModel):
    """A coil."""

    kind: Literal["coil"]
    length: Length = 9.0
    """Its length, unrolled."""


class Pin(SpecModel):
    """A pin."""

    length: Length = 9.0
    """Its length."""


class Crate(SpecModel):
    """A crate."""

    kind: Literal["crate"]
    inside: list[Bay] = Field([])
    """What is in it."""


class Sack(SpecModel):
    """A sack."""

    kind: Literal["sack"]
    inside: list[Pin] = Field([])
    """What is in it."""


class Load(SpecModel):
    """A load."""

    holds: Annotated[Crate | Sack, Field(discriminator="kind")]
    """What holds it."""


def test_a_key_that_holds_other_keys_with_another_choice():
    assert reference_table(Load).splitlines()[3:] == [
        "| `holds.kind` | `crate` or `sack` | required | What the other keys are about. |",
        "| `holds.inside` | a list, each with the keys below |  | What is in it. |",
        "| `holds.inside[].width` | a length or a share | required | With `kind: crate`. Clear "
        "width. |",
        "| `holds.inside[].bays` | a list, each with the keys of `holds.inside[]` |  | With "
        "`kind: crate`. Bays in it. |",
        "| `holds.inside[].length` | a length | 9 mm | With `kind: sack`. Its length. |",
    ]


class Thing(SpecModel):
    """A thing.

    More about it.
    """

    title: str
    """What it is
    called."""
    fixed: bool = True
    edges: list[Literal["top", "sides"]] = Field(["top"])
    count: int | None = None
    pieces: dict[str, Annotated[Slab | Stick | Coil, Field(discriminator="kind")]] = Field({})
    """The pieces."""
    bays: list[Bay] = Field([])
    """All bays."""
    nested: Bay | Length | None = None


def test_the_table_of_a_small_model():
    assert reference_table(Thing).splitlines() == [
        "| Key | Takes | Default | Meaning |",
        "| --- | --- | --- | --- |",
        "| `title` | text | required | What it is called. |",
        "| `fixed` | `true` or `false` | `true` |  |",
        "| `edges` | a list, each `top` or `sides` | `[top]` |  |",
        "| `count` | a whole number |  |  |",
        "| `pieces` | names of your choice, each with the keys below |  | The pieces. |",
        "| `pieces.NAME.kind` | `slab` or `stick` or `coil` | required | What the other keys are "
        "about. |",
        "| `pieces.NAME.length` | a length | required | With `kind: slab or stick`. Its length. |",
        "| `pieces.NAME.length` | a length | 9 mm | With `kind: coil`. Its length, unrolled. |",
        "| `pieces.NAME.girth` | a length | 3.5 mm | With `kind: stick`. All round \\| about. |",
        "| `bays` | a list, each with the keys below |  | All bays. |",
        "| `bays[].width` | a length or a share | required | Clear width. |",
        "| `bays[].bays` | a list, each with the keys of `bays[]` |  | Bays in it. |",
        "| `nested` | a length or the keys of `bays[]` |  | A bay. |",
    ]


def every_key(node):
    """The names of all properties in a JSON schema, found without the table's own walk."""
    if isinstance(node, dict):
        yield from node.get("properties", {})
        for each in node.values():
            yield from every_key(each)
    elif isinstance(node, list):
        for each in node:
            yield from every_key(each)


def test_every_key_of_the_spec_has_a_row_with_a_meaning():
    rows = [line.split(" | ") for line in reference_table(UnitSpec).splitlines()[2:]]
    paths = [row[0].removeprefix("| ").strip("`") for row in rows]
    assert {path.rpartition(".")[2] for path in paths} == set(every_key(json_schema(UnitSpec)))
    assert all(len(row) == 4 and len(row[3]) > 5 and row[1] for row in rows)


def test_the_schema_is_one_and_always_the_same():
    schema = json_schema(UnitSpec)
    jsonschema.Draft202012Validator.check_schema(schema)
    assert schema["$schema"] == jsonschema.Draft202012Validator.META_SCHEMA["$id"]
    assert "$id" not in schema
    assert json.dumps(schema) == json.dumps(json_schema(UnitSpec))
    assert list(schema)[:2] == ["$schema", "title"]
    assert json_schema(Thing)["title"] == "A thing"


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.name)
def test_an_editor_accepts_every_model(path):
    """The schema in an independent validator (jsonschema), as an editor would use it."""
    data = YAML(typ="safe", pure=True).load(path.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator(json_schema(UnitSpec)).validate(data)


def test_an_editor_marks_what_is_wrong():
    data = {"title": 3, "stock": {"a": {"kind": "bord"}}, "carcass": {"stock": "a", "top": "x"}}
    errors = jsonschema.Draft202012Validator(json_schema(UnitSpec)).iter_errors(data)
    assert {error.absolute_path[0] for error in errors} == {"title", "stock", "carcass"}
