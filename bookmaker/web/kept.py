"""Tellings kept between runs, for finding out what a path rests on takes longer than anything else here.

In: proofs, and the store that keeps proofs. Out: each proof with its telling. What is missing is told by a crew, if
there is one, and kept under the key of the proof and the code that tells it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import Executor, Future
from typing import Any

from bookmaker.proof import KEEP_AFTER, Proof
from bookmaker.proof.cache import Store, code_version, hash_of, key_of
from bookmaker.proof.crew import Alone, ahead_of, done, in_order
from bookmaker.web.facts import telling

CODE_THAT_TELLS = ("tell", "trace", "phrases", "reasons", "book/rating.py", "web/facts.py")


def with_tellings(
    proofs: Iterable[Proof], band_names: Sequence[str], store: Store, crew: Executor | None = None
) -> Iterator[tuple[Proof, dict[str, Any]]]:
    """Each proof with its telling, in their order."""
    workers = crew or Alone()
    fresh: list[tuple[str, str]] = []

    def begin(asked: tuple[Proof, str, dict[str, Any] | None]) -> Future[dict[str, Any]]:
        proof, _, known = asked
        return done(known) if known is not None else workers.submit(telling, proof, band_names)

    asked = ((proof, key, _known(store.get(key))) for proof in proofs for key in [_key(proof, band_names)])
    try:
        for (proof, key, known), found in in_order(asked, begin, ahead_of(workers)):
            if known is None and proof.grade:
                fresh.append((key, json.dumps(found, ensure_ascii=False, separators=(",", ":"))))
                if len(fresh) >= KEEP_AFTER:
                    store.put(fresh)
                    fresh = []
            yield proof, found
    finally:
        if fresh:
            store.put(fresh)


def _key(proof: Proof, band_names: Sequence[str]) -> str:
    return hash_of("telling", key_of(proof.entry.puzzle, 0), code_version(*CODE_THAT_TELLS), *band_names)


def _known(kept: str | None) -> dict[str, Any] | None:
    try:
        found = json.loads(kept or "null")
    except (ValueError, RecursionError):
        return None
    return found if isinstance(found, dict) and {"story", "frames"} <= set(found) else None
