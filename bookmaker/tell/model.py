"""A solving path as a presenter tells it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Mood(Enum):
    """What a passage does in the telling."""

    OPENING = "opening"
    """What lies on the table, and what is to come."""
    FLOW = "flow"
    """Singles that follow from each other."""
    NARROW = "narrow"
    """A single that is easily overlooked."""
    DEDUCTION = "deduction"
    """Steps above the singles, and what they open."""
    CRUX = "crux"
    """The hard moment, announced before it comes."""
    ENDING = "ending"
    """The last stretch."""


@dataclass(frozen=True, slots=True)
class Passage:
    """A few sentences, and the steps of the path they cover: `first` up to but not including `after`.

    `told` are the numbers of the steps that the sentences tell, in order. Strikes are told where something first rests
    on them, if anything does: that may be in a later passage than the one that covers them.
    """

    mood: Mood
    text: str
    first: int
    after: int
    told: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Story:
    """The whole telling of one puzzle."""

    title: str
    setter: str
    passages: tuple[Passage, ...]
