"""STEP text held against ISO 10303-21 (clear text encoding) and ISO 10303-242's entities."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections import Counter
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from OCP.Interface import Interface_Static
from OCP.STEPControl import STEPControl_Controller

from kit import samples
from rodwright.handover.lists import parts_list
from rodwright.handover.part21 import reals, text
from rodwright.handover.products import products
from rodwright.handover.step import write_step_part, write_step_unit
from rodwright.handover.step_pieces import piece_of
from rodwright.unit import Edging, Part, Surface, Unit

# ISO 10303-21:2016, 5.2 and 6.4: every byte of a file, and one entity.
ALPHABET = re.compile(r"[\x20-\x7e\n]*")
STRING = r"'(?:[^']|'')*'"
ENTITY = re.compile(rf"#(\d+) = ((?:{STRING}|[^';])*);\n")


def unit_text(folder: Path) -> str:
    write_step_unit(samples.bookcase(), folder / "unit.step")
    return (folder / "unit.step").read_text(encoding="ascii")


def alone(part: Part) -> Unit:
    return Unit("Alone", part.bounds(), (part,))


def part_text(part: Part, folder: Path) -> str:
    unit = alone(part)
    write_step_part(unit, products(unit, "cut")[0], folder / "part.step")
    return (folder / "part.step").read_text(encoding="ascii")


def entities(exchange: str) -> dict[int, str]:
    """The data section, after checking that it is nothing but well-formed entities."""
    data = exchange.partition("\nDATA;\n")[2].partition("ENDSEC;")[0]
    found = ENTITY.findall(data)
    assert ENTITY.sub("", data) == ""
    numbered = {int(number): body for number, body in found}
    assert len(numbered) == len(found)
    return numbered


def of_type(exchange: str, name: str) -> dict[int, str]:
    return {
        number: body.replace("\n", "")
        for number, body in entities(exchange).items()
        if body.startswith(f"{name}(")
    }


def header_of(unit: Unit, folder: Path) -> str:
    write_step_unit(unit, folder / "unit.step")
    exchange = (folder / "unit.step").read_text(encoding="ascii")
    return exchange.partition("ENDSEC;")[0]


def test_the_header_names_the_schema_the_maker_and_the_date(tmp_path: Path) -> None:
    unit = replace(
        samples.bookcase(), author="Zoë Carr", organisation="Carr & Sons", date="2026-05-31"
    )
    header = header_of(unit, tmp_path)
    assert header.startswith("ISO-10303-21;\nHEADER;\n")
    assert re.search(r"FILE_SCHEMA\(\('AP242_\w+ \{ 1 0 10303 442 [0-9 ]+ \}'\)\);", header)
    assert "FILE_DESCRIPTION(('Sample bookcase: 10 parts, finished'),'2;1');" in header
    assert (
        "FILE_NAME('unit.step','2026-05-31T00:00:00+00:00',('Zo\\X2\\00EB\\X0\\ Carr'),"
        "('Carr & Sons'),'Open CASCADE','Rodwright','');" in header
    )


def test_a_header_without_wishes_is_filled_and_fixed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    header = header_of(samples.bookcase(), tmp_path)
    assert "'1970-01-01T00:00:00+00:00',('not stated'),('not stated')," in header


def test_source_date_epoch_dates_what_has_no_date(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    assert "'2001-09-09T01:46:40+00:00'" in header_of(samples.bookcase(), tmp_path)
    dated = replace(samples.bookcase(), date="2026-05-31")
    assert "'2026-05-31T00:00:00+00:00'" in header_of(dated, tmp_path)


def test_a_parts_header_says_which_part_of_what(tmp_path: Path) -> None:
    unit = samples.bookcase()
    write_step_part(unit, products(unit, "cut")[0], tmp_path / "part.step")
    header = (tmp_path / "part.step").read_text(encoding="ascii").partition("ENDSEC;")[0]
    said = "SD1 Side, 2 off, birch plywood 18 mm, as cut; of Sample bookcase"
    assert f"FILE_DESCRIPTION(('{said}'),'2;1');" in header


def test_every_reference_is_defined_and_only_plain_characters_are_used(tmp_path: Path) -> None:
    exchange = unit_text(tmp_path)
    assert ALPHABET.fullmatch(exchange)
    numbered = entities(exchange)
    bare = [re.sub(STRING, "", body) for body in numbered.values()]
    assert {int(each) for body in bare for each in re.findall(r"#(\d+)", body)} <= set(numbered)


def test_each_row_of_the_list_is_one_solid(tmp_path: Path) -> None:
    exchange = unit_text(tmp_path)
    rows = parts_list(samples.bookcase())
    for name in ("MANIFOLD_SOLID_BREP", "CLOSED_SHELL", "ADVANCED_BREP_SHAPE_REPRESENTATION"):
        assert len(of_type(exchange, name)) == len(rows)


def test_equal_shapes_of_other_stock_are_products_of_their_own(tmp_path: Path) -> None:
    unit = samples.bookcase()
    other = replace(samples.PLYWOOD, name="dark", material="oak plywood", colour="#805020")
    parts = [
        replace(part, blank=replace(part.blank, stock=other)) if part.ref == "SD2" else part
        for part in unit.parts
    ]
    write_step_unit(replace(unit, parts=tuple(parts)), tmp_path / "unit.step")
    exchange = (tmp_path / "unit.step").read_text(encoding="ascii")
    names = " ".join(of_type(exchange, "PRODUCT").values())
    assert "'SD1 Left side'" in names
    assert "'SD2 Right side'" in names


def test_uses_nest_as_unit_group_part(tmp_path: Path) -> None:
    exchange = unit_text(tmp_path)
    unit = samples.bookcase()
    used_in: dict[str, str] = {}
    definition_of: dict[str, str] = {}
    for body in of_type(exchange, "NEXT_ASSEMBLY_USAGE_OCCURRENCE").values():
        found = re.fullmatch(
            r"NEXT_ASSEMBLY_USAGE_OCCURRENCE\('\d+','(.*)','',#(\d+),#(\d+),'\1'\)", body
        )
        assert found is not None
        used_in[found[1]], definition_of[found[1]] = found[2], found[3]
    groups = {part.group for part in unit.parts}
    assert set(used_in) == groups | {part.ref for part in unit.parts}
    assert len({used_in[group] for group in groups}) == 1
    for part in unit.parts:
        assert used_in[part.ref] == definition_of[part.group]


def test_products_units_colours_and_materials_are_written(tmp_path: Path) -> None:
    exchange = unit_text(tmp_path)
    names = {re.findall(STRING, body)[1][1:-1] for body in of_type(exchange, "PRODUCT").values()}
    assert {"Sample bookcase", "Face frame", "SD1 Side", "BK1 Back"} <= names
    # sRGB, as the recommended practice for colours in STEP has it (CAx-IF, styling); from memory.
    colours = {
        "#" + "".join(f"{round(float(value) * 255):02x}" for value in re.findall(r"[\d.]+\d", body))
        for body in of_type(exchange, "COLOUR_RGB").values()
    }
    assert colours == {stock.colour for stock in (samples.PLYWOOD, samples.THIN, samples.ASH)}
    items = of_type(exchange, "DESCRIPTIVE_REPRESENTATION_ITEM").values()
    materials = {re.findall(STRING, item)[0] for item in items if item.endswith(",'')")}
    assert materials == {"'birch plywood'", "'ash'"}
    lengths = [
        body for body in entities(exchange).values() if "LENGTH_UNIT() " in body and "SI" in body
    ]
    assert {re.findall(r"SI_UNIT\((.*?)\)", body)[0] for body in lengths} == {
        ".MILLI.,.METRE.",
        ".CENTI.,.METRE.",  # of the density alone
    }


def properties_of(exchange: str) -> dict[str, dict[str, str | int]]:
    """User-defined attributes by product id, found by nothing but the entities' references."""
    numbered = entities(exchange)

    def refs(number: int) -> list[int]:
        return [int(each) for each in re.findall(r"#(\d+)", re.sub(STRING, "", numbered[number]))]

    def strings(number: int) -> list[str]:
        return [each[1:-1].replace("''", "'") for each in re.findall(STRING, numbered[number])]

    found: dict[str, dict[str, str | int]] = {}
    shown = {
        refs(number)[0]: refs(number)[1]
        for number in of_type(exchange, "PROPERTY_DEFINITION_REPRESENTATION")
    }
    for number in of_type(exchange, "GENERAL_PROPERTY_ASSOCIATION"):
        assert strings(number) == ["user defined attribute", ""]
        general, own = refs(number)
        # As the entity's own rule has it: both are called the same.
        [_, name, _] = strings(general)
        assert strings(own)[0] == name
        [definition] = refs(own)
        formation = refs(definition)[0]
        product = refs(formation)[0]
        [item, _] = refs(shown[own])
        assert strings(item)[0] == name
        whole = re.fullmatch(rf"INTEGER_REPRESENTATION_ITEM\({STRING},(\d+)\)", numbered[item])
        value: str | int = int(whole[1]) if whole else strings(item)[1]
        found.setdefault(strings(product)[0], {})[name] = value
    return found


def test_a_product_has_its_row_of_the_list_as_properties(tmp_path: Path) -> None:
    unit = samples.bookcase()
    edged = [
        replace(
            part, edged=(Edging(Surface.FACE_EDGE, "birch veneer", 0.6),), lipped=("front edge",)
        )
        if part.ref == "SH1"
        else part
        for part in unit.parts
    ]
    write_step_unit(replace(unit, parts=tuple(edged)), tmp_path / "unit.step")
    found = properties_of((tmp_path / "unit.step").read_text(encoding="ascii"))
    assert list(found) == ["SD1", "BT1", "SH1", "TP1", "BK1", "ST1", "ST2", "RL1", "RL2"]
    assert found["SD1"] == {
        "ref": "SD1, SD2",
        "name": "Side",
        "quantity": 2,
        "stock": "case",
        "material": "birch plywood",
        "thickness": "18 mm",
        "grain direction": "lengthwise, along x",
        "edging": "none",
        "lipping": "none",
        "cut state": "finished",
        "size as cut": "1000 x 300 x 18 mm",
        "finished size": "1000 x 300 x 18 mm",
        "face up": "face",
        "measured": "x from the bottom end, y from the face edge",
        "second side": "none",
        "before and after": "nothing",
        "worked later": "nothing",
    }
    assert found["SH1"]["edging"] == "front edge: birch veneer 0.6 mm"
    assert found["SH1"]["lipping"] == "front edge"
    assert found["SH1"]["size as cut"] == "776 x 299.4 x 18 mm"
    assert found["SH1"]["finished size"] == "776 x 300 x 18 mm"


def test_a_part_file_has_the_properties_that_the_unit_has(tmp_path: Path) -> None:
    unit = samples.bookcase()
    whole = properties_of(unit_text(tmp_path))
    for product in products(unit, "cut"):
        write_step_part(unit, product, tmp_path / "part.step")
        found = properties_of((tmp_path / "part.step").read_text(encoding="ascii"))
        ref = product.part.ref
        assert found == {ref: whole[ref] | {"cut state": "as cut"}}


def edged_part() -> Part:
    """The worked part with tape on two edges, so that it is cut smaller than it will be."""
    part = samples.worked_part()
    edged = (Edging(Surface.FACE_EDGE, "abs", 2.0), Edging(Surface.FAR_END, "abs", 1.0))
    return replace(part, workings=part.workings[:4], edged=edged)


def test_a_part_that_is_cut_smaller_holds_a_solid_and_the_finished_outline(tmp_path: Path) -> None:
    exchange = part_text(edged_part(), tmp_path)
    products_named = [re.findall(STRING, body) for body in of_type(exchange, "PRODUCT").values()]
    assert [each[:2] for each in products_named] == [
        ["'X1 as cut'", "'X1 Worked part, as cut'"],
        ["'X1 finished outline'", "'X1 Worked part, finished outline'"],
        ["'X1'", "'X1 Worked part'"],
    ]
    [solid] = of_type(exchange, "MANIFOLD_SOLID_BREP").values()
    [sheet] = of_type(exchange, "SHELL_BASED_SURFACE_MODEL").values()
    assert "'X1 Worked part, as cut'" in solid
    assert "'finished outline'" in sheet
    uses = of_type(exchange, "NEXT_ASSEMBLY_USAGE_OCCURRENCE").values()
    assert [re.findall(STRING, use)[1] for use in uses] == ["'as cut'", "'finished outline'"]
    found = properties_of(exchange)
    assert found["X1"]["cut state"] == found["X1 as cut"]["cut state"] == "as cut"
    assert found["X1 finished outline"] == {"cut state": "finished outline"}
    assert found["X1"]["size as cut"] == "399 x 118 x 20 mm"
    assert found["X1"]["finished size"] == "400 x 120 x 20 mm"


def test_the_finished_kind_of_a_part_is_one_solid(tmp_path: Path) -> None:
    unit = alone(edged_part())
    write_step_part(unit, products(unit, "finished")[0], tmp_path / "part.step")
    exchange = (tmp_path / "part.step").read_text(encoding="ascii")
    assert properties_of(exchange)["X1"]["cut state"] == "finished"
    assert len(of_type(exchange, "PRODUCT")) == 1
    assert not of_type(exchange, "SHELL_BASED_SURFACE_MODEL")


def test_each_property_is_named_once(tmp_path: Path) -> None:
    general = of_type(unit_text(tmp_path), "GENERAL_PROPERTY").values()
    names = [re.findall(STRING, each)[1] for each in general]
    assert len(names) == len(set(names)) == 17


def test_faces_bear_the_names_of_what_left_them(tmp_path: Path) -> None:
    exchange = part_text(samples.worked_part(), tmp_path)
    named = Counter(
        re.findall(STRING, body)[0] for body in of_type(exchange, "ADVANCED_FACE").values()
    )
    # A stopped rebate has two walls and an end; a through hole one face, a blind one its floor too.
    assert named["'hole, 8 mm, right through'"] == 1
    assert named["'hole, 5 mm, 12 deep'"] == 2
    assert named["'pocket hole, 9.5 mm, at 15 degrees'"] == 3
    assert named["'groove, 5 mm, 6 deep'"] == 5
    for name in (
        "rebate, 10 mm, 8 deep",
        "housing, 18 mm, 6 deep",
        "mitre, 40 degrees",
        "bevel, 30 degrees",
        "bevel, 51.3 degrees",
        "eased arris, 4 mm radius",
        "mortise, 40 x 8 mm, 9 deep",
        "notch, 30 x 30 mm, right through",
    ):
        assert f"'{name}'" in named, name
    assert named["''"] >= 4  # what is left of the blank's own surfaces


def test_products_have_ids_of_their_own(tmp_path: Path) -> None:
    write_step_unit(replace(samples.bookcase(), title="Carcass"), tmp_path / "unit.step")
    exchange = (tmp_path / "unit.step").read_text(encoding="ascii")
    ids = [re.findall(STRING, body)[0] for body in of_type(exchange, "PRODUCT").values()]
    assert len(set(ids)) == len(ids)


def test_density_is_in_grams_per_cubic_centimetre(tmp_path: Path) -> None:
    part = samples.worked_part()
    exchange = part_text(part, tmp_path)
    [measure] = of_type(exchange, "MEASURE_REPRESENTATION_ITEM").values()
    value = re.search(r"POSITIVE_RATIO_MEASURE\(([\d.]+)\)", measure)
    assert value is not None
    assert float(value[1]) == part.blank.stock.density / 1000
    numbered = entities(exchange)
    exponents = {}
    for body in of_type(exchange, "DERIVED_UNIT_ELEMENT").values():
        found = re.fullmatch(r"DERIVED_UNIT_ELEMENT\(#(\d+),(-?\d\.)\)", body)
        assert found is not None
        exponents[re.findall(r"SI_UNIT\((.*?)\)", numbered[int(found[1])])[0]] = float(found[2])
    assert exponents == {"$,.GRAM.": 1.0, ".CENTI.,.METRE.": -3.0}


def test_a_part_is_one_product_in_its_own_frame(tmp_path: Path) -> None:
    part = samples.bookcase().part("SD1")
    exchange = part_text(part, tmp_path)
    [product] = of_type(exchange, "PRODUCT").values()
    assert product.startswith("PRODUCT('SD1','SD1 Left side','1 off, birch plywood 18 mm, as cut',")
    assert not of_type(exchange, "NEXT_ASSEMBLY_USAGE_OCCURRENCE")
    corners = [
        tuple(map(float, re.findall(r"[-\d.E+]+", body.partition(",(")[2])))
        for body in of_type(exchange, "CARTESIAN_POINT").values()
    ]
    highest = tuple(max(corner[i] for corner in corners) for i in range(3))
    assert highest == pytest.approx(part.blank.size)


WRITE = """
import sys
from pathlib import Path
from kit import samples
from rodwright.handover.products import products
from rodwright.handover.step import write_step_part, write_step_unit
from rodwright.unit import Unit
folder = Path(sys.argv[1])
folder.mkdir()
write_step_unit(samples.bookcase(), folder / "unit.step")
part = samples.worked_part()
unit = Unit("Worked", part.bounds(), (part,))
write_step_part(unit, products(unit, "cut")[0], folder / "part.step")
"""


def test_two_processes_write_the_same_bytes_and_nothing_on_the_screen(tmp_path: Path) -> None:
    for name, seed in (("first", "1"), ("second", "2")):
        environment = {
            **os.environ,
            "PYTHONPATH": os.pathsep.join(sys.path),
            "PYTHONHASHSEED": seed,
        }
        done = subprocess.run(
            [sys.executable, "-c", WRITE, str(tmp_path / name)],
            env=environment,
            capture_output=True,
            check=True,
        )
        assert done.stdout == b""
    for file in ("unit.step", "part.step"):
        assert (tmp_path / "first" / file).read_bytes() == (tmp_path / "second" / file).read_bytes()


def test_only_the_date_differs_when_written_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    texts = []
    for epoch in ("1000000000", "1700000000"):
        monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
        texts.append(unit_text(tmp_path).split("\n"))
    differing = [a for a, b in zip(*texts, strict=True) if a != b]
    assert len(differing) == 1
    assert differing[0].startswith("FILE_NAME(")


def test_the_process_keeps_its_own_settings(tmp_path: Path) -> None:
    STEPControl_Controller.Init_s()
    before = {key: Interface_Static.CVal_s(key) for key in ("write.step.schema", "write.step.unit")}
    assert Interface_Static.SetCVal_s("write.step.unit", "INCH")
    try:
        piece_of.cache_clear()
        exchange = part_text(samples.worked_part(), tmp_path)
        assert "'INCH'" not in exchange
        assert Interface_Static.CVal_s("write.step.unit") == "INCH"
        assert Interface_Static.CVal_s("write.step.schema") == before["write.step.schema"]
    finally:
        Interface_Static.SetCVal_s("write.step.unit", before["write.step.unit"])


def test_a_rebuild_writes_only_what_has_changed(tmp_path: Path) -> None:
    unit = samples.bookcase()
    write_step_unit(unit, tmp_path / "unit.step")
    before = piece_of.cache_info().misses
    back = unit.part("BK1")
    longer = replace(back, blank=replace(back.blank, length=1000.5))
    parts = tuple(longer if part is back else part for part in unit.parts)
    write_step_unit(replace(unit, parts=parts), tmp_path / "unit.step")
    assert piece_of.cache_info().misses == before + 1


def test_a_missing_folder_is_an_error(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError, match="nowhere"):
        write_step_unit(samples.bookcase(), tmp_path / "nowhere" / "unit.step")


def test_workings_that_leave_nothing_are_an_error(tmp_path: Path) -> None:
    part = samples.bookcase().part("BK1")
    gone = replace(part, workings=(samples.Notch(0.0, 0.0, 1000.0, 800.0),))
    with pytest.raises(ValueError, match="leave nothing"):
        part_text(gone, tmp_path)


@pytest.mark.parametrize(
    ("plain", "encoded"),
    [
        # ISO 10303-21:2016, 6.4.3.1 to 6.4.3.3.
        ("plain", "'plain'"),
        ("maker's", "'maker''s'"),
        ("a\\b", "'a\\\\b'"),
        ("café", "'caf\\X2\\00E9\\X0\\'"),
        ("äö!", "'\\X2\\00E400F6\\X0\\!'"),
        ("𝛼", "'\\X4\\0001D6FC\\X0\\'"),
        ("a\nb", "'a\\X2\\000A\\X0\\b'"),
    ],
)
def test_texts_are_encoded(plain: str, encoded: str) -> None:
    assert text(plain) == encoded


@settings(max_examples=200)
@given(st.text())
def test_any_text_is_one_plain_string(plain: str) -> None:
    encoded = text(plain)
    assert re.fullmatch(STRING, encoded)
    assert ALPHABET.fullmatch(encoded)


@settings(max_examples=200)
@given(st.floats(allow_nan=False, allow_infinity=False))
def test_any_real_is_written_exactly(value: float) -> None:
    written = reals([value])[1:-1]
    # ISO 10303-21:2016, table 2: REAL.
    assert re.fullmatch(r"[+-]?[0-9]+\.[0-9]*(E[+-]?[0-9]+)?", written)
    assert float(written) == value
