"""A proof's findings as text and back: what a cache keeps and what one process tells another.

In: the verdict, the count and the grade of a puzzle. Out: JSON text; and from such text the same values again, to the
last bit of every effort. Raises ValueError where a text is not such a record.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from sys import intern
from typing import Any, assert_never

from bookmaker.grade.model import Grade, SolvePath, Step
from bookmaker.solve.verdict import NoSolution, Prover, Several, Tally, Undecided, Unique, Verdict


@dataclass(frozen=True, slots=True)
class Findings:
    """What was found out about a puzzle, apart from the puzzle itself."""

    verdict: Verdict
    grade: Grade | None
    tally: Tally | None


def to_text(findings: Findings) -> str:
    """The findings as one line of JSON."""
    return json.dumps(
        {
            "verdict": _verdict_out(findings.verdict),
            "tally": [findings.tally.solutions, findings.tally.complete] if findings.tally else None,
            "grade": _grade_out(findings.grade) if findings.grade else None,
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
        return Findings(_verdict_in(data["verdict"]), grade, tally)
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
        "band": grade.band,
        "singles_only": grade.singles_only,
        "reached": grade.path.reached,
        "steps": [[getattr(step, name) for name in Step.__slots__] for step in grade.path.steps],
    }


def _grade_in(data: dict[str, Any]) -> Grade:
    path = SolvePath(tuple(map(_step_in, data["steps"])), data["reached"])
    return Grade(path, data["effort"], data["band"], data["singles_only"])


def _step_in(values: list[Any]) -> Step:
    technique, rung, cells, placed, removed, because, openings, empty, effort = values
    pairs = tuple([(cell, digit) for cell, digit in placed]), tuple([(cell, digit) for cell, digit in removed])
    return Step(intern(technique), rung, tuple(cells), *pairs, because, openings, empty, effort)
