"""A solving path as a presenter tells it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from bookmaker.reasons.telling import Utterance
from bookmaker.trace import Traced


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
class Said:
    """What one sentence says, and the numbers of the steps that it tells, in order."""

    utterance: Utterance
    told: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Sentence:
    """The same in words."""

    text: str
    told: tuple[int, ...] = ()
    utterance: Utterance | None = None


@dataclass(frozen=True, slots=True)
class Passage:
    """A few sentences that belong together."""

    mood: Mood
    sentences: tuple[Sentence, ...]

    @property
    def text(self) -> str:
        """The sentences as one paragraph."""
        return " ".join(sentence.text for sentence in self.sentences)

    @property
    def told(self) -> tuple[int, ...]:
        """The numbers of the steps that the passage tells, in order."""
        return tuple(number for sentence in self.sentences for number in sentence.told)


@dataclass(frozen=True)
class Story:
    """The whole telling of one puzzle; `steps` are numbered from 1, and told in that order."""

    title: str
    setter: str
    passages: tuple[Passage, ...]
    steps: tuple[Traced, ...] = ()
    language: str = "en"
