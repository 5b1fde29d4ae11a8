"""Every language says everything: each message, each kind of rule, singular and plural, nothing left in English."""

from __future__ import annotations

import re
from random import Random

import pytest
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message, Term

from bookmaker.language import catalogue, spoken
from bookmaker.language.catalogues import LOCALES, Catalogue, is_optional
from bookmaker.language.messages import entries_in
from bookmaker.phrases.bands import BAND_NAMES, band_names
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from tests.language.parsed import HOME, attributes, messages, texts, variables
from tests.rules.harness import cases_of, instances, sound_entry

OTHERS = sorted(language for language in LOCALES if language.partition("-")[0] != "en")

NAMED = ("title", "many")
"""What a language says of a kind of rule besides its noun: its heading, and the noun for several."""

WORD = re.compile(r"[^\W\d_]{2}")

SAME = {
    *("{ $most }", "ISBN", "X", "V", "r", "c", "in r", "EPUB", "PDF"),
}
"""Texts that may be the same as in English."""


@pytest.mark.parametrize("language", OTHERS)
def test_no_message_is_missing_and_none_is_idle(language: str) -> None:
    english, said = messages("en"), messages(language)
    needed = {name for name in english if not is_optional(name)} | {f"kind-{kind}" for kind in kinds()}
    assert needed - said.keys() == set()
    idle = {name for name in said.keys() - english.keys() - needed if name.partition("--")[0] not in english}
    assert idle == set()


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_has_the_forms_that_are_asked_for_by_name(language: str) -> None:
    said = messages(language)
    for kind in kinds():
        assert attributes(said[f"kind-{kind}"]) >= set(NAMED), kind
    for name, message in messages("en").items():
        if name.startswith(("technique-", "term-")):
            assert attributes(said[name]) >= attributes(message), name


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_is_filled_in_with_nothing_that_it_is_not_given(language: str) -> None:
    english = messages("en")
    for name, message in messages(language).items():
        known = english.get(name) or english.get(name.partition("--")[0])
        if known and not name.startswith("kind-"):
            assert variables(message) <= variables(known) | {"mark", "noun", "nouns", "divided"}, name


@pytest.mark.parametrize("language", OTHERS)
def test_nothing_is_left_in_english(language: str) -> None:
    """No piece of text of two words or more is that of the same message in English; an alphabet may be."""
    english = messages("en")
    for name, message in messages(language).items():
        if name in english and name != "alphabet":
            both = {text for text in texts(message) if " " in text and WORD.search(text)} & {*texts(english[name])}
            assert both <= SAME, (name, both)


@pytest.mark.parametrize("language", OTHERS)
def test_what_is_shortened_is_so_in_every_language_and_form(language: str) -> None:
    shortened = {name for name, message in messages("en").items() if "short" in attributes(message)}
    said = messages(language)
    assert {name for name, message in said.items() if "short" in attributes(message)} == shortened
    for name in shortened:
        forms = attributes(said[name]) - {"short", "gender"}
        assert {f"{form}-short" for form in forms if not form.endswith("-short")} <= forms, name


@pytest.mark.parametrize("language", sorted(LOCALES))
@pytest.mark.parametrize("kind", kinds())
def test_a_kind_speaks_every_language(kind: str, language: str) -> None:
    """Its sentence in each of its known cases, its primer, its marks."""
    words = catalogue(language)
    rules = [(sound_entry(entry), CLASSIC) for entry, _ in cases_of(kind).SENTENCES]
    rules += [(rule, CLASSIC) for _, rule in instances(kind, CLASSIC, Random(f"speak {kind}"), 2)]
    for rule, grid in rules:
        said = rule.sentence(words)
        assert said[0].isupper() or not said[0].isalpha(), said
        assert said.endswith(".") and "  " not in said and " ." not in said, said
        for mark in rule.spoken(words, grid):
            assert mark and not mark.endswith(".") and "  " not in mark, mark
    assert kinds()[kind].primer(words).endswith(".")


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_messages_read_one_by_one_are_those_of_the_file(language: str) -> None:
    """A catalogue parses each entry when it is asked for, from where it finds that one begins."""
    words = catalogue(language)
    for file in sorted((HOME / language).glob("*.ftl")):
        text = file.read_text(encoding="utf-8")
        whole = {_name(entry): entry for entry in FluentParser().parse(text).body if isinstance(entry, Message | Term)}
        entries = entries_in(text)
        assert [*entries] == [*whole]
        for name, entry in entries.items():
            (parsed, *_) = FluentParser().parse(entry).body
            assert parsed.equals(whole[name], ignored_fields=["span", "comment"])
            if isinstance(parsed, Message):
                assert words.variables(name) == variables(parsed)


def _name(entry: Message | Term) -> str:
    return f"-{entry.id.name}" if isinstance(entry, Term) else str(entry.id.name)


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_names_are_sorted_by_an_alphabet_of_the_language(language: str) -> None:
    words = catalogue(language)
    letters = words.say("alphabet").split()
    assert len(letters) == len({*letters}) and all(len(letter) == 1 for letter in letters)
    backwards = letters[::-1]
    assert sorted(backwards, key=words.dictionary) == letters


def test_bands_are_called_the_same_on_the_page_and_in_the_terminal() -> None:
    assert band_names("en") == BAND_NAMES


def test_a_language_without_a_catalogue_is_printed_in_english() -> None:
    assert spoken("fi") == "en" and spoken("en-GB") == "en" and spoken("en-US") == "en-US"
    assert isinstance(catalogue("fi"), Catalogue) and catalogue("fi") is catalogue("en")


SPELLINGS = {"centre": "center", "neighbour": "neighbor"}


def test_american_english_differs_in_spelling_alone() -> None:
    """Every message with a British spelling is there again, and no other."""

    def american(text: str) -> str:
        for british, other in SPELLINGS.items():
            text = text.replace(british, other).replace(british.capitalize(), other.capitalize())
        return text

    british, said = messages("en"), messages("en-US")
    assert {name for name, message in british.items() if any(american(t) != t for t in texts(message))} == said.keys()
    for name, message in said.items():
        assert texts(message) == [american(text) for text in texts(british[name])], name
