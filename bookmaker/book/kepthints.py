"""Hints kept between runs: telling the way to a sticking point takes longer than printing it.

In: proofs, and the store that keeps them. Out: the hints of each. They are kept under the key of the proof and the code
that words them, so that they are told again when either changes.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from typing import get_args

from bookmaker.book.contents import Hints
from bookmaker.book.hints import hints_of
from bookmaker.language import Manner, spoken
from bookmaker.proof import KEEP_AFTER
from bookmaker.proof.cache import Store, code_version, hash_of, key_of
from bookmaker.proof.findings import Proof
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.visible import HIDDEN

CODE_THAT_WORDS = ("language", "phrases", "tell", "book/hints.py")
"""Any change in these, or in what a proof depends on, makes every kept hint stale."""

MANNERS: tuple[Manner, ...] = get_args(Manner)
"""In which they are kept."""


def with_hints(proofs: Iterable[Proof], store: Store, language: str = "en") -> Iterator[tuple[Proof, Hints | None]]:
    """Each proof with its hints, from the store where it has them; those told now are put there."""
    told: list[tuple[str, str]] = []
    try:
        for proof in proofs:
            key = hint_key(proof.entry.puzzle, language)
            hints = _known(store.get(key)) if proof.grade else None
            if hints is None and (hints := hints_of(proof, language)):
                told.append((key, _record(hints)))
                if len(told) >= KEEP_AFTER:
                    store.put(told)
                    told = []
            yield proof, hints
    finally:
        if told:
            store.put(told)


def hint_key(puzzle: RuledPuzzle, language: str = "en") -> str:
    """The key of a puzzle's hints: a hash of everything they depend on."""
    return hash_of("hints", spoken(language), key_of(puzzle, 0), code_version(*CODE_THAT_WORDS))


def _record(hints: Hints) -> str:
    texts = [[*hints.said(manner)] for manner in MANNERS]
    return json.dumps([texts, [*hints.lettered], sorted(hints.concepts)], ensure_ascii=False)


def _known(kept: str | None) -> Hints | None:
    """The hints in a record that was kept, if it is one."""
    try:
        match json.loads(kept or "null"):
            case [[[where, what, how] as printed, heard, short], [*levels], [*concepts]] if (
                all(map(_three_texts, (printed, heard, short)))
                and all(type(level) is int and level in (0, 1, 2) for level in levels)
                and all(isinstance(concept, str) for concept in concepts)
            ):
                return Hints(where, what, how, tuple(levels), tuple(heard), tuple(short), frozenset(concepts))
    except (ValueError, RecursionError):
        pass
    return None


def _three_texts(said: object) -> bool:
    """Are these the three hints in one manner, without signs that nobody sees?"""
    return (
        isinstance(said, list)
        and len(said) == 3
        and all(isinstance(text, str) and not HIDDEN.search(text) for text in said)
    )
