"""Gate 4 on one puzzle: all techniques at every stuck position against the proven solution, what-ifs replayed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import chain

from bookmaker.grade.path import walk
from bookmaker.logic.state import ground_of, start
from bookmaker.logic.technique import ladder
from bookmaker.logic.techniques.what_if import WhatIf
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from tests.grade.plain import rounds_to_contradiction


def faults(puzzle: RuledPuzzle, solution: Solution, found: Counter[str]) -> Iterator[str]:
    """What is wrong with the findings at the puzzle's stuck positions; counts all findings by technique in `found`."""
    state = start(ground_of(puzzle))
    struck = 0  # strikes that are left of those found together
    for step in walk(puzzle, solution).steps:
        if not step.placed and not struck:
            struck = step.openings
            for technique in chain.from_iterable(ladder()):
                for finding in technique.find(state):
                    found[technique.name] += 1
                    if any(solution[cell] == digit for cell, digit in finding.removed):
                        yield f"{technique.name} strikes what is right: {finding.reason()}"
                    if not finding.removed or state.present(finding.removed) != finding.removed:
                        yield f"{technique.name} strikes what is gone: {finding.reason()}"
                    if isinstance(technique, WhatIf):
                        ((cell, digit),) = finding.removed
                        rounds = rounds_to_contradiction(puzzle, state.position(), cell, digit)
                        if rounds != finding.reach:
                            yield f"replayed in {rounds} rounds, not {finding.reach}: {finding.reason()}"
        for cell, digit in step.placed:
            if solution[cell] != digit:
                yield f"a wrong digit is placed: {step.reason}"
            state.place(cell, digit)
        state.remove(step.removed)
        struck -= not step.placed
    if state.empty:
        yield "the path ends before the solution"
