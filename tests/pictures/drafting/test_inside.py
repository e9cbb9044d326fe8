"""Notes within a view: where they are written."""

from __future__ import annotations

from rodwright.pictures.drafting.inside import draft_notes
from rodwright.pictures.drafting.room import Room
from rodwright.pictures.drafting.views import Note


def test_a_ref_with_no_room_between_lines_stands_beside_them_with_a_leader() -> None:
    """The lines of the view aren't broken for it: a worktop of 2 mm on paper, a word of 3."""
    room = Room((((0.0, 40.0), (100.0, 40.0)), ((0.0, 42.0), (100.0, 42.0))))
    at = (50.0, 41.0)
    (note,) = draft_notes([(Note(at, "WT1"), at)], room)
    assert note.leader and room.softly_met(note.text.rect) == 0
    assert note.leader[0][0] == at or note.leader[0][1] == at


def test_a_ref_with_room_stands_where_it_belongs() -> None:
    room = Room((((0.0, 30.0), (100.0, 30.0)), ((0.0, 50.0), (100.0, 50.0))))
    at = (50.0, 40.0)
    (note,) = draft_notes([(Note(at, "SH1"), at)], room)
    assert not note.leader
    assert note.text.rect.left < at[0] < note.text.rect.right
