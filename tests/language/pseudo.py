"""A language that nobody speaks: English a third longer, with accents, so that a string which escaped the catalogue
shows, and a box that is too tight is found.

In: a folder to write to. Out: its messages, known to bookmaker as “eo” until the monkeypatch is undone.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from fluent.syntax import FluentSerializer
from fluent.syntax.ast import EntryType, Resource, TextElement

from bookmaker.language import FOLDERS
from bookmaker.language.catalogues import LOCALES
from bookmaker.rules import kinds
from tests.language.parsed import messages, nodes

CODE = "eo"
"""A language with patterns for hyphens that bookmaker does not speak."""

PAIRS = zip("aeiouyAEIOUY", "áéíóúýÁÉÍÓÚÝ", strict=True)
VOWELS = str.maketrans({vowel: f"{vowel}{accented}" for vowel, accented in PAIRS})


def stretched(text: str) -> str:
    """The text, each vowel followed by itself with an accent."""
    return text.translate(VOWELS)


def speak(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Write the language and let bookmaker know it."""
    written: list[EntryType] = []
    for message in messages("en").values():
        made = message.clone()
        if made.id.name not in ("alphabet", "quotation-marks") and not made.id.name.startswith("short-"):
            for node in nodes(made):
                if isinstance(node, TextElement):
                    node.value = stretched(node.value)
        written.append(made)
    text = FluentSerializer().serialize(Resource(written))
    for kind in kinds().values():
        named = re.compile(rf"^(kind-{kind.kind} = .*)$", re.MULTILINE)
        text = named.sub(rf"\1\n    .title = {stretched(kind.title)}", text)
    for kind in kinds().values():
        if f"kind-{kind.kind}" in messages("en"):
            continue
        many = stretched(kind.title[:1].lower() + kind.title[1:])
        text += f"kind-{kind.kind} = {stretched(kind.noun)}\n    .many = {many}\n    .title = {stretched(kind.title)}\n"
    home = folder / CODE
    home.mkdir()
    (home / "all.ftl").write_text(text, encoding="utf-8")
    monkeypatch.setitem(LOCALES, CODE, "en-GB")
    monkeypatch.setattr("bookmaker.language.catalogues.FOLDERS", [*FOLDERS, folder])
