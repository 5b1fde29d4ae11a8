"""Grades: a puzzle and its proven solution in, the path a person would take, its effort and its difficulty out."""

from __future__ import annotations

from bookmaker.grade.bands import counted_effort, difficulty_of, family_of
from bookmaker.grade.effort import WEIGHTS, Weights
from bookmaker.grade.path import walk
from bookmaker.grade.solve_path import Grade, SolvePath, Step
from bookmaker.logic.state import Look, going_on
from bookmaker.reasons import Rung
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution

__all__ = ["Grade", "SolvePath", "Step", "grade"]


def grade(puzzle: RuledPuzzle, solution: Solution, weights: Weights = WEIGHTS, look: Look = going_on) -> Grade:
    """Grade a puzzle that was proven to have this one solution. `look` is told now and then what work was done (an
    effort, `Meter.effort`), and may end it by raising."""
    path = walk(puzzle, solution, weights, look)
    effort = path.effort
    singles_only = all(step.rung <= Rung.NAKED for step in path.steps)
    difficulty = difficulty_of(counted_effort(effort, puzzle.grid), family_of(puzzle))
    return Grade(path, effort, difficulty, singles_only)
