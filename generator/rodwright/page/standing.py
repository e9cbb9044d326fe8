"""What of a page to send is there without its script: title, pictures and words, as markup."""

from __future__ import annotations

import base64
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from html import escape

from rodwright.page.words import Fact, Words

_NOTICE = (
    "To turn the piece, to open it and to take it apart, open this page in a browser of today that "
    "may run its script. What it looks like is told here."
)


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture of the unit: its caption (also for who can't see it), its file, and what kind of
    file that is (``image/jpeg``)."""

    caption: str
    data: bytes
    media: str

    @property
    def address(self) -> str:
        """The picture as a data address (RFC 2397)."""
        return f"data:{self.media};base64,{base64.b64encode(self.data).decode('ascii')}"


def standing_markup(
    title: str,
    size: str,
    words: Words,
    photographs: Sequence[Picture],
    drawings: Sequence[Picture],
) -> str:
    """The markup; the page's script takes the pictures from it and puts itself in its place.

    Whatever a spec says stands in it as text (HTML standard, 13.1.2).
    """
    return (
        '<main class="standing">\n'
        f"<h1>{escape(title)}</h1>\n<p>{escape(size)}</p>\n"
        + "".join(f"<p>{escape(each)}</p>\n" for each in (words.maker, words.draft) if each)
        + f'<p id="still">{_NOTICE}</p>\n'
        + "".join(_figure("photograph", each) for each in photographs)
        + "".join(f"<p>{escape(each)}</p>\n" for each in words.paragraphs)
        + _facts(words.facts)
        + "".join(_figure("drawing", each) for each in drawings)
        + "</main>"
    )


def _figure(kind: str, picture: Picture) -> str:
    caption = escape(picture.caption)
    return (
        f'<figure class="{kind}"><img alt="{caption}" src="{picture.address}">'
        f"<figcaption>{caption}</figcaption></figure>\n"
    )


def _facts(facts: Iterable[Fact]) -> str:
    told = "".join(
        f"<dt>{escape(fact.word)}</dt>\n"
        + "".join(f"<dd>{escape(said)}</dd>\n" for said, _ in fact.lines)
        for fact in facts
    )
    return f"<dl>\n{told}</dl>\n" if told else ""
