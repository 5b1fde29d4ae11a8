"""A solving path as a presenter tells it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Mood(Enum):
    """What a passage does in the telling."""

    OPENING = "opening"
    """What lies on the table: size, givens, rules, band."""
    FLOW = "flow"
    """Singles that follow from each other."""
    CARE = "care"
    """A lone opening that is easily overlooked."""
    DEDUCTION = "deduction"
    """A step above the singles."""
    CRUX = "crux"
    """The hardest deduction of the path, announced before it comes."""
    ENDING = "ending"
    """The last stretch."""


@dataclass(frozen=True, slots=True)
class Passage:
    """A few sentences, and the steps of the path they tell: `first` up to but not including `after`."""

    mood: Mood
    text: str
    first: int
    after: int


@dataclass(frozen=True, slots=True)
class Story:
    """The whole telling of one puzzle."""

    title: str
    setter: str
    passages: tuple[Passage, ...]
