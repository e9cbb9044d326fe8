"""The page's text: what it is told stands in it whole, and nothing of it is markup."""

from __future__ import annotations

import base64
import gzip
import json
import re
from html.parser import HTMLParser

from hypothesis import given
from hypothesis import strategies as st

from rodwright.page.shell import page_html
from rodwright.page.standing import Picture, standing_markup
from rodwright.page.words import Fact, Words

TEXT = st.text(
    st.sampled_from("<>/!-&;\"'` \u2028\u2029\u202e\x07]") | st.characters(codec="utf-8"),
    min_size=1,
) | st.sampled_from(["</script>", "<!--", "<script>", "]]>", "&lt;", "</title>"])


class _Reader(HTMLParser):
    """What elements a page has, and the text in each kind of them (Python's reader of HTML)."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[str] = []
        self.texts: dict[str, str] = {}
        self.attributes: list[tuple[str, str | None]] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs

    def handle_data(self, data: str) -> None:
        if self.tags:
            self.texts[self.tags[-1]] = self.texts.get(self.tags[-1], "") + data


PLAIN = _Reader(page_html("a", {}, about="b")).tags


@given(TEXT, TEXT)
def test_titles_and_what_is_told_change_no_markup(title: str, said: str) -> None:
    read = _Reader(page_html(title, {"said": [said]}, about=said))
    assert read.tags == PLAIN
    told = re.search(r'id="told">(.*?)</script>', page_html(title, {"said": [said]}), re.DOTALL)
    assert told is not None
    assert json.loads(told[1]) == {"said": [said]}
    assert ("content", said) in read.attributes


@given(TEXT, TEXT)
def test_packed_it_is_the_same(title: str, said: str) -> None:
    text = page_html(title, {"said": [said]}, packed=True)
    told = re.search(r'<script type="application/gzip" id="told">([A-Za-z0-9+/=]*)</script>', text)
    assert told is not None
    assert json.loads(gzip.decompress(base64.b64decode(told[1]))) == {"said": [said]}


@given(TEXT, TEXT)
def test_what_stands_until_the_script_runs_is_text(title: str, said: str) -> None:
    words = Words(maker=said, draft=said, paragraphs=(said,), facts=(Fact(said, ((said, ""),)),))
    plain = Words(maker="a", draft="a", paragraphs=("a",), facts=(Fact("a", (("a", ""),)),))
    picture = Picture("a", b"\xff\xd8", "image/jpeg")
    read = _Reader(standing_markup(title, "1 x 1", words, [Picture(said, b"", "image/jpeg")], []))
    expected = _Reader(standing_markup("a", "1 x 1", plain, [picture], [])).tags
    assert read.tags == expected
    assert read.texts["dt"].strip() == said.strip()
