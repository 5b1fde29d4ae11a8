"""Elements as text: whatever words come in, a document of them is well-formed and says the same."""

from __future__ import annotations

from html.parser import HTMLParser
from xml.etree.ElementTree import fromstring

from hypothesis import given
from hypothesis import strategies as st

from bookmaker.hypertext.elements import XHTML, allowed, element, html, xhtml


@given(st.text(), st.text())
def test_any_words_are_kept_but_for_characters_that_no_xml_has(said: str, named: str) -> None:
    text = xhtml([element("title", said)], element("body", element("p", said, "|", said, title=named)), "en")
    root = fromstring(text.replace(b"\r", b"&#13;"))
    paragraph = root.find(f".//{{{XHTML}}}p")
    assert paragraph is not None
    assert paragraph.text == f"{allowed(said)}|{allowed(said)}"
    assert allowed(said) == "".join(
        c for c in said if c in "\t\n\r" or (c >= " " and c not in "\ufffe\uffff" and not "\ud800" <= c <= "\udfff")
    )


def test_texts_and_elements_keep_their_order() -> None:
    made = element(
        "p", "a", element("b", "c"), "d", None, ["e", element("i")], "f", epub_type="x", aria_label="y", class_="z"
    )
    assert "".join(made.itertext()) == "acdef"
    assert made.attrib == {"epub:type": "x", "aria-label": "y", "class": "z"}


def test_nothing_that_is_typed_becomes_a_tag() -> None:
    hostile = "</title><script>alert(1)</script>\"'&amp;<!--"
    page = html([element("title", hostile)], element("body", element("p", hostile, title=hostile)), "en").decode()
    assert Tags(page).found == ["html", "head", "title", "body", "p"]


class Tags(HTMLParser):
    """The tags and comments of a page in order."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.found: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append(tag)

    def handle_comment(self, data: str) -> None:
        self.found.append(data)
