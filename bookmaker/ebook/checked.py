"""A finished e-book, read back as a reader has it.

In: the bytes of the file and the proven puzzles. Out: diagnostics: a table of a puzzle or a key that holds other digits
than were proven, one that is missing, a link that leads nowhere.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from io import BytesIO
from xml.etree.ElementTree import Element, fromstring
from zipfile import ZipFile

from bookmaker.book.contents import BookPuzzle
from bookmaker.hypertext.elements import XHTML
from bookmaker.hypertext.tables import BEYOND
from bookmaker.proof import Proof
from bookmaker.source.diagnostics import Diagnostic, Place

_X = f"{{{XHTML}}}"


def check_ebook(
    file: bytes, name: str, puzzles: tuple[BookPuzzle, ...], proofs: Mapping[str, Proof]
) -> list[Diagnostic]:
    """What is wrong with the file of that name; nothing where all is well."""
    texts = _texts(file)
    ids = {f"{text}#{made.get('id')}" for text, root in texts.items() for made in root.iter() if made.get("id")}
    tables = {made.get("id"): made for root in texts.values() for made in root.iter(f"{_X}section")}
    said: list[str] = []
    for puzzle in puzzles:
        proof = proofs[puzzle.id]
        for place, digits in (
            (f"puzzle-{puzzle.number}", proof.entry.puzzle.givens),
            (f"key-{puzzle.number}", proof.solution),
        ):
            section = tables.get(place)
            if digits and (section is None or _digits(section, puzzle.puzzle.grid.symbols) != digits):
                said.append(f"the digits of {place} are not those that were proven")
    for text, root in texts.items():
        for made in root.iter(f"{_X}a"):
            to = made.get("href", "")
            whole = f"{text}{to}" if to.startswith("#") else to
            if "//" not in to and whole not in ids and whole not in texts:
                said.append(f"a link in {text} leads to {to}, which is not there")
    return [Diagnostic(Place(name), "ebook-fault", words, "this is a fault of bookmaker") for words in said]


def _texts(file: bytes) -> dict[str, Element]:
    with ZipFile(BytesIO(file)) as archive:
        names = [name for name in archive.namelist() if name.endswith(".xhtml")]
        return {name.removeprefix("EPUB/"): fromstring(archive.read(name)) for name in names}


def _digits(section: Element, symbols: str) -> tuple[int, ...]:
    return tuple(_read(section, symbols))


def _read(section: Element, symbols: str) -> Iterator[int]:
    for cell in section.iterfind(f".//{_X}tbody//{_X}td"):
        if cell.get("class") == BEYOND:
            continue
        text = "".join(cell.itertext())
        yield symbols.find(text) + 1 if text != "blank" else 0
