"""Hints kept between runs: telling the way to a sticking point takes longer than printing it.

In: proofs, and the store that keeps them. Out: the hints of each. They are kept under the key of the proof and the code
that words them, so that they are told again when either changes.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from bookmaker.book.contents import Hints
from bookmaker.book.hints import hints_of
from bookmaker.language import spoken
from bookmaker.proof import KEEP_AFTER
from bookmaker.proof.cache import Store, code_version, hash_of, key_of
from bookmaker.proof.findings import Proof
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.visible import HIDDEN

CODE_THAT_WORDS = ("language", "phrases", "tell", "book/hints.py")
"""Any change in these, or in what a proof depends on, makes every kept hint stale."""


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
    return json.dumps([hints.where, hints.what, hints.how, *hints.lettered], ensure_ascii=False)


def _known(kept: str | None) -> Hints | None:
    """The hints in a record that was kept, if it is one."""
    try:
        match json.loads(kept or "null"):
            case [str(where), str(what), str(how), *lettered] if all(
                type(n) is int and n in (0, 1, 2) for n in lettered
            ):
                return Hints(where, what, how, tuple(lettered)) if not HIDDEN.search(where + what + how) else None
    except (ValueError, RecursionError):
        pass
    return None
