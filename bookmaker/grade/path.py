"""Running the ladder: from the givens to the solution in the steps a person would take.

In: a puzzle and its proven solution. Out: a `SolvePath`. The solution is consulted only where the ladder ends: then one
digit is taken from it and the step is flagged, so that every path is complete.

Every round takes all that is equally easy to see at its start (all openings of the most visible kind; else all findings
of the lowest rung that has some), so the effort depends on no order and on no turn or relabelling of the grid.
"""

from __future__ import annotations

from bookmaker.grade import effort
from bookmaker.grade.model import SolvePath, Step
from bookmaker.grade.singles import NAMES, Opening, openings, words
from bookmaker.grade.state import State, cells_on, ground_of, start
from bookmaker.grade.technique import Finding, ladder
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution

BEYOND = 12
"""The rung of a step that the ladder did not reach."""


def walk(puzzle: RuledPuzzle, solution: Solution) -> SolvePath:
    """The path; `reached` is False where a step was taken from the solution."""
    state = start(ground_of(puzzle))
    steps: list[Step] = []
    reached = True
    while state.empty:
        if found := openings(state):
            steps.extend(_placing(state, found))
        elif findings := _lowest(state):
            steps.extend(_striking(state, findings))
        else:
            reached = False
            steps.append(_from_solution(state, solution))
    return SolvePath(tuple(steps), reached)


def _placing(state: State, found: list[Opening]) -> list[Step]:
    """Place every opening of the most visible weight, charging them in turn while openings and empty cells shrink."""
    top = max(effort.VISIBLE[opening.kind] for opening in found)
    chosen = [opening for opening in found if effort.VISIBLE[opening.kind] == top]
    kinds = [opening.kind for opening in sorted(found, key=lambda o: effort.VISIBLE[o.kind] != top)]
    empty = state.empty.bit_count()
    steps = [
        Step(
            technique=NAMES[opening.kind],
            rung=int(opening.kind),
            cells=(opening.cell,),
            placed=((opening.cell, opening.digit),),
            removed=(),
            because=words(state, opening),
            openings=len(found) - i,
            empty=empty - i,
            effort=effort.placing(empty - i, kinds[i:]),
        )
        for i, opening in enumerate(chosen)
    ]
    for opening in chosen:
        state.place(opening.cell, opening.digit)
    return steps


def _lowest(state: State) -> list[Finding]:
    """All findings of the lowest rung that has some; one instance for each set of candidates that go."""
    for techniques in ladder():
        found: dict[tuple[tuple[int, int], ...], Finding] = {}
        for technique in techniques:
            for finding in technique.find(state):
                found.setdefault(tuple(sorted(finding.removed)), finding)
        if found:
            return list(found.values())
    return []


def _striking(state: State, findings: list[Finding]) -> list[Step]:
    """Strike all that the findings show; the effort of finding the first is shared among them."""
    empty = state.empty.bit_count()
    share = effort.stuck(empty, len(findings), min(f.reach for f in findings)) / len(findings)
    steps = [
        Step(
            technique=finding.technique,
            rung=finding.rung,
            cells=finding.cells,
            placed=(),
            removed=finding.removed,
            because=finding.words(),
            openings=len(findings),
            empty=empty,
            effort=share,
        )
        for finding in findings
    ]
    for finding in findings:
        state.remove(finding.removed)
    return steps


def _from_solution(state: State, solution: Solution) -> Step:
    """Beyond the ladder: the digit that lets singles go furthest is taken from the solution."""

    def opened(cell: int) -> tuple[int, int]:
        trial = State(state.ground, state.boards[:], state.stood[:], state.empty)
        trial.place(cell, solution[cell])
        while found := openings(trial):
            for opening in found:
                trial.place(opening.cell, opening.digit)
        return -trial.empty.bit_count(), -sum(board.bit_count() for board in trial.boards)

    cell = max(cells_on(state.empty), key=opened)
    empty = state.empty.bit_count()
    step = Step(
        technique="beyond the ladder",
        rung=BEYOND,
        cells=(cell,),
        placed=((cell, solution[cell]),),
        removed=(),
        because=f"the ladder ends here; the digit of {state.ground.grid.name(cell)} is taken from the proof",
        openings=0,
        empty=empty,
        effort=effort.stuck(empty, 0, effort.BEYOND),
    )
    state.place(cell, solution[cell])
    return step
