"""What is found out of one puzzle, in a process of its own so that the desk goes on answering.

In: an entry. Out: an `Examined`, which holds no places, so that it stays true when lines above the puzzle change.
"""

from __future__ import annotations

import multiprocessing
import signal
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, replace
from typing import Any

from bookmaker.archive.reading import cards_of
from bookmaker.layout.art.gridart import painted
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.layout.sheets.single_picture import CELL
from bookmaker.manifest.entries import Entry
from bookmaker.proof import Proof, prove_each
from bookmaker.proof.cache import user_store
from bookmaker.proof.claims import wrong_claims
from bookmaker.proof.remarks import remark
from bookmaker.solve.verdict import Several, Verdict
from bookmaker.source.diagnostics import Diagnostic, Place
from bookmaker.stopping import serving

WORKERS = 2
"""Processes that prove; while one proof runs long, others are not held up."""


@dataclass(frozen=True, slots=True)
class Examined:
    """`lost` are the marks that would be hidden: the number of their rule (−1 for none), and what is wrong."""

    verdict: Verdict
    said: dict[str, Any]
    remark: str
    key: str
    lost: tuple[tuple[int, Diagnostic], ...]

    def diagnostics(self, entry: Entry) -> Iterator[Diagnostic]:
        """What is wrong with the puzzle, at its places in the file as it is now."""
        if self.remark:
            hint = "“bookmaker proof --count 100” tells more"
            yield Diagnostic(entry.place, "not-unique", self.remark, hint)
        yield from wrong_claims([Proof(entry, self.verdict, None)])
        for rule, diagnostic in self.lost:
            place = entry.rule_places[rule] if 0 <= rule < len(entry.rule_places) else entry.place
            yield replace(diagnostic, place=place)


def examine(entry: Entry) -> Examined:
    """Prove, grade and look at one puzzle; findings are kept with all others."""
    store = user_store()
    (card,) = cards_of([entry], store, None)
    (proof,) = prove_each(iter([entry]), 0, store)
    pair = (proof.verdict.first, proof.verdict.second) if isinstance(proof.verdict, Several) else ()
    said = {
        "verdict": card.verdict,
        "band": card.band,
        "difficulty": card.difficulty_text,
        "hardest": card.hardest,
        "pair": [list(solution) for solution in pair],
    }
    rules = [(rule, Place("", number)) for number, rule in enumerate(entry.puzzle.rules, start=1)]
    lost = out_of_sight(painted(entry.puzzle, CELL), entry.title or entry.id, Place(""), rules)
    numbered = tuple((diagnostic.place.line - 1, diagnostic) for diagnostic in lost)
    return Examined(proof.verdict, said, remark(proof), card.keys.puzzle, numbered)


def examiners() -> ProcessPoolExecutor:
    """The processes that examine. They are begun afresh, never split off from one that has threads."""
    return ProcessPoolExecutor(WORKERS, multiprocessing.get_context("spawn"), initializer=_begin)


def _begin() -> None:
    """An interrupt is for the process that serves: it ends its workers."""
    serving()
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def at_hand() -> None:
    """Nothing: to have a process begun before it is needed."""
