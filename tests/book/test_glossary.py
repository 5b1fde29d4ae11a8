"""The glossary has every technique that a hint can be about, and nothing that the hints do not say."""

from __future__ import annotations

import re

import pytest

from bookmaker.book.contents import Glossary, Hints
from bookmaker.book.glossary import terms_in
from bookmaker.language import catalogue
from bookmaker.language.catalogues import LOCALES
from bookmaker.logic.technique import ladder
from bookmaker.phrases import Phrasebook
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.reasons.reason import MARK
from tests.layout.sample_book import sample_book

ENGLISH = catalogue("en")

TECHNIQUES = {name for rung in ladder() for technique in rung for name in technique.step_names or (technique.name,)}


@pytest.mark.parametrize("language", sorted(LOCALES))
@pytest.mark.parametrize("technique", sorted(TECHNIQUES - {MARK}))
def test_every_technique_of_a_second_hint_is_explained(technique: str, language: str) -> None:
    words, own = Phrasebook(CLASSIC, language), f"hint-what-{technique}"
    said = words.say(own) if words.catalogue.has(own) else words.say(f"technique-{technique}", "one")
    assert terms_in(words.catalogue, [Hints("", said, "")]), said


def test_only_what_the_hints_say_is_explained() -> None:
    assert terms_in(ENGLISH, [Hints("At the start: the whole grid.", "The digit that is left.", "It is 4.")]) == ()
    (term,) = terms_in(ENGLISH, [Hints("", "A digit with only one place there.", "")])
    assert term.name == "Hidden single"


def test_the_glossary_of_a_book_is_in_the_order_of_the_alphabet() -> None:
    (glossary,) = (part for part in sample_book().body if isinstance(part, Glossary))
    names = [re.sub("[^a-z]", "", term.name.lower()) for term in glossary.terms]
    assert names == sorted(names) and len(names) > 3
