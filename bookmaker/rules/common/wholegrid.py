"""Kinds that hold in the whole grid and have nothing to draw: a manifest says `king: yes` and no more."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import ClassVar, Self

from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.drawing.frame import Frame, Mark
from bookmaker.rules.common.parts import Written
from bookmaker.rules.common.reading import read_yes
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node


@dataclass(frozen=True)
class WholeGridRule(Rule):
    """Nothing to say but that it holds, so that two values of one kind are equal. The kind says what it asks."""

    typed: ClassVar[tuple[str, ...]] = ("yes",)

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        return cls() if read_yes(body, cls.kind, collector) else None

    def written(self, grid: Grid) -> Written:
        return "yes"

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return iter(())

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return iter(())

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return (MarkRef.whole(self.kind),)

    @classmethod
    def sample(cls) -> None:
        return None
