"""How to find one's way in an e-book: contents, the pages of the printed edition, landmarks.

In: texts, and the printed pages. Out: marks of pages in the texts, and the navigation document (EPUB 3.3, 7).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from xml.etree.ElementTree import Element

from bookmaker.display.items import Page
from bookmaker.ebook.texts import Text
from bookmaker.hypertext.elements import element
from bookmaker.language import Catalogue


def mark_pages(texts: Sequence[Text], pages: Iterable[Page], numbers: dict[str, int]) -> list[tuple[str, str]]:
    """Put a mark where a printed page begins; the label and the address of each.

    `numbers` are those of the puzzles by their ids. A page is known by the first part, puzzle or key that begins on it;
    one on which none begins has no mark.
    """
    places = {made.get("id"): (text.file, made) for text in texts for made in text.body.iter() if made.get("id")}
    listed = []
    for page in pages:
        names = (_name(anchor.name, numbers) for anchor in page.anchors)
        file, at = next((places.pop(name) for name in names if name in places), ("", None))
        if at is not None:
            name = f"page-{page.label}"
            at.insert(0, element("span", id=name, epub_type="pagebreak", role="doc-pagebreak", title=page.label))
            listed.append((page.label, f"{file}#{name}"))
    return listed


def navigation(words: Catalogue, texts: Sequence[Text], printed: Iterable[tuple[str, str]]) -> Element:
    """The body of the navigation document."""
    entries = [(level, f"{text.file}#{name}", said) for text in texts for level, name, said in text.entries]
    contents = words.say("heading-contents")
    pages = [element("li", element("a", label, href=where)) for label, where in printed]
    first = next(text for text in texts if text.matter == "bodymatter")
    marks = (
        ("cover", texts[0].file, words.say("cover")),
        ("toc", "nav.xhtml#contents", contents),
        ("bodymatter", first.file, words.say("puzzles")),
    )
    landmarks = (element("li", element("a", said, href=where, epub_type=kind)) for kind, where, said in marks)
    heading = element("h1", contents)
    return element(
        "body",
        element("nav", heading, _listed(entries), id="contents", epub_type="toc", role="doc-toc"),
        _unlisted("page-list", "doc-pagelist", words.say("printed-pages"), pages) if pages else None,
        _unlisted("landmarks", "", words.say("landmarks"), landmarks),
    )


def _unlisted(kind: str, role: str, heading: str, items: Iterable[Element]) -> Element:
    """A list that reading systems offer in ways of their own."""
    said = {"role": role} if role else {}
    return element(
        "nav", element("h2", heading), element("ol", items), epub_type=kind, id=kind, hidden="hidden", **said
    )


def _listed(entries: Sequence[tuple[int, str, str]]) -> Element:
    """Entries of level 1 stand in a list below the one before them."""
    top = element("ol")
    for level, where, words in entries:
        item = element("li", element("a", words, href=where))
        if level == 0:
            top.append(item)
            continue
        above = top[-1]
        if len(above) < 2:
            above.append(element("ol"))
        above[1].append(item)
    return top


def _name(anchor: str, numbers: dict[str, int]) -> str:
    """The name of a heading, from that of its place on paper: “puzzle low-tide” → “puzzle-7”. On paper hints stand in
    another order, so theirs have none."""
    match = re.fullmatch(r"(puzzle|key) (.+)", anchor)
    if match:
        return f"{match[1]}-{numbers[match[2]]}"
    return "" if anchor.startswith(("hint ", "hints ")) else anchor.replace(" ", "-")
