"""The paragraph that goes with a rule."""

from __future__ import annotations

from dataclasses import dataclass

PRACTICE = "Common practice, no source."
GEOMETRY = "Plane and solid geometry of the parts as they are set out; no figure of the trade."


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a rule means, for a maker who asks.

    ``title`` is one line; ``source`` says where its figures come from; ``danger`` says whom it
    can hurt and how, and is empty where it hurts nobody.
    """

    title: str
    meaning: str
    source: str
    remedy: str
    danger: str = ""

    @property
    def paragraphs(self) -> tuple[tuple[str, str], ...]:
        """Heading (none for the first) and text of all there is to say below the title."""
        told = (
            ("", self.meaning),
            ("What to do", self.remedy),
            ("Danger", self.danger),
            ("Source", self.source),
        )
        return tuple((heading, text) for heading, text in told if text)
