"""Hints kept between runs: telling the way to a sticking point takes longer than printing it.

In: proofs, and the store that keeps them. Out: the hints of each. They are kept under the key of the proof and the code
that words them, so that they are told again when either changes.
"""

from __future__ import annotations

import json
from collections.abc import Sequence

from bookmaker.book.hints import hints_of
from bookmaker.book.model import Hints
from bookmaker.proof.cache import Store, code_version, hash_of, key_of
from bookmaker.proof.model import Proof
from bookmaker.rules.common.contract import RuledPuzzle

CODE_THAT_WORDS = ("tell", "book/hints.py")
"""Any change in these, or in what a proof depends on, makes every kept hint stale."""


def hints_of_all(proofs: Sequence[Proof], store: Store) -> list[Hints | None]:
    """The hints for each proof, from the store where it has them; those told now are put there."""
    told: list[tuple[str, str]] = []
    found: list[Hints | None] = []
    for proof in proofs:
        key = hint_key(proof.entry.puzzle)
        hints = _known(store.get(key)) if proof.grade else None
        if hints is None and (hints := hints_of(proof)):
            told.append((key, json.dumps([hints.where, hints.what, hints.how], ensure_ascii=False)))
        found.append(hints)
    if told:
        store.put(told)
    return found


def hint_key(puzzle: RuledPuzzle) -> str:
    """The key of a puzzle's hints: a hash of everything they depend on."""
    return hash_of("hints", key_of(puzzle, 0), code_version(*CODE_THAT_WORDS))


def _known(kept: str | None) -> Hints | None:
    """The hints in a record that was kept, if it is one."""
    try:
        match json.loads(kept or "null"):
            case [str(where), str(what), str(how)]:
                return Hints(where, what, how)
    except (ValueError, RecursionError):
        pass
    return None
