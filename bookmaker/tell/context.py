"""What the sentences of a story need to know besides their steps."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from bookmaker.tell.trail import Told


@dataclass(frozen=True, slots=True)
class Context:
    """`nouns` are what the puzzle's marks are called. `hinges` has, for placements by their numbers, the strikes that
    are told right before them; `twins` the steps that are each other's mirror images; `rounds` for strikes by their
    numbers the number of their round's first."""

    nouns: Sequence[str] = ()
    hinges: Mapping[int, Sequence[Told]] = field(default_factory=dict)
    twins: Mapping[int, int] = field(default_factory=dict)
    rounds: Mapping[int, int] = field(default_factory=dict)
