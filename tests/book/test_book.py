from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from bookmaker.book import make_book
from bookmaker.book.contents import Chapter, Contents, Credits, Glossary, Guide, HintPages, Keys, TitlePage
from bookmaker.book.wording import date_in_words
from bookmaker.language import catalogue
from bookmaker.manifest.entries import Chapter as Listed
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Verdict
from bookmaker.source.diagnostics import BookErrors
from tests.layout.sample_book import picked, sample_book, sample_manifest, sample_proofs


def test_puzzles_are_numbered_from_one_in_book_order() -> None:
    puzzles = sample_book().puzzles
    assert [puzzle.number for puzzle in puzzles] == list(range(1, len(puzzles) + 1))
    difficulties = [puzzle.rating.difficulty for puzzle in puzzles]
    assert difficulties == sorted(difficulties)


def test_parts_stand_in_their_order() -> None:
    book = sample_book()
    assert [type(part) for part in book.front] == [TitlePage, Contents, Guide]
    assert [type(part) for part in book.body] == [Chapter, HintPages, Glossary, Keys, Credits]


def test_what_is_printed_of_a_puzzle() -> None:
    kettle = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "kettle")
    proof = next(proof for proof in sample_proofs() if proof.entry.id == "kettle")
    assert (kettle.title, kettle.setter, kettle.shown) == ("The Kettle", "Fennel", "14 March 2026")
    assert kettle.permission == "Printed with the setter’s leave."
    assert kettle.solution == proof.solution
    assert kettle.rating.band_name == BAND_NAMES[proof.grade.band - 1]
    assert sum(kettle.rating.profile) == pytest.approx(proof.grade.path.effort)


@pytest.mark.parametrize(
    ("typed", "printed"),
    [
        ("printed by kind permission of the setter", "Printed by kind permission of the setter."),
        ("© 2026 Attic Press (all rights reserved)", "© 2026 Attic Press (all rights reserved)."),
        ("Copy it freely!", "Copy it freely!"),
        ("", ""),
    ],
)
def test_a_permission_is_printed_as_a_sentence(typed: str, printed: str) -> None:
    """In the credits it follows “Fennel, first shown 14 March 2026.”"""
    proofs = [replace(proof, entry=replace(proof.entry, permission=typed)) for proof in sample_proofs()]
    assert {puzzle.permission for puzzle in make_book(sample_manifest(), proofs).puzzles} == {printed}


def test_a_puzzle_without_a_title_is_called_by_its_rules() -> None:
    assert picked("attic").puzzles[0].title == "Classic"
    untitled = [replace(proof, entry=replace(proof.entry, title="")) for proof in sample_proofs()]
    titles = {puzzle.id: puzzle.title for puzzle in make_book(sample_manifest(), untitled).puzzles}
    assert titles["pantry"] == "Cages"
    assert titles["quilt"] == "Irregular"


def test_as_listed_keeps_the_order_given() -> None:
    assert [puzzle.id for puzzle in picked("window", "kettle").puzzles] == ["window", "kettle"]


def test_chapters_become_parts() -> None:
    manifest = replace(sample_manifest(), order="chapters", chapters=(Listed("Low"), Listed("High", 'The "top".')))
    proofs = [replace(proof, entry=replace(proof.entry, chapter=at % 2)) for at, proof in enumerate(sample_proofs())]
    low, high = make_book(manifest, proofs).chapters
    assert (low.title, high.title, high.note) == ("Low", "High", "The “top”.")
    assert [puzzle.number for puzzle in high.puzzles] == list(range(len(low.puzzles) + 1, len(proofs) + 1))


@pytest.mark.parametrize(
    ("verdict", "said"),
    [
        (NoSolution(), "no solution"),
        (Several((1,) * 81, (2,) * 81), "more than one solution"),
        (Undecided(1000), "not decided"),
    ],
)
def test_a_puzzle_that_is_not_proven_is_refused_but_for_a_draft(verdict: Verdict, said: str) -> None:
    first, *rest = sample_proofs()
    proofs = [replace(first, verdict=verdict, grade=None), *rest]
    with pytest.raises(BookErrors) as caught:
        make_book(sample_manifest(), proofs)
    (diagnostic,) = caught.value.diagnostics
    assert diagnostic.code == "not-proven"
    assert said in diagnostic.text
    assert diagnostic.place == first.entry.place
    draft = make_book(sample_manifest(), proofs, draft=True)
    flawed = draft.puzzles[-1]
    assert flawed.id == first.entry.id
    assert (flawed.solution, flawed.rating) == (None, None)
    assert flawed.flaw.lower() == said


def test_dates_are_written_out() -> None:
    assert date_in_words(catalogue("en"), date(2025, 11, 2)) == "2 November 2025"
