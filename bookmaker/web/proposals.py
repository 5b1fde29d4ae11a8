"""What would mend a broken puzzle, for the review page.

In: a proof without exactly one solution. Out: a few sentences: the likeliest cures, or what cannot stand together; of a
puzzle with several solutions, what to add. How long is looked is bounded; `bookmaker mend` looks longer and shows the
lines of the file.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.changes.elements import named
from bookmaker.changes.slips import SLIPS
from bookmaker.mend.case import Case
from bookmaker.mend.conflicts import conflicts
from bookmaker.mend.cures import search
from bookmaker.mend.limit import Effort
from bookmaker.mend.settling import settling
from bookmaker.mend.telling import READABLE, change_said, cured_said
from bookmaker.proof import Proof
from bookmaker.rules.common.words.wording import listed, sentence_case
from bookmaker.solve.verdict import NoSolution, Several

EFFORT = 4_000_000
"""Effort (`Meter.effort`) to look for cures of one puzzle, about three seconds; half of it to look for what else there
is to say."""

CURES = 3
"""So many cures of a puzzle are told."""

PUZZLES = 12
"""Of so many puzzles on a page cures are looked for: an archive may hold hundreds of drafts."""


def proposals(proof: Proof) -> tuple[str, ...]:
    """Sentences that say what would mend the puzzle; none for one that needs no mending."""
    return tuple(_said(proof)) if isinstance(proof.verdict, NoSolution | Several) else ()


def _said(proof: Proof) -> Iterator[str]:
    puzzle = proof.entry.puzzle
    digits = proof.entry.solution.digits if proof.entry.solution else None
    found = search(Case(puzzle, Effort(EFFORT)), digits, first=CURES)
    for cure in found.cures[:CURES]:
        change = sentence_case(change_said(puzzle, cure.puzzle))
        yield f"{sentence_case(SLIPS[cure.slip.sort])}? {change}; {cured_said(cure.grade)}."
    if isinstance(proof.verdict, Several):
        fewest = settling(Case(puzzle, Effort(EFFORT // 2))).fewest
        if fewest:
            yield f"Or add {listed(named(added, puzzle.grid) for added in fewest[0].added)}."
    elif not found.cures:
        clashing = [some for some in conflicts(Case(puzzle, Effort(EFFORT // 2))).clashing if len(some) <= READABLE]
        for some in clashing[:1]:
            yield sentence_case(f"{listed(named(one, puzzle.grid) for one in some)} cannot stand together.")
