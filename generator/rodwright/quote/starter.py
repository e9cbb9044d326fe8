"""The text of a rates file to start from.

**Every figure in it is invented**, the minutes of :mod:`rodwright.quote.operations` among them: no
source is claimed for any, and the file says so where they stand.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from rodwright.lengths import LengthUnit
from rodwright.quote.operations import operations_in

_HEAD = """\
# A workshop's rates.  EVERY FIGURE HERE IS INVENTED, to show where yours go: change them all before
# you send a quote to anybody.  Every key is told in docs/rates.md.
{unit}
currency: {currency}  # a code of ISO 4217; nothing is ever converted

# For the head of the quote.
workshop:
  name: Your workshop
  address: [Street and number, Town]
  telephone: "000 000 000"
  email: you@example.com
  # tax_number: "..."

# What an hour of work costs you: one amount, or {{any: 45.00, fitting: 52.00}} by stage.  Invented.
hour: 45.00

# On top, all invented.  Overhead is a share of materials and labour; margin is a share of the PRICE
# before tax: 20 % on a cost of 80 asks for 100.  Which tax is due, your accountant knows.
waste: 15 %      # of the net area, only where there is no cutting plan
consumables: 4 % # of stock, edging, hardware and finish: glue, abrasives, filler, tape, blades
overhead: 15 %
margin: 20 %
tax: {{name: {tax}, rate: 20 %}}  # `tax: 0` if you owe none
# round_up_to: 10

# When it is paid; the shares add up to 100 %.  Invented.
payments:
  - {{when: with the order, share: 40 %}}
  - {{when: before it is fitted, share: 40 %}}
  - {{when: when it is done, share: 20 %}}
valid_days: 30

# What comes with every job and isn't counted; yours alone, it never stands in the client's quote.
# extras:
#   - {{what: sharpening, minutes: 20, stage: machining}}
#   - {{what: disposal, price: 25.00}}

# On site.  Visits are counted by the days it takes, unless you say `visits:`.  Invented.
hours_a_day: 7.5
fitters: 2
travel: {{hours: 1, cost: 15.00}}

# What materials cost before tax, for one or by length, area or volume: 14.50, 6.20/m, 38/m2,
# 1850/m3, 7.50/board ft.  A price in a spec or a rack goes first.  What a quote lacks, it names.
# Articles go by their name in the hardware list, or by name and size where sizes differ
# (`"wood screw, 4 x 40 mm"`).  All invented.
prices:
"""
_MINUTES = """
# Minutes that one person takes for each.  All invented: time yourself, and put your own.
minutes:
"""
_STAGE = "  # {stage}\n"

_SHEETS: dict[LengthUnit, tuple[tuple[str, str], ...]] = {
    "mm": (
        ("birch plywood 4 mm", "9/m2"),
        ("birch plywood 6 mm", "11/m2"),
        ("birch plywood 6.5 mm", "11/m2"),
        ("birch plywood 9 mm", "15/m2"),
        ("birch plywood 12 mm", "19/m2"),
        ("birch plywood 15 mm", "22/m2"),
        ("birch plywood 18 mm", "26/m2"),
        ("birch plywood 24 mm", "35/m2"),
        ("softwood plywood 12 mm", "11/m2"),
        ("softwood plywood 18 mm", "16/m2"),
        ("softwood plywood 21 mm", "19/m2"),
        ("mdf 6 mm", "5.50/m2"),
        ("mdf 12 mm", "8/m2"),
        ("mdf 18 mm", "11/m2"),
        ("mdf 22 mm", "14/m2"),
        ("oak-veneered mdf 19 mm", "34/m2"),
        ("walnut-veneered mdf 19 mm", "46/m2"),
    ),
    "in": (
        ("birch plywood 1/4 in", "1.20/sq ft"),
        ("birch plywood 1/2 in", "1.90/sq ft"),
        ("birch plywood 3/4 in", "2.60/sq ft"),
        ("softwood plywood 1/4 in", "0.80/sq ft"),
        ("softwood plywood 1/2 in", "1.10/sq ft"),
        ("softwood plywood 3/4 in", "1.50/sq ft"),
        ("mdf 1/4 in", "0.60/sq ft"),
        ("mdf 1/2 in", "0.85/sq ft"),
        ("mdf 3/4 in", "1.10/sq ft"),
    ),
}
_BOARDS: dict[LengthUnit, tuple[tuple[str, str], ...]] = {
    "mm": (
        ("european oak", "2600/m3"),
        ("european ash", "1900/m3"),
        ("walnut", "4800/m3"),
        ("cherry", "3600/m3"),
        ("scots pine", "700/m3"),
    ),
    "in": (
        ("oak", "9.50/board ft"),
        ("walnut", "14/board ft"),
        ("cherry", "11/board ft"),
        ("pine", "4.20/board ft"),
    ),
}
_VENEERS = ("oak", "ash", "walnut", "birch", "cherry")
_EDGING: dict[LengthUnit, str] = {"mm": "0.90/m", "in": "0.30/ft"}
_HARDWARE = (
    ("wood screw", "0.05"),
    ("countersunk screw", "0.04"),
    ("pocket screw", "0.07"),
    ("plate screw", "0.06"),
    ("panel pin", "0.01"),
    ("dowel", "0.04"),
    ("biscuit", "0.06"),
    ("loose tenon", "0.35"),
    ("loose tongue", "0.20"),
    ("plug", "0.05"),
    ("cam", "0.30"),
    ("cam bolt", "0.25"),
    ("barrel nut", "0.30"),
    ("connecting bolt", "0.40"),
    ("shelf pin", "0.10"),
    ("sleeve for a shelf pin", "0.08"),
    ("bumper", "0.03"),
    ("washer", "0.02"),
    ("hinge plate", "0.80"),
    ("concealed hinge", "2.60"),
    ("butt hinge", "3.40"),
    ("pair of side-mounted drawer slides", "18.50"),
    ("adjustable foot", "1.60"),
    ("plinth clip", "0.60"),
    ("worktop button", "0.45"),
    ("bar handle", "6.50"),
    ("edge pull", "5.20"),
    ("turned knob", "4.20"),
    ("handle screw", "0.10"),
    ("wall screw", "0.12"),
    ("wall plug", "0.08"),
    ("packer", "0.06"),
)
_FINISHES: dict[LengthUnit, tuple[tuple[str, str], ...]] = {
    "mm": (
        ("oil", "34.00"),
        ("lacquer", "28.00"),
        ("primer", "24.00"),
        ("paint", "38.00"),
        ("stain", "30.00"),
    ),
    "in": (
        ("oil", "32.00"),
        ("lacquer", "26.00"),
        ("primer", "22.00"),
        ("paint", "36.00"),
        ("stain", "28.00"),
    ),
}


def starter_rates(currency: str, unit: LengthUnit) -> str:
    """A rates file in a currency, its minutes and prices by the metre or by the foot."""
    runs = "feet, square feet and pounds" if unit == "in" else "metres, m2 and kg"
    head = _HEAD.format(
        currency=currency,
        unit=f"unit: {unit}  # minutes and prices are by {runs}",
        tax="sales tax" if unit == "in" else "VAT",
    )
    return "".join([head, *_prices(unit), _MINUTES, *_minutes(unit)])


def _prices(unit: LengthUnit) -> Iterator[str]:
    liquid = "quart" if unit == "in" else "litre"
    for heading, rows in (
        ("sheets", _SHEETS[unit]),
        ("boards", _BOARDS[unit]),
        ("edging", tuple((f"{wood} veneer edging", _EDGING[unit]) for wood in _VENEERS)),
        ("hardware, for one", _HARDWARE),
        (f"finish, for a {liquid}", _FINISHES[unit]),
    ):
        yield f"  # {heading}\n"
        for key, price in rows:
            yield f"  {_quoted(key)}: {price}\n"


def _minutes(unit: LengthUnit) -> Iterator[str]:
    for stage, kinds in groupby(operations_in(unit), key=lambda each: each.stage):
        yield _STAGE.format(stage=stage)
        for each in kinds:
            line = f"  {each.key}: {each.minutes}"
            yield f"{line:<24}# {each.per}: {each.name}\n"


def _quoted(key: str) -> str:
    """A key in quotes where it has a comma, so that it reads as one name."""
    return f'"{key}"' if "," in key else key
