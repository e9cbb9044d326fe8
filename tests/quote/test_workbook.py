"""The costing's workbook, reckoned by a spreadsheet program that isn't ours."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from io import BytesIO
from random import Random
from typing import Any

import pytest
from openpyxl import load_workbook
from openpyxl.worksheet.worksheet import Worksheet

from kit.quotes import BOUGHT, KINDS, MINUTES, STAGES, material, operation, rates_of
from rodwright.quote.costing import Costing, cost
from rodwright.quote.counted import Takings
from rodwright.quote.levers import levers_of
from rodwright.quote.rates import Rates
from rodwright.quote.workbook import costing_workbook

WITHOUT_OFFICE = pytest.mark.skipif(
    shutil.which("soffice") is None, reason="LibreOffice Calc isn't installed"
)


def halves(count: int) -> Takings:
    """Lines that come to half a cent exactly, where binary fractions are a hair above or below."""
    random = Random(7)
    found = []
    for number in range(count):
        cents, times = random.randrange(1, 40_000), random.choice((1, 3, 5, 7, 9, 25, 125))
        price = Decimal(2 * cents + 1).scaleb(-3) * 5
        whole = (price / times).quantize(Decimal("0.0001"))
        count, each = (times, whole) if whole * times == price else (1, price)
        found.append(material("hardware", f"article {number}", str(count), str(each)))
    return Takings(tuple(found), ())


def some(seed: int) -> Takings:
    """Counts and prices at random."""
    random = Random(seed)
    materials = [
        material(
            random.choice(BOUGHT),
            f"={random.randrange(5)}+cmd|' /c'!A0",
            str(Decimal(random.randrange(1, 99_999)).scaleb(-3)),
            str(Decimal(random.randrange(1, 999_999)).scaleb(-4)),
            wasted=random.random() < 0.5,
        )
        for _ in range(40)
    ]
    operations = [
        operation(
            random.choice(sorted(MINUTES)),
            random.choice(STAGES),
            str(Decimal(random.randrange(1, 99_999)).scaleb(-3)),
        )
        for _ in range(40)
    ]
    extra = operation("extra", "fitting", "17.5", "min")
    return Takings(
        tuple(materials), (*operations, operation("driving", "fitting", "3.75", "h"), extra)
    )


JOBS = {
    "halves": halves(300),
    "-1+2": some(1),
    "painted": some(2),
    "nothing": Takings((), ()),
    "lacking": Takings(
        (material("stock", "ash", "2", "20.00"), material("stock", "oak", "2", None)),
        (operation("unknown", "assembly", "4"), operation("rip", "cutting", "7")),
    ),
}
"""Options of a job."""
RATES = rates_of(margin=Decimal("0.175"), overhead=Decimal("0.115"))


def costings(rates: Rates) -> list[Costing]:
    return [cost(job, rates, name) for name, job in JOBS.items()]


def workbook(rates: Rates = RATES) -> bytes:
    levers = {name: levers_of(job, rates) for name, job in JOBS.items() if len(job.materials) < 9}
    return costing_workbook('=HYPERLINK("x")', costings(rates), levers, rates, "mm")


def changed(book: bytes, **values: float) -> bytes:
    """The workbook with figures of its first sheet of rates changed, by what stands before them."""
    opened = load_workbook(BytesIO(book))
    (sheet,) = (each for each in opened.worksheets if each.title == "Rates")
    for label, value in values.items():
        (row,) = (
            each[0].row
            for each in sheet.iter_rows()
            if each[0].value == label.replace("_", " ") and isinstance(each[1].value, int | float)
        )
        sheet.cell(row, 2).value = value
    saved = BytesIO()
    opened.save(saved)
    return saved.getvalue()


CHANGES = {
    "machining": 61.35,
    "waste": 0.225,
    "consumables": 0.035,
    "margin": 0.31,
    "rip": 2.75,
    "fitters": 3,
}
CHANGED = replace(
    RATES,
    hour={**RATES.hour, "machining": Decimal("61.35")},
    waste=Decimal("0.225"),
    consumables=Decimal("0.035"),
    margin=Decimal("0.31"),
    minutes={**MINUTES, "rip": Decimal("2.75")},
    fitters=3,
)
STEP = replace(RATES, round_up_to=Decimal(5), consumables=Decimal("0.0425"))
YEN = replace(RATES, currency="JPY")


@pytest.fixture(scope="module")
def reckoned(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """The workbooks as LibreOffice reckons them."""
    folder = tmp_path_factory.mktemp("books")
    books = {
        "plain": workbook(),
        "changed": changed(workbook(), **CHANGES),
        "step": workbook(STEP),
        "yen": workbook(YEN),
    }
    for name, book in books.items():
        (folder / f"{name}.xlsx").write_bytes(book)
    words = ["soffice", f"-env:UserInstallation={(folder / 'profile').as_uri()}", "--headless"]
    files = [str(folder / f"{name}.xlsx") for name in books]
    out = ["--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", str(folder / "out")]
    subprocess.run([*words, *out, *files], check=True, capture_output=True)
    return {name: load_workbook(folder / "out" / f"{name}.xlsx", data_only=True) for name in books}


def figures(sheet: Worksheet, column: int) -> dict[str, list[object]]:
    """What stands in a column, by the text in the first one."""
    found: dict[str, list[object]] = {}
    for row in sheet.iter_rows(min_row=2):
        found.setdefault(str(row[0].value), []).append(row[column].value)
    return found


def decimal(value: object) -> Decimal | None:
    """A cell as a decimal of what it shows."""
    return None if value in (None, "") else Decimal(repr(value))


def same(cells: Sequence[object], amounts: Sequence[Decimal | None]) -> None:
    assert [decimal(each) for each in cells] == list(amounts)


@WITHOUT_OFFICE
@pytest.mark.parametrize(
    ("book", "rates"), [("plain", RATES), ("changed", CHANGED), ("step", STEP), ("yen", YEN)]
)
def test_every_figure_is_the_costings(reckoned: dict[str, Any], book: str, rates: Rates) -> None:
    sheets = reckoned[book]
    for number, costing in enumerate(costings(rates), start=1):
        lines = [row[7].value for row in sheets[f"Materials {number}"].iter_rows(min_row=2)]
        same(lines[: len(costing.materials)], [each.amount for each in costing.materials])
        lines = [row[7].value for row in sheets[f"Labour {number}"].iter_rows(min_row=2)]
        same(lines[: len(costing.labour)], [each.amount for each in costing.labour])
        told = figures(sheets["Summary"], number)
        for kind in KINDS:
            same(told[kind], [costing.spent_on(kind)])
        for stage, hours in costing.hours:
            same(told[stage], [costing.worked_at(stage)])
            same(told[f"hours of {stage}"], [hours])
        for label, amount in (
            ("labour", costing.labour_cost),
            ("cost", costing.cost),
            ("prices and minutes that are missing", Decimal(len(costing.missing))),
            ("overhead", costing.overhead),
            ("price before tax", costing.net),
            ("margin in it", costing.margin),
            ("VAT", costing.tax),
            ("total", costing.total),
            ("all hours", costing.all_hours),
            ("days on site", costing.days_on_site),
            ("labour and margin for each hour", costing.earned_an_hour),
        ):
            assert decimal(told[label][0]) == amount, (costing.option, label)
        for when, amount in costing.payments:
            same(told[when], [amount])


def test_halves_are_halves() -> None:
    """The hard cases are what they are meant to be: a whole number of cents and a half."""
    off = [each.count * (each.price or 0) * 1000 % 10 for each in JOBS["halves"].materials]
    assert set(off) == {5}


def test_no_text_is_a_formula_and_no_amount_is_stored() -> None:
    opened = load_workbook(BytesIO(workbook()))
    ours = ("=Rates!", "=IF(", "=ROUND(", "=301-", "=83-", "=1-", "=5-")
    for sheet in opened.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    assert cell.value.startswith(ours), (sheet.title, cell.coordinate)
                    assert "cmd" not in cell.value
    assert opened["Summary"]["A1"].value == '=HYPERLINK("x")'
    assert opened["Summary"]["A1"].data_type == "s"
    assert opened["Materials 2"]["B2"].data_type == "s"


def test_the_same_costing_gives_the_same_bytes() -> None:
    assert workbook() == workbook()
