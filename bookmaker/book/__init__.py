"""Manifest and proofs → `Book`: parts, order, numbers, wording. No geometry.

In: what the editor typed and what was proven of it. Out: one frozen `Book`, or the diagnostics that forbid printing it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import groupby
from math import inf

from bookmaker.book import wording
from bookmaker.book.contents import Book, BookPuzzle, Chapter, Glossary, HintPages, Keys
from bookmaker.book.gathering import Gathered, book_puzzle
from bookmaker.book.glossary import terms_of
from bookmaker.book.kepthints import with_hints
from bookmaker.book.order import place_in_book
from bookmaker.book.parts import credit_parts, front_parts, index_parts
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import Catalogue, catalogue
from bookmaker.manifest.entries import Manifest
from bookmaker.proof.cache import NoStore, Store
from bookmaker.proof.findings import Proof
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import BookErrors, Diagnostic

__all__ = ["Book", "BookPuzzle", "bind", "make_book"]


def make_book(
    manifest: Manifest,
    proofs: Iterable[Proof],
    draft: bool = False,
    as_listed: bool = False,
    store: Store | None = None,
    hinted: bool | None = None,
) -> Book:
    """The book of these puzzles in book order, or in the order given with `as_listed`. It has hints if it is `hinted`;
    where that is not said, as the manifest wants, and none in the order given.

    Hints come from `store` where it has them; what is told now is kept there. Raises what `bind` does.
    """
    if hinted is None:
        hinted = manifest.publication.hints and not as_listed
    language = manifest.publication.language
    pairs = with_hints(proofs, store or NoStore(), language) if hinted else ((proof, None) for proof in proofs)
    gathered = ((proof, book_puzzle(proof, hints, manifest.band_names, language)) for proof, hints in pairs)
    return bind(manifest, gathered, draft, as_listed)


def bind(manifest: Manifest, gathered: Iterable[Gathered], draft: bool = False, as_listed: bool = False) -> Book:
    """The book of puzzles that come one by one.

    Raises BookErrors, naming each puzzle that is not proven unique, unless it is a draft.
    """
    place, words = place_in_book(manifest), catalogue(manifest.publication.language)
    made, unproven = [], []
    for at, (proof, puzzle) in enumerate(gathered):
        if not draft and not isinstance(proof.verdict, Unique):
            unproven.append(_unproven(proof))
        difficulty = puzzle.rating.difficulty if puzzle.rating else inf
        where: tuple[float, ...] = (at,) if as_listed else place(proof.entry, difficulty)
        made.append((where, proof.entry.chapter, puzzle))
    if unproven:
        raise BookErrors(unproven)
    made.sort(key=lambda one: one[0])
    puzzles = tuple(_numbered(words, (puzzle for _, _, puzzle in made)))
    chaptered = manifest.order == "chapters" and not as_listed
    homes = [chapter for _, chapter, _ in made]
    chapters = _chapters(manifest, homes, puzzles) if chaptered else (Chapter(1, "", "", puzzles),)
    said, marks = manifest.publication, words.quotation_marks
    return Book(
        place=manifest.place,
        title=smart_quotes(manifest.title, marks),
        subtitle=smart_quotes(manifest.subtitle, marks),
        editor=smart_quotes(manifest.editor, marks),
        band_names=manifest.band_names,
        front=tuple(front_parts(manifest, puzzles, draft)),
        body=(
            *chapters,
            *_hint_pages(words, puzzles),
            Keys(words.say("heading-keys")),
            *credit_parts(manifest, puzzles),
            *index_parts(manifest, puzzles),
        ),
        draft=draft,
        language=said.language,
        fold=said.fold,
        link=said.link,
        imprint=said.imprint,
        cover=said.cover,
        places=manifest.places,
    )


def _numbered(words: Catalogue, puzzles: Iterable[BookPuzzle]) -> Iterator[BookPuzzle]:
    """The puzzles with their numbers, which are also the titles of those that would have the same."""
    listed = list(puzzles)
    shared = Counter(puzzle.title for puzzle in listed if puzzle.untitled)
    for number, puzzle in enumerate(listed, start=1):
        alike = puzzle.untitled and shared[puzzle.title] > 1
        title = words.say("puzzle-numbered", number=str(number)) if alike else puzzle.title
        yield replace(puzzle, number=number, title=title, numbered=alike)


def _chapters(manifest: Manifest, homes: Sequence[int], puzzles: Sequence[BookPuzzle]) -> tuple[Chapter, ...]:
    """The puzzles in the chapters of the manifest that are their homes; chapters without puzzles are left out."""
    marks = catalogue(manifest.publication.language).quotation_marks
    groups = groupby(zip(homes, puzzles, strict=True), key=lambda pair: pair[0])
    return tuple(
        Chapter(
            number,
            smart_quotes(manifest.chapters[index].title, marks),
            smart_quotes(manifest.chapters[index].note, marks),
            tuple(puzzle for _, puzzle in pairs),
            manifest.chapters[index].place,
        )
        for number, (index, pairs) in enumerate(groups, start=1)
    )


def _hint_pages(words: Catalogue, puzzles: Iterable[BookPuzzle]) -> Iterator[HintPages | Glossary]:
    """The pages of hints, where there are any, and what the words in them mean."""
    hinted = [puzzle for puzzle in puzzles if puzzle.hints]
    hints = [puzzle.hints for puzzle in hinted if puzzle.hints]
    if hints:
        yield HintPages(words.say("heading-hints"), words.say("hints-note"), wording.hint_levels(words))
        if terms := terms_of(words, hints, wording.divided(puzzle.puzzle.grid for puzzle in hinted)):
            yield Glossary(words.say("heading-glossary"), terms)


def _unproven(proof: Proof) -> Diagnostic:
    flaw = wording.flaw(catalogue("en"), proof.verdict).lower()
    return Diagnostic(
        proof.entry.place,
        "not-proven",
        f"“{proof.entry.title or proof.entry.id}” can't be printed: {flaw}",
        "mend the puzzle, or print the book with --draft to look at it as it is",
    )
