"""A proof's findings as text and back: what a cache keeps and what one process tells another.

In: the verdict, the count and the grade of a puzzle. Out: JSON text; and from such text the same values again, to the
last bit of every effort and difficulty. Raises ValueError where a text is not such a record.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any, assert_never

from bookmaker.grade.solve_path import Grade, SolvePath, Step
from bookmaker.reasons import Reason, Rung, coding
from bookmaker.solve.verdict import NoSolution, Prover, Several, Tally, Undecided, Unique, Verdict

_RUNGS = {rung.value: rung for rung in Rung}
"""Rungs by their numbers: to ask the class takes longer."""


@dataclass(frozen=True, slots=True)
class Findings:
    """What was found out about a puzzle, apart from the puzzle itself."""

    verdict: Verdict
    grade: Grade | None
    tally: Tally | None
    hardest: Reason | None = None


def to_text(findings: Findings) -> str:
    """The findings as one line of JSON."""
    return json.dumps(
        {
            "verdict": _verdict_out(findings.verdict),
            "tally": [findings.tally.solutions, findings.tally.complete] if findings.tally else None,
            "grade": _grade_out(findings.grade) if findings.grade else None,
            "hardest": coding.to_text(findings.hardest) if findings.hardest else None,
        },
        ensure_ascii=False,
        separators=(",", ":"),
    )


def from_text(text: str) -> Findings:
    """The findings in a record. Raises ValueError where it is none."""
    try:
        data = json.loads(text)
        tally = Tally(int(data["tally"][0]), bool(data["tally"][1])) if data["tally"] else None
        grade = _grade_in(data["grade"]) if data["grade"] else None
        hardest = coding.from_text(data["hardest"]) if data["hardest"] else None
        return Findings(_verdict_in(data["verdict"]), grade, tally, hardest)
    except (KeyError, TypeError, IndexError, RecursionError) as error:
        raise ValueError("not a record of a proof") from error


def _verdict_out(verdict: Verdict) -> list[Any]:
    match verdict:
        case Unique(solution, nodes, prover):
            return ["unique", solution, nodes, prover]
        case NoSolution(nodes, prover):
            return ["none", nodes, prover]
        case Several(first, second, nodes, prover):
            return ["several", first, second, nodes, prover]
        case Undecided(budget, found):
            return ["undecided", budget, found]
        case _ as never:
            assert_never(never)


def _verdict_in(data: list[Any]) -> Verdict:
    match data:
        case ["unique", list(solution), int(nodes), prover]:
            return Unique(tuple(solution), nodes, Prover(prover))
        case ["none", int(nodes), prover]:
            return NoSolution(nodes, Prover(prover))
        case ["several", list(first), list(second), int(nodes), prover]:
            return Several(tuple(first), tuple(second), nodes, Prover(prover))
        case ["undecided", int(budget), found]:
            return Undecided(budget, tuple(found) if found is not None else None)
    raise ValueError("not a record of a verdict")


def _grade_out(grade: Grade) -> dict[str, Any]:
    return {
        "effort": grade.effort,
        "difficulty": grade.difficulty,
        "singles_only": grade.singles_only,
        "reached": grade.path.reached,
        "steps": list(map(_step_out, grade.path.steps)),
    }


def _grade_in(data: dict[str, Any]) -> Grade:
    path = SolvePath(tuple(map(_step_in, data["steps"])), data["reached"])
    return Grade(path, data["effort"], data["difficulty"], data["singles_only"])


def _step_out(step: Step) -> list[Any]:
    others = (step.rung, step.cells, step.placed, step.removed, step.openings, step.empty, step.effort)
    return [coding.to_text(step.reason), *others]


def _step_in(values: list[Any]) -> Step:
    reason, rung, cells, placed, removed, *numbers = values
    pairs = tuple([(cell, digit) for cell, digit in placed]), tuple([(cell, digit) for cell, digit in removed])
    return Step(coding.from_text(reason), _RUNGS[rung], tuple(cells), *pairs, *numbers)
