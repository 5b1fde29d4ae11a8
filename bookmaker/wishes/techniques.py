"""Techniques as a wish names them, and the keys by which the steps of a path are known.

A step's key is its technique, or the kind of the mark that allows it by itself. A wish names either as it is printed
(“X-wing”, “cage”), or several at once where a technique has a name for every size (“fish”).
"""

from __future__ import annotations

from collections.abc import Iterable

from bookmaker.logic.technique import ladder
from bookmaker.logic.techniques.rule_deduction import RuleDeduction
from bookmaker.phrases import Phrasebook
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.reasons import Reason
from bookmaker.reasons.reason import MARK
from bookmaker.rules import kinds

SINGLES = ("last-cell", "hidden-single", "naked-single")
"""Keys of the steps that place a digit."""


def key_of(reason: Reason) -> str:
    """What a step is known by."""
    return reason.kind if reason.technique == MARK else reason.technique


def name_of(key: str) -> str:
    """What is printed for a key: “X-wing”, “cage”."""
    if key in kinds():
        return kinds()[key].noun
    return Phrasebook(CLASSIC).say(f"technique-{key}")


def nameable(marks: Iterable[str]) -> dict[str, tuple[str, ...]]:
    """All that can be wanted or refused in a puzzle with marks of these kinds, each with its keys."""
    patterns = [technique for rung in ladder() for technique in rung if not isinstance(technique, RuleDeduction)]
    groups = {technique.name.replace("-", " "): technique.names for technique in patterns if technique.step_names}
    keys = (*SINGLES, *(key for technique in patterns for key in technique.names), *marks)
    return groups | {name_of(key): (key,) for key in keys}


def rung_of(keys: Iterable[str]) -> int:
    """Where on the ladder the highest of these stands; 0 for singles and marks."""
    wanted = set(keys)
    return max((technique.rung for rung in ladder() for technique in rung if wanted & {*technique.names}), default=0)
