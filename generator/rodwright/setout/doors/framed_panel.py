"""Frame and panel: stiles that run through, rails between them, a panel in a groove."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.setout.doors.panel import Outline, fit_panel
from rodwright.setout.joints import make_joint
from rodwright.setout.joints.housed import note
from rodwright.setout.setting import Setting
from rodwright.unit import (
    Blank,
    Groove,
    JointKind,
    Part,
    Placement,
    Rebate,
    Role,
    Stock,
    Surface,
    Working,
)
from rodwright.unit.directions import DOWN, FORWARD, LEFT, X, Z
from rodwright.wishes.doors import DoorsSpec
from rodwright.wishes.joints import JointSpec

BOTH_FACES = (Surface.FACE, Surface.REVERSE)


@dataclass(frozen=True, slots=True)
class Framed:
    """Refs of the stiles, and of all the pieces."""

    left: str
    right: str
    refs: tuple[str, ...]


def set_out_framed(
    setting: Setting, wish: DoorsSpec, outline: Outline, group: str, stock: Stock
) -> Framed | None:
    """Lay a frame and its panel on the bench, in a group of their own; None where it can't be
    made, which is noted."""
    bench, frame = setting.bench, wish.frame
    low_rail = frame.bottom_rail_width if frame.bottom_rail_width is not None else frame.rail_width
    inner = replace(
        outline,
        left=outline.left + frame.stile_width,
        right=outline.right - frame.stile_width,
        low=outline.low + low_rail,
        high=outline.high - frame.rail_width,
    )
    if not _possible(setting.at("frame"), wish, outline, inner):
        return None
    panel = fit_panel(setting.at("panel"), wish, outline, inner, stock)
    if panel is None:
        return None
    members = _Members(setting, wish, outline, inner, group, stock, panel.thickness)
    refs, rails = members.stiles(), members.rails()
    kind = panel.stock.lengthwise
    reach, up = frame.groove - panel.beside, frame.groove - panel.ends
    blank = Blank(
        inner.height + 2 * up,
        inner.width + 2 * reach,
        panel.thickness,
        panel.stock,
        kind,
        BOTH_FACES,
    )
    rear = (outline.front + outline.rear + panel.thickness) / 2
    sheet = bench.add(
        Part(
            bench.next_ref(Role.DOOR_PANEL),
            "Door panel",
            Role.DOOR_PANEL,
            group,
            blank,
            Placement((inner.right + reach, rear, inner.low - up), Z, LEFT),
            withdraw=FORWARD,
        )
    ).ref
    held = JointKind.FLOATING if panel.stock.kind == "board" else JointKind.GROOVE
    for member in (*refs, *rails):
        note(bench, held, member, sheet)
    for stile in refs:
        for rail in rails:
            if frame.joint.joint == "tongued":
                note(bench, JointKind.TONGUE, stile, rail)
            else:
                _fasten(setting.at("frame", "joint"), wish, stile, rail)
    return Framed(refs[0], refs[1], (*refs, *rails, sheet))


def _fasten(setting: Setting, wish: DoorsSpec, stile: str, rail: str) -> None:
    """Joint a rail to a stile in the wood beside the panel's groove."""
    bench = setting.bench
    whole = bench.parts[rail]
    narrower = replace(whole.blank, width=whole.blank.width - wish.frame.groove)
    clear = replace(whole, blank=narrower).bounds()
    make_joint(setting, wish.frame.joint, stile, rail, clear=clear)


def _possible(setting: Setting, wish: DoorsSpec, outline: Outline, inner: Outline) -> bool:
    """Whether the frame leaves an opening and its members enough beside their grooves."""
    say, frame = setting.say, wish.frame
    if inner.width <= 0 or inner.height <= 0:
        setting.refuse(
            f"stiles {say(frame.stile_width)} and rails {say(frame.rail_width)} wide leave no "
            f"panel in a door {say(outline.width)} x {say(outline.height)}",
            "Make them narrower, or the doors slabs.",
        )
        return False
    if not _jointed(setting.at("joint"), frame.joint):
        return False
    narrowest = min(
        width
        for width in (frame.stile_width, frame.rail_width, frame.bottom_rail_width)
        if width is not None
    )
    if frame.groove > narrowest / 2:
        setting.at("groove").refuse(
            f"a groove {say(frame.groove)} deep is more than half of a member "
            f"{say(narrowest)} wide",
            "Make the groove shallower or the members wider.",
        )
        return False
    return True


def _jointed(setting: Setting, joint: JointSpec) -> bool:
    """Whether a door's frame is made with such joints."""
    if joint.joint not in ("tongued", "dowelled", "loose-tenoned"):
        setting.refuse(
            f"rails and stiles of a door can't be {joint.joint}",
            "Write `tongued`, `dowelled` or `loose-tenoned`.",
        )
        return False
    figures = joint.model_fields_set - {"joint"}
    if joint.joint == "tongued" and figures:
        setting.at(min(figures)).refuse(
            "the tongues of a door's rails fill the panel's groove",
            "Leave it out, and give `frame.groove` or the panel's thickness.",
        )
        return False
    return True


@dataclass(frozen=True, slots=True)
class _Members:
    """Stiles and rails of one door round its ``inner`` outline, for a panel so thick (mm)."""

    setting: Setting
    wish: DoorsSpec
    outline: Outline
    inner: Outline
    group: str
    stock: Stock
    panel: float

    @property
    def thickness(self) -> float:
        """Of every member."""
        return self.outline.rear - self.outline.front

    def stiles(self) -> tuple[str, str]:
        """Both stiles, grooved in their inner edges; right through where the rails' tongues fill
        the grooves, else as far as the panel reaches.

        The right one is the left one turned end for end, so that they are the same piece where
        the rails are alike.
        """
        outline, inner, depth = self.outline, self.inner, self.wish.frame.groove
        blank = self._blank(outline.height, self.wish.frame.stile_width)
        position = (self.thickness - self.panel) / 2
        whole = Groove(Surface.FACE_EDGE, position, self.panel, depth, use="door panel")
        start, end = inner.low - depth - outline.low, outline.high - inner.high - depth
        left = Placement((inner.left, outline.rear, outline.low), Z, LEFT)
        right = Placement((inner.right, outline.rear, outline.high), DOWN, X)
        if self.wish.frame.joint.joint == "tongued":
            grooves = whole, whole
        else:
            grooves = (
                replace(whole, start=start, stop=outline.height - end),
                replace(whole, start=end, stop=outline.height - start),
            )
        return (
            self._lay(Role.DOOR_STILE, "Left door stile", blank, left, (grooves[0],)),
            self._lay(Role.DOOR_STILE, "Right door stile", blank, right, (grooves[1],)),
        )

    def rails(self) -> tuple[str, str]:
        """Both rails, grooved in their inner edges; with a tongue at each end where that is the
        joint.

        The top one is the bottom one turned end for end.
        """
        outline, inner, depth = self.outline, self.inner, self.wish.frame.groove
        cheek = (self.thickness - self.panel) / 2
        tongue = depth if self.wish.frame.joint.joint == "tongued" else 0.0
        workings: tuple[Working, ...] = (
            Groove(Surface.BACK_EDGE, cheek, self.panel, depth, use="door panel"),
        )
        if tongue:
            workings += tuple(
                Rebate(surface, end, tongue, cheek, use="tongue")
                for surface in BOTH_FACES
                for end in (Surface.NEAR_END, Surface.FAR_END)
            )
        left, right = inner.left - tongue, inner.right + tongue
        bottom = Placement((left, outline.rear, outline.low), X, Z)
        top = Placement((right, outline.rear, outline.high), LEFT, DOWN)
        low = self._blank(right - left, inner.low - outline.low)
        high = self._blank(right - left, outline.high - inner.high)
        return (
            self._lay(Role.DOOR_RAIL, "Bottom door rail", low, bottom, workings),
            self._lay(Role.DOOR_RAIL, "Top door rail", high, top, workings),
        )

    def _blank(self, length: float, width: float) -> Blank:
        stock = self.stock
        return Blank(length, width, self.thickness, stock, stock.lengthwise, BOTH_FACES)

    def _lay(
        self, role: Role, name: str, blank: Blank, at: Placement, workings: tuple[Working, ...]
    ) -> str:
        """Lay one member on the bench; its ref."""
        bench = self.setting.bench
        part = Part(
            bench.next_ref(role), name, role, self.group, blank, at, workings, withdraw=FORWARD
        )
        return bench.add(part).ref
