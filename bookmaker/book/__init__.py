"""Manifest and proofs → `Book`: parts, order, numbers, wording. No geometry.

In: what the editor typed and what was proven of it. Out: one frozen `Book`, or the troubles that forbid printing it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby

from bookmaker.book import wording
from bookmaker.book.kepthints import hints_of_all
from bookmaker.book.model import Book, BookPuzzle, Chapter, Credits, HintPages, Hints, Keys
from bookmaker.book.order import in_book_order
from bookmaker.book.parts import front_parts, index_parts
from bookmaker.book.rating import rating_of
from bookmaker.book.rulestext import rules_text
from bookmaker.book.typography import curled
from bookmaker.manifest.model import Manifest
from bookmaker.proof.cache import NoStore, Store
from bookmaker.proof.model import Proof
from bookmaker.solve.verdict import Unique
from bookmaker.trouble import BookTroubles, Trouble

__all__ = ["Book", "BookPuzzle", "make_book"]


def make_book(
    manifest: Manifest,
    proofs: Iterable[Proof],
    draft: bool = False,
    as_listed: bool = False,
    store: Store | None = None,
) -> Book:
    """The book of these puzzles in book order, or in the order given with `as_listed`.

    Hints come from `store` where it has them; what is told now is kept there.
    Raises BookTroubles, naming each puzzle that is not proven unique, unless it is a draft.
    """
    ordered = tuple(proofs) if as_listed else in_book_order(manifest, proofs)
    if not draft:
        _refuse_unproven(ordered)
    hinted = manifest.publication.hints and not as_listed
    hints = hints_of_all(ordered, store or NoStore()) if hinted else [None] * len(ordered)
    numbered = enumerate(zip(ordered, hints, strict=True), start=1)
    puzzles = tuple(_puzzle(manifest, number, proof, helped) for number, (proof, helped) in numbered)
    chaptered = manifest.order == "chapters" and not as_listed
    chapters = _chapters(manifest, ordered, puzzles) if chaptered else (Chapter(1, "", "", puzzles),)
    return Book(
        place=manifest.place,
        title=curled(manifest.title),
        subtitle=curled(manifest.subtitle),
        editor=curled(manifest.editor),
        band_names=manifest.band_names,
        front=tuple(front_parts(manifest, puzzles, draft)),
        body=(
            *chapters,
            *_hint_pages(puzzles),
            Keys(wording.KEYS),
            Credits(wording.CREDITS),
            *index_parts(manifest, puzzles),
        ),
        draft=draft,
        publication=manifest.publication,
        places=manifest.places,
    )


def _chapters(manifest: Manifest, proofs: Sequence[Proof], puzzles: Sequence[BookPuzzle]) -> tuple[Chapter, ...]:
    """The puzzles in the chapters that their proofs' entries name; those without puzzles are left out."""
    groups = groupby(zip(proofs, puzzles, strict=True), key=lambda pair: pair[0].entry.chapter)
    return tuple(
        Chapter(
            number,
            curled(manifest.chapters[index].title),
            curled(manifest.chapters[index].note),
            tuple(puzzle for _, puzzle in pairs),
            manifest.chapters[index].place,
        )
        for number, (index, pairs) in enumerate(groups, start=1)
    )


def _hint_pages(puzzles: Iterable[BookPuzzle]) -> Iterator[HintPages]:
    """The pages of hints, where there are any."""
    if any(puzzle.hints for puzzle in puzzles):
        yield HintPages(wording.HINTS, wording.HINTS_NOTE, wording.HINT_LEVELS)


def _puzzle(manifest: Manifest, number: int, proof: Proof, hints: Hints | None) -> BookPuzzle:
    entry, grade = proof.entry, proof.grade
    return BookPuzzle(
        number=number,
        id=entry.id,
        puzzle=entry.puzzle,
        place=entry.place,
        title=curled(entry.title) or ", ".join(wording.kinds(entry.puzzle)),
        rules=rules_text(entry.puzzle),
        rating=rating_of(entry.puzzle, grade, manifest.band_names) if grade else None,
        solution=proof.solution,
        setter=curled(entry.setter),
        shown=wording.date_in_words(entry.shown) if entry.shown else "",
        permission=wording.as_sentence(curled(entry.permission)),
        note=curled(entry.note),
        flaw=wording.flaw(proof.verdict),
        link=entry.link,
        marks=entry.marks,
        rule_places=entry.rule_places,
        hints=hints,
        places=entry.places,
    )


def _refuse_unproven(proofs: Iterable[Proof]) -> None:
    troubles = [
        Trouble(
            proof.entry.place,
            "not-proven",
            f"“{proof.entry.title or proof.entry.id}” can't be printed: {wording.flaw(proof.verdict).lower()}",
            "mend the puzzle, or print the book with --draft to look at it as it is",
        )
        for proof in proofs
        if not isinstance(proof.verdict, Unique)
    ]
    if troubles:
        raise BookTroubles(troubles)
