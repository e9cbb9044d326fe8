"""What the README says must be so."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from kit.rates_page import with_operations
from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.jobs.new import model_names
from rodwright.wishes import UnitSpec
from rodwright.wishes.rack import RackSpec
from rodwright.wishes.rates import RatesSpec
from rodwright.wishes.reading.reference import with_table

ROOT = Path(__file__).parents[1]
README = (ROOT / "README.md").read_text(encoding="utf-8")
KEYS = (ROOT / "models" / "README.md").read_text(encoding="utf-8")


def test_the_table_of_keys_is_current() -> None:
    """If not: python -m rodwright.wishes.reading.reference models/README.md."""
    assert with_table(KEYS, UnitSpec) == KEYS


def test_the_table_of_a_rack_files_keys_is_current() -> None:
    """If not: python -m rodwright.wishes.reading.reference docs/rack.md rack."""
    page = (ROOT / "docs" / "rack.md").read_text(encoding="utf-8")
    assert with_table(page, RackSpec) == page


def test_the_tables_of_a_rates_file_are_current() -> None:
    """If not: python -m rodwright.wishes.reading.reference docs/rates.md rates, or
    python tests/kit/rates_page.py docs/rates.md."""
    page = (ROOT / "docs" / "rates.md").read_text(encoding="utf-8")
    assert with_table(page, RatesSpec) == page
    assert with_operations(page) == page


def test_every_ready_model_is_listed() -> None:
    listed = re.findall(r"^\| \[`([a-z-]+)`\]\(([a-z-]+)\.yaml\)", KEYS, flags=re.MULTILINE)
    assert [name for name, _ in listed] == [link for _, link in listed] == list(model_names())


def test_it_is_short_enough_to_read() -> None:
    assert len(README.splitlines()) < 250


def test_the_specs_make_units() -> None:
    short, bench = re.findall(r"```yaml\n(.*?)```", README, flags=re.DOTALL)
    assert len(unit_from(short).parts) == 6
    unit = unit_from(bench)
    assert not [each for each in check_parts(unit) if each.severity is Severity.ERROR]
    assert len(unit.motions) == 6


@pytest.mark.parametrize(
    "page",
    [
        "README.md",
        "CONTRIBUTING.md",
        "DEVELOPERS.md",
        "docs/files.md",
        "models/README.md",
        "gallery/README.md",
    ],
)
def test_links_lead_somewhere(page: str) -> None:
    path = ROOT / page
    for target in re.findall(r"\]\((?!https?:)([^)#]+)\)", path.read_text(encoding="utf-8")):
        assert (path.parent / target).exists(), target


def test_places_named_for_developers_exist() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    for place in re.findall(r"`((?:generator|cli|tests|models)/[\w./]*)`", text):
        assert (ROOT / place).exists(), place


@pytest.mark.parametrize("page", ["DEVELOPERS.md", "CONTRIBUTING.md"])
def test_modules_named_for_developers_exist(page: str) -> None:
    text = (ROOT / page).read_text(encoding="utf-8")
    there = [f"/{path.relative_to(ROOT)}" for path in ROOT.glob("[cgt]*/**/*.py")]
    for module in set(re.findall(r"`([\w/]+\.py)`", text)):
        assert any(path.endswith(f"/{module}") for path in there), module
