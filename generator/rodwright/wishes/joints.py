"""The spec language's part about joints: how one part meets another.

A joint is written as a bare word (`dowelled`), or as keys where some figure of it is wished
(`{joint: dowelled, diameter: 10}`).  Lengths are millimetres once read.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import ValidationInfo, field_validator
from pydantic_core import PydanticCustomError

from rodwright.wishes.fields import InShort, Length, LengthOrZero, SpecModel

JointWord = Literal[
    "butted",
    "screwed",
    "housed",
    "rebated",
    "tongued",
    "dowelled",
    "biscuited",
    "loose-tenoned",
    "pocket-screwed",
    "knock-down",
    "mitred",
]
"""The names of the joints."""

_PLACES = ("spacing", "edge")
FIGURES: dict[JointWord, tuple[str, ...]] = {
    "butted": (),
    "screwed": ("diameter", "length", *_PLACES),
    "housed": ("depth", "stopped", "shoulder"),
    "rebated": ("depth",),
    "tongued": ("depth", "stopped", "tongue", "thickness"),
    "dowelled": ("diameter", "length", *_PLACES),
    "biscuited": ("size", *_PLACES),
    "loose-tenoned": ("thickness", "length", *_PLACES),
    "pocket-screwed": ("length", *_PLACES),
    "knock-down": ("fitting", *_PLACES),
    "mitred": ("reinforced", *_PLACES),
}
"""The figures that go with each joint."""


class JointSpec(SpecModel):
    """A joint with figures of its own."""

    joint: JointWord
    """How the parts meet; the other keys go with some of them."""
    depth: Length | None = None
    """Housed, rebated, tongued: how far one part reaches into the other; unless said, a third of
    the thickness it is cut into, in a rebate half."""
    stopped: LengthOrZero = 0.0
    """Housed, tongued: the channel stops this far behind the front, and the part that goes in is
    notched to cover that.  A router leaves its end round: square it with a chisel, or round the
    part's corner."""
    shoulder: Length | None = None
    """Housed: the end is rebated to a tongue this much thinner, so that a shoulder covers the
    housing's edge."""
    tongue: Literal["central", "barefaced"] = "central"
    """Tongued: the tongue lies in the middle of the thickness, or flush with one face."""
    thickness: Length | None = None
    """Tongued, loose-tenoned: thickness of the tongue or tenon; about a third of the part's unless
    said."""
    diameter: Length | None = None
    """Screwed, dowelled: of the screws or dowels; chosen from the thickness unless said."""
    length: Length | None = None
    """Screwed, pocket-screwed, dowelled, loose-tenoned: of what holds it; chosen from the
    thickness unless said."""
    size: Literal["0", "10", "20"] | None = None
    """Biscuited: the biscuits' size; the largest that the thickness takes unless said."""
    fitting: Literal["cam", "barrel_nut"] = "cam"
    """Knock-down: a bolt held by a cam, or a bolt through into a barrel nut."""
    reinforced: Literal["nothing", "biscuits", "dowels", "loose_tongue"] = "nothing"
    """Mitred: what is let in across the mitre."""
    spacing: Length | None = None
    """Greatest distance between fixings along a meeting; the usual one unless said."""
    edge: Length | None = None
    """From the ends of a meeting to its first and last fixing; the usual one unless said."""

    @field_validator(*dict.fromkeys(figure for figures in FIGURES.values() for figure in figures))
    @classmethod
    def _belongs(cls, value: object, info: ValidationInfo) -> object:
        """Figures that say nothing about the joint are refused, so that none passes unread."""
        joint = info.data.get("joint")
        owners = [word for word, figures in FIGURES.items() if info.field_name in figures]
        if joint is not None and joint not in owners:
            raise PydanticCustomError(
                "joint_figure",
                "it says nothing about a {joint} joint",
                {
                    "joint": joint,
                    "remedy": f"Leave it out; it goes with {' or '.join(owners)} ones.",
                },
            )
        return value


JointField = Annotated[JointSpec, InShort(JointWord, "joint")]
"""A joint in a spec: one of the words, or keys of which `joint` is one."""
