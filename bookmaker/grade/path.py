"""Running the ladder: from the givens to the solution in the steps a person would take.

In: a puzzle and its proven solution. Out: a `SolvePath`. The solution is consulted only where the ladder ends: then one
digit is taken from it and the step is flagged, so that every path is complete.

Every round takes all that is equally easy to see at its start (all openings of the most visible kind; else all findings
of the lowest rung that has some), so the effort depends on no order and on no turn or relabelling of the grid.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.grade.automorphism import Automorphism, automorphisms
from bookmaker.grade.effort import BEYOND_REACH, WEIGHTS, Practice, Weights
from bookmaker.grade.simulation import SimulatedSolver, mean_looks, solvers
from bookmaker.grade.solve_path import SolvePath, Step
from bookmaker.logic.forced import forced
from bookmaker.logic.singles import openings, openings_kept, single
from bookmaker.logic.state import Look, State, going_on, ground_of, start
from bookmaker.logic.technique import Finding, ladder
from bookmaker.puzzle.bits import board_of, cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef, Reason, Rung
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.singles import Fixed, FromProof
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.canonical_labels import canonical_labels

SEARCHED, LINKED, FOUND = 6, 100, 6
"""Effort for each technique looked for, one that goes from link to link, and each finding, for each cell of the grid;
fitted to times."""

WHAT_IFS = 8_000_000
"""Cells of boards that what-ifs are followed through, at most: about five seconds' work, and thirty times what a hard
classic takes. Then they are not looked for any more."""

A_MARK = 200
"""Reading a mark takes as long as looking at so many cells."""


def walk(
    puzzle: RuledPuzzle,
    solution: Solution,
    weights: Weights = WEIGHTS,
    look: Look = going_on,
    what_ifs: int = WHAT_IFS,
) -> SolvePath:
    """The path; `reached` is False where a step was taken from the solution. `look` is told what work was done, and may
    end it by raising; what-ifs are looked for until so many cells have been gone through."""
    state = start(ground_of(puzzle, look))
    everyone = solvers(_labels(puzzle, solution))
    mirror = next(iter(automorphisms(puzzle, solution)), None)
    steps = _filling(state, puzzle)
    practice = Practice()
    reached = True
    while state.empty:
        if openings_kept(state):
            steps.extend(_stretch(state, solution, everyone, weights, mirror))
        elif findings := _lowest(state, what_ifs > 0):
            if findings[0].rung is Rung.WHAT_IF:
                what_ifs -= _followed(state)
            steps.extend(_striking(state, findings, weights, practice))
        else:
            reached = False
            steps.append(_from_solution(state, solution, weights, practice))
    return SolvePath(tuple(steps), reached)


def _filling(state: State, puzzle: RuledPuzzle) -> list[Step]:
    """What the marks fix before any given is looked at is written down first, one look for each cell."""
    steps = []
    for rule in puzzle.rules:
        fixed = {cell: digit for cell, digit in forced(puzzle, rule).items() if state.empty >> cell & 1}
        for number, (cell, digit) in enumerate(sorted(fixed.items())):
            steps.append(
                Step(
                    reason=Reason(MARK, MarkRef.whole(rule.kind), Fixed(cell, digit)),
                    rung=Rung.SIMPLE,
                    cells=(cell,),
                    placed=((cell, digit),),
                    removed=(),
                    openings=len(fixed) - number,
                    empty=state.empty.bit_count(),
                    effort=1.0,
                )
            )
            state.place(cell, digit)
    return steps


def _labels(puzzle: RuledPuzzle, solution: Solution) -> list[int]:
    """Labels of the cells; where the solution alone does not tell all cells apart, the givens help."""
    named = canonical_labels(puzzle.grid, solution)
    if len(set(named)) < len(named):
        given = board_of(cell for cell, digit in enumerate(puzzle.givens) if digit)
        named = canonical_labels(puzzle.grid, solution, given)
    return named


def _stretch(
    state: State, solution: Solution, everyone: Sequence[SimulatedSolver], weights: Weights, mirror: Automorphism | None
) -> list[Step]:
    """All singles from here on, told from the most visible to the least; the effort is the solvers' mean.

    In a puzzle that maps to itself a placement is followed by its twin.
    """
    steps: list[Step] = []
    twin = -1
    digit, same = 0, weights.same_digit
    seen = {kind: weights.visible(kind) for kind in (Rung.LAST, Rung.BOX, Rung.LINE, Rung.NAKED)}
    for looks in mean_looks(state, solution, everyone, weights):
        found = openings_kept(state)
        turned = next((opening for opening in found if opening.cell == twin), None)
        chosen = turned or max(found, key=lambda o: seen[o.kind] * (same if o.digit == digit else 1))
        steps.append(
            Step(
                reason=single(chosen),
                rung=chosen.kind,
                cells=(chosen.cell,),
                placed=((chosen.cell, chosen.digit),),
                removed=(),
                openings=len(found),
                empty=state.empty.bit_count(),
                effort=looks,
            )
        )
        state.place(chosen.cell, chosen.digit)
        digit = chosen.digit
        twin = -1 if mirror is None or turned else mirror.cells[chosen.cell]
    return steps


def _followed(state: State) -> int:
    """The cells that are gone through where each candidate is followed for a round, marks reckoned as cells."""
    ground = state.ground
    return sum(board.bit_count() for board in state.boards) * (len(ground.peers) + A_MARK * len(ground.marks))


def _lowest(state: State, what_ifs: bool) -> list[Finding]:
    """The findings of the lowest rung that has some, of these the nearest; one for each set of candidates that go."""
    cells = len(state.ground.grid.cells)
    for techniques in ladder():
        if techniques[0].rung is Rung.WHAT_IF and not what_ifs:
            continue
        found: dict[tuple[Candidate, ...], Finding] = {}
        for technique in techniques:
            state.ground.look((LINKED if technique.rung >= Rung.CHAIN else SEARCHED) * cells)
            for finding in technique.find(state):
                state.ground.look(FOUND * cells)
                key = tuple(sorted(finding.removed))
                if key not in found or finding.reach < found[key].reach:
                    found[key] = finding
        if found:
            nearest = min(finding.reach for finding in found.values())
            return [finding for finding in found.values() if finding.reach == nearest]
    return []


def _striking(state: State, findings: list[Finding], weights: Weights, practice: Practice) -> list[Step]:
    """Strike all that the findings show; the effort of finding the first is shared among them."""
    empty = state.empty.bit_count()
    shown = sum(finding.rung == Rung.SIMPLE and finding.by_mark for finding in findings)
    looks = practice.looks(findings[0].rung, weights.striking(empty, findings[0].reach, shown))
    steps = [
        Step(
            reason=finding.reason(),
            rung=finding.rung,
            cells=finding.cells,
            placed=(),
            removed=finding.removed,
            openings=len(findings),
            empty=empty,
            effort=looks / len(findings),
        )
        for finding in findings
    ]
    for finding in findings:
        state.remove(finding.removed)
    return steps


def _from_solution(state: State, solution: Solution, weights: Weights, practice: Practice) -> Step:
    """Beyond the ladder: the digit that lets singles go furthest is taken from the solution."""

    def opened(cell: int) -> tuple[int, int]:
        trial = state.copy()
        trial.place(cell, solution[cell])
        while found := openings(trial):
            for opening in found:
                trial.place(opening.cell, opening.digit)
        return -trial.empty.bit_count(), -sum(board.bit_count() for board in trial.boards)

    cell = max(cells_on(state.empty), key=opened)
    empty = state.empty.bit_count()
    step = Step(
        reason=Reason("beyond", None, FromProof(cell, solution[cell])),
        rung=Rung.BEYOND,
        cells=(cell,),
        placed=((cell, solution[cell]),),
        removed=(),
        openings=0,
        empty=empty,
        effort=practice.looks(Rung.BEYOND, weights.striking(empty, BEYOND_REACH)),
    )
    state.place(cell, solution[cell])
    return step
