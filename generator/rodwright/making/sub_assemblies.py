"""What is made apart and comes as one: doors, drawers, frames, bases, built-up shelves."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass

from rodwright.unit import TRAITS, Joint, JointKind, Part, Role, Unit
from rodwright.unit.roles import Assembly

_GLUED_UP = (JointKind.EDGE_GLUED, JointKind.FACE_GLUED)
_ON_ANOTHER = (Role.LIPPING, Role.RUNNER, Role.PACKER)
_FIXED_ON = (*_GLUED_UP, JointKind.SCREWED, JointKind.BUTTONED)


@dataclass(frozen=True, slots=True, eq=False)
class Piece:
    """What comes as one: a part, or a sub-assembly and what that is made of.

    ``name`` is a sub-assembly's; ``needed`` says that it has to come as one (a drawer), where
    another may be put together in its place if its way isn't free (a shelf and its lipping).
    """

    refs: tuple[str, ...]
    name: str = ""
    members: tuple[Piece, ...] = ()
    needed: bool = True


def pieces_of(unit: Unit) -> tuple[Piece, ...]:
    """What a unit is put together from, in the order of its parts."""
    refs = [part.ref for part in unit.parts]
    found = [_motion(unit, motion.refs) for motion in unit.motions]
    legs: list[Piece] = []
    taken = {ref for piece in found for ref in piece.refs}
    for assembly, name, by in (
        (Assembly.FACE_FRAME, "face frame", _makes_frame),
        (Assembly.BASE, "base", _rigid),
    ):
        own = [part for part in unit.parts if TRAITS[part.role].of is assembly]
        groups = _joined_up(unit, [part for part in own if part.ref not in taken], by)
        made = [group for group in groups if len(group) > 1]
        # Legs that nothing joins to each other stand by what they are fixed under.
        if name != "base" or len(groups) == 1:
            found += [_group(unit, group, name) for group in made]
        else:
            legs += [_group(unit, group, f"{unit.part(group[0]).role}") for group in made]
    taken |= {ref for piece in (*found, *legs) for ref in piece.refs}
    left = [part for part in unit.parts if part.ref not in taken]
    carcass = [part for part in left if _of_carcass(unit, part)]
    found += _built_up(unit, [part for part in left if part not in carcass])
    built = _built_up(unit, carcass)
    loose = [piece for piece in built if any(_rests(unit, ref) for ref in piece.refs)]
    stays = [*(each for each in built if each not in loose), *legs]
    apart = unit.opening is not None or any(piece.name.startswith("base") for piece in found)
    found += [*loose, *_carcasses(unit, list(_numbered(stays)), apart)]
    return _numbered(sorted(found, key=lambda piece: refs.index(piece.refs[0])))


def _of_carcass(unit: Unit, part: Part) -> bool:
    """Whether a part is one of the carcass, or of a base that is nothing but boards or legs fixed
    to it."""
    of = TRAITS[part.role].of
    return of is Assembly.CARCASS or (
        of is Assembly.BASE
        and any(_rigid(joint) and part.ref in (joint.first, joint.second) for joint in unit.joints)
    )


def _rigid(joint: Joint) -> bool:
    return joint.kind.meets and joint.kind is not JointKind.STANDING


def _makes_frame(joint: Joint) -> bool:
    """Whether members of a face frame are joined before it is fitted: those whose mitres
    nothing is let into are fitted one by one (common practice, no source)."""
    return joint.kind is not JointKind.BUTT and (
        joint.kind is not JointKind.MITRE or bool(joint.fixings)
    )


def _motion(unit: Unit, refs: tuple[str, ...]) -> Piece:
    group = unit.part(refs[0]).group
    return _group(unit, refs, group[:1].lower() + group[1:])


def _group(unit: Unit, refs: Collection[str], name: str, needed: bool = True) -> Piece:
    parts = [part for part in unit.parts if part.ref in refs]
    if len(parts) == 1:
        return Piece((parts[0].ref,))
    return Piece(tuple(part.ref for part in parts), name, tuple(_built_up(unit, parts)), needed)


def _joined_up(
    unit: Unit, parts: Iterable[Part], by: Callable[[Joint], bool]
) -> list[tuple[str, ...]]:
    """Refs of parts that joints of a kind hold together, in the order of the parts."""
    refs = [part.ref for part in parts]
    heads = {ref: ref for ref in refs}

    def head(ref: str) -> str:
        while heads[ref] != ref:
            ref = heads[ref]
        return ref

    for joint in unit.joints:
        if joint.first in heads and joint.second in heads and by(joint):
            one, other = sorted((head(joint.first), head(joint.second)), key=refs.index)
            heads[other] = one
    return [tuple(ref for ref in refs if head(ref) == each) for each in refs if heads[each] == each]


def _rests(unit: Unit, ref: str) -> bool:
    """Whether a part lies on its pins and is held by nothing, but for what is glued on it."""
    own = [joint for joint in unit.joints if joint.second == ref and joint.kind not in _GLUED_UP]
    return any(joint.kind is JointKind.RESTING for joint in own)


def _built_up(unit: Unit, parts: list[Part]) -> list[Piece]:
    """Parts, with what is glued or screwed on one of them before it goes in."""
    layers = _joined_up(
        unit,
        [part for part in parts if part.role not in _ON_ANOTHER],
        lambda joint: joint.kind in _GLUED_UP,
    )
    on = {ref: gathered for gathered in map(list, layers) for ref in gathered}
    for part in parts:
        if part.role in _ON_ANOTHER:
            hosts = [on.get(ref) for ref in _joined_to(unit, part.ref)]
            if hosts and hosts[0] is not None and all(each is hosts[0] for each in hosts):
                hosts[0].append(part.ref)
            else:
                layers.append((part.ref,))
    groups = [tuple(on.get(group[0], group)) for group in layers]
    return [_glued_up(unit, group) for group in groups]


def _joined_to(unit: Unit, ref: str) -> list[str]:
    """What a lipping, runner or packer is fixed on."""
    return [
        joint.second if joint.first == ref else joint.first
        for joint in unit.joints
        if ref in (joint.first, joint.second) and joint.kind in _FIXED_ON
    ]


def _glued_up(unit: Unit, refs: tuple[str, ...]) -> Piece:
    members = tuple(Piece((ref,)) for ref in refs)
    if len(refs) == 1:
        return members[0]
    main = max((unit.part(ref) for ref in refs), key=_volume)
    return Piece(refs, f"{main.role} {main.ref}", members, needed=False)


def _volume(part: Part) -> float:
    size = part.blank.size
    return size[0] * size[1] * size[2]


def _carcasses(unit: Unit, pieces: list[Piece], apart: bool) -> Iterator[Piece]:
    """The carcass: as one where it is set on something or into an opening."""
    refs = {ref for piece in pieces for ref in piece.refs}
    groups = _joined_up(unit, [part for part in unit.parts if part.ref in refs], _rigid)
    for group in groups:
        members = tuple(piece for piece in pieces if piece.refs[0] in group)
        if len(members) == 1 or not (apart or len(groups) > 1):
            yield from members
        else:
            yield Piece(group, "carcass", members)


def _numbered(pieces: list[Piece]) -> tuple[Piece, ...]:
    """Pieces whose names tell them apart."""
    names = [piece.name for piece in pieces]
    found = []
    for number, piece in enumerate(pieces):
        if piece.name and names.count(piece.name) > 1:
            which = names[: number + 1].count(piece.name)
            piece = Piece(piece.refs, f"{piece.name} {which}", piece.members, piece.needed)
        found.append(piece)
    return tuple(found)
