"""The glossary explains what the hints ask a reader to know, every technique among it, and nothing else."""

from __future__ import annotations

import re

import pytest

from bookmaker.book.contents import Glossary, Hints
from bookmaker.book.glossary import terms_of
from bookmaker.language import catalogue
from bookmaker.language.catalogues import LOCALES
from bookmaker.logic.technique import ladder
from bookmaker.reasons import MarkRef, Reason
from bookmaker.reasons.bymark import LeftOver
from bookmaker.reasons.marks import At
from bookmaker.reasons.patterns import Fish
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.singles import Fixed, FromProof
from bookmaker.tell.concepts import concepts_behind
from tests.layout.sample_book import sample_book
from tests.phrases.samples import COLUMN, ROW, reasons

REASONS = [reason for reason, _ in reasons()]
OF_A_BOARD = {"eliminate", "house", "mark"}


def explained(*told: Reason, language: str = "en") -> set[str]:
    """The terms of a glossary for hints with these reasons."""
    hints = [Hints("", "", "", concepts=frozenset(concepts_behind(reason))) for reason in told]
    return {term.name for term in terms_of(catalogue(language), hints)}


def test_every_technique_is_explained() -> None:
    techniques = {name for rung in ladder() for technique in rung for name in technique.names}
    assert techniques <= {reason.technique for reason in REASONS}
    for reason in REASONS:
        if not isinstance(reason.claim, Fixed | FromProof):  # no hint is about these
            assert explained(reason), reason


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_every_term_is_asked_for_by_some_reason(language: str) -> None:
    words = catalogue(language)
    asked = {f"term-{concept}" for reason in REASONS for concept in concepts_behind(reason)}
    terms = {name for name in words.names() if name.startswith("term-")}
    assert terms == {name for name in asked | {f"term-{concept}" for concept in OF_A_BOARD} if words.has(name)}
    assert terms == {name for name in catalogue("en").names() if name.startswith("term-")}


def test_only_what_a_reason_rests_on_is_explained() -> None:
    assert explained(Reason(MARK, MarkRef("cage", (0, 1), At(0), "9"), Fixed(0, 4))) == {"Mark"}
    fish = Fish(4, (ROW, ROW, ROW), (COLUMN, COLUMN, COLUMN), (0, 10, 20))
    assert explained(Reason("swordfish", None, fish)) == {"Swordfish", "X-wing", "House"}


def test_a_term_may_be_for_one_kind_of_rule() -> None:
    claim = LeftOver((ROW,), 45, 40, False, (0,))
    cage, frame = (Reason(MARK, MarkRef(kind, (0, 1), At(0), "9"), claim) for kind in ("cage", "frame-sum"))
    assert explained(cage) - explained(frame) == {"Whole cages"}


def test_the_glossary_of_a_book_is_in_the_order_of_the_alphabet() -> None:
    (glossary,) = (part for part in sample_book().body if isinstance(part, Glossary))
    names = [re.sub("[^a-z]", "", term.name.lower()) for term in glossary.terms]
    assert names == sorted(names) and len(names) > 3
