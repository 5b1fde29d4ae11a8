"""Which puzzles of a book are meant: by id, by number, by a range of numbers, or all.

In: what is typed after --pick, as often as it is given. Out: proofs in the order named, each puzzle once.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence

from bookmaker.cli.loading import proofs_in_order, proofs_of
from bookmaker.manifest.entries import Manifest
from bookmaker.proof import Proof
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place, nearest, quoted

ALL = "all"

_NUMBERS = re.compile(r"([0-9]{1,6})(?:\s*[-–]\s*([0-9]{1,6}))?")


def words_in(texts: Iterable[str]) -> tuple[str, ...]:
    """The words of all texts, between their commas."""
    return tuple(word.strip() for text in texts for word in text.split(",") if word.strip())


def picked(manifest: Manifest, words: Sequence[str], permitted: Callable[[Sequence[str]], None]) -> tuple[Proof, ...]:
    """Proofs of the puzzles that the words name. A number is that in the book, so one takes the proofs of all puzzles,
    by which they are ordered; a word that is an id stands for that puzzle in any case. `permitted` is asked for the ids
    before anything is proven that is not needed to know them.

    Raises BookErrors for all words that name no puzzle.
    """
    known = {entry.id for entry in manifest.entries}
    diagnostics = tuple(_unknown(words, manifest, known))
    if diagnostics:
        raise BookErrors(diagnostics)
    if known.issuperset(words):
        ids = tuple(dict.fromkeys(words))
        permitted(ids)
        return proofs_of(manifest, ids)
    in_order = proofs_in_order(manifest)
    ids = tuple(dict.fromkeys(_ids(words, known, [proof.entry.id for proof in in_order])))
    permitted(ids)
    by_id = {proof.entry.id: proof for proof in in_order}
    return tuple(by_id[name] for name in ids)


def _ids(words: Iterable[str], known: set[str], in_order: Sequence[str]) -> Iterator[str]:
    for word in words:
        if word in known:
            yield word
        elif word == ALL:
            yield from in_order
        else:
            first, last = _ends(word) or (1, 0)
            yield from in_order[first - 1 : last]


def _ends(word: str) -> tuple[int, int] | None:
    """The first and the last number of a range; of a number itself, that number twice."""
    match = _NUMBERS.fullmatch(word)
    return (int(match[1]), int(match[2] or match[1])) if match else None


def _unknown(words: Iterable[str], manifest: Manifest, known: set[str]) -> Iterator[Diagnostic]:
    place, count = Place(manifest.place.file), len(manifest.entries)
    for word in words:
        ends = _ends(word)
        if word in known or word == ALL:
            continue
        if ends is None:
            text = f"the book has no puzzle {quoted(word)}"
            yield Diagnostic(place, "unknown-id", text, nearest(word, known))
        elif ends[0] > ends[1]:
            yield Diagnostic(place, "empty-range", f"“{word}” goes down", f"write {ends[1]}-{ends[0]}")
        elif ends[0] < 1 or ends[1] > count:
            text = f"the book has no puzzle number {ends[0] if ends[0] < 1 else ends[1]}"
            yield Diagnostic(place, "unknown-number", text, f"it has {counted(count, 'puzzle')}, numbered from 1")
