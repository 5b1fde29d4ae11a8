"""The same said for the eye, for the ear and for a braille display: cells by name, by row and column, by letters."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from random import Random

import pytest

from bookmaker.language import Manner
from bookmaker.language.catalogues import LOCALES
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.claims import reason_said
from bookmaker.phrases.story import Voice
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from tests.phrases.samples import reasons, utterances
from tests.rules.harness import instances

CELL = re.compile(r"\br\d+c\d+")

MARKS = [
    mark
    for kind in kinds()
    for _, rule in instances(kind, CLASSIC, Random(f"manner {kind}"), 1)
    for mark in rule.references(CLASSIC)
]


@cache
def said(language: str, manner: Manner) -> tuple[str, ...]:
    """All claims, all sentences of a story, marks of all kinds."""
    words = Phrasebook(CLASSIC, language, manner)

    def texts() -> Iterator[str]:
        yield from (reason_said(words, reason, removed) for reason, removed in reasons())
        yield from map(Voice(words).say, utterances())
        yield from (str(words.mark(mark)) for mark in MARKS)

    return tuple(texts())


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_for_the_ear_and_the_finger_no_cell_goes_by_its_name(language: str) -> None:
    assert any(map(CELL.search, said(language, "printed")))
    for manner in ("heard", "short"):
        assert [text for text in said(language, manner) if CELL.search(text)] == []


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_for_the_finger_rows_and_columns_go_by_a_letter(language: str) -> None:
    words = Phrasebook(CLASSIC, language).catalogue
    row, _, column, *_ = words.say("cell-at", row="1", column="2").split()
    stems = "|".join(word if len(word) < 4 else word[:-1] for word in (row, column))
    long = re.compile(rf"\b({stems})\w{{0,3}} \d", re.IGNORECASE)
    assert any(map(long.search, said(language, "heard")))
    assert [text for text in said(language, "short") if long.search(text)] == []


def test_portuguese_prepositions_take_the_article_of_a_row_along() -> None:
    bare = re.compile(r"\b(em|de|para|entre) linha \d", re.IGNORECASE)
    assert [text for text in said("pt", "heard") if bare.search(text)] == []
    assert any("na linha 1" in text for text in said("pt", "heard"))
