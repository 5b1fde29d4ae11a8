"""The puzzles of a book as they are printed, one after the other: proven, graded, rated and hinted at.

In: the entries of a manifest. Out: for each the puzzle, not yet numbered, and its proof without the solving path, which
would fill the memory of a long book. The work is shared among workers, a few entries at a time; what was found out
earlier is taken along to it, and what is new is brought back and kept.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Executor, Future
from typing import TypeAlias

from bookmaker.book import wording
from bookmaker.book.contents import BookPuzzle, Hints
from bookmaker.book.kepthints import hint_key, with_hints
from bookmaker.book.rating import rating_of
from bookmaker.book.rulestext import rules_text
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import catalogue
from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_each
from bookmaker.proof.cache import Store, key_of
from bookmaker.proof.executors import AHEAD, ahead_of, in_order
from bookmaker.proof.findings import Proof

TOGETHER = 16
"""Entries that one worker takes at a time, at most; of a short book fewer, so that the work can be shared."""

Gathered: TypeAlias = tuple[Proof, BookPuzzle]


class Notes:
    """A store for a worker: it has what was taken along, and notes what is to be brought back."""

    def __init__(self, known: dict[str, str]) -> None:
        self.known = known
        self.fresh: list[tuple[str, str]] = []

    def get(self, key: str) -> str | None:
        return self.known.get(key)

    def get_all(self, keys: Iterable[str]) -> dict[str, str]:
        return {key: text for key in keys if (text := self.get(key)) is not None}

    def put(self, texts: Iterable[tuple[str, str]]) -> None:
        self.fresh += texts


def gather(
    entries: Sequence[Entry],
    band_names: Sequence[str],
    hinted: bool,
    store: Store,
    executor: Executor,
    regrade: Callable[[Proof], Proof] | None = None,
    language: str = "en",
) -> Iterator[Gathered]:
    """The puzzles in the order of the entries, told in that language, with hints if they are to be `hinted`; `regrade`
    may change what is found of their difficulty."""

    def begin(some: Sequence[Entry]) -> Future[tuple[list[Gathered], list[tuple[str, str]]]]:
        keys = [key_of(entry.puzzle, 0) for entry in some]
        keys += [hint_key(entry.puzzle, language) for entry in some if hinted]
        return executor.submit(_gathered, some, tuple(band_names), hinted, store.get_all(keys), regrade, language)

    begun = in_order(_batches(entries), begin, ahead_of(executor))

    def gathered() -> Iterator[Gathered]:
        for _, (found, fresh) in begun:
            if fresh:
                store.put(fresh)
            yield from found

    return gathered()


def book_puzzle(proof: Proof, hints: Hints | None, band_names: Sequence[str], language: str = "en") -> BookPuzzle:
    """The puzzle as a book has it, not yet numbered."""
    entry, grade, words = proof.entry, proof.grade, catalogue(language)
    marks = words.quotation_marks
    return BookPuzzle(
        number=0,
        id=entry.id,
        puzzle=entry.puzzle,
        place=entry.place,
        title=smart_quotes(entry.title, marks) or wording.title_of_puzzle(words, entry.puzzle),
        untitled=not entry.title,
        rules=rules_text(words, entry.puzzle),
        rating=rating_of(entry.puzzle, grade, band_names) if grade else None,
        solution=proof.solution,
        setter=smart_quotes(entry.setter, marks),
        shown=wording.date_in_words(words, entry.shown) if entry.shown else "",
        permission=wording.as_sentence(smart_quotes(entry.permission, marks)),
        note=smart_quotes(entry.note, marks),
        flaw=wording.flaw(words, proof.verdict),
        word=entry.word if proof.solution else None,
        link=entry.link,
        rule_places=entry.rule_places,
        hints=hints,
        places=entry.places,
    )


def _gathered(
    entries: Sequence[Entry],
    band_names: Sequence[str],
    hinted: bool,
    known: dict[str, str],
    regrade: Callable[[Proof], Proof] | None,
    language: str,
) -> tuple[list[Gathered], list[tuple[str, str]]]:
    """What a worker does: the puzzles, and what there is to keep."""
    notes = Notes(known)
    proofs = prove_each(iter(entries), store=notes, with_hardest=False)
    proofs = map(regrade, proofs) if regrade else proofs
    pairs = with_hints(proofs, notes, language) if hinted else ((proof, None) for proof in proofs)
    found = [(proof.bare, book_puzzle(proof, hints, band_names, language)) for proof, hints in pairs]
    return found, notes.fresh


def _batches(entries: Sequence[Entry]) -> Iterator[Sequence[Entry]]:
    together = min(TOGETHER, 1 + len(entries) // AHEAD)
    return (entries[start : start + together] for start in range(0, len(entries), together))
