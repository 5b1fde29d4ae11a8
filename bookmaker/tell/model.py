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
class Sentence:
    """One or two sentences, and the numbers of the steps that they tell, in order."""

    text: str
    told: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Passage:
    """A few sentences, and the steps of the path they cover: `first` up to but not including `after`.

    Strikes are told where something first rests on them, if anything does: that may be in a later passage than the one
    that covers them.
    """

    mood: Mood
    sentences: tuple[Sentence, ...]
    first: int
    after: int

    @property
    def text(self) -> str:
        """The sentences as one paragraph."""
        return " ".join(sentence.text for sentence in self.sentences)

    @property
    def told(self) -> tuple[int, ...]:
        """The numbers of the steps that the passage tells, in order."""
        return tuple(index for sentence in self.sentences for index in sentence.told)


@dataclass(frozen=True, slots=True)
class Story:
    """The whole telling of one puzzle."""

    title: str
    setter: str
    passages: tuple[Passage, ...]
