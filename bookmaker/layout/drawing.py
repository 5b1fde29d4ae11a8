"""Pages that are drawn when they are asked for, and not kept: a long book would not fit into memory."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import overload

from bookmaker.display.items import Page
from bookmaker.source.diagnostics import BookErrors, Diagnostic


class Pages(Sequence[Page]):
    """A number of pages; `draw` makes the one at an index from 0, the same whenever it is asked for."""

    def __init__(self, count: int, draw: Callable[[int], Page]) -> None:
        self._count = count
        self._draw = draw

    def __len__(self) -> int:
        return self._count

    def __iter__(self) -> Iterator[Page]:
        """All pages in order. If drawing any raises BookErrors, the rest is drawn all the same, and all diagnostics are
        raised together at the end."""
        diagnostics: list[Diagnostic] = []
        for at in range(self._count):
            try:
                page = self._draw(at)
            except BookErrors as found:
                diagnostics += found.diagnostics
            else:
                yield page
        if diagnostics:
            raise BookErrors(diagnostics)

    @overload
    def __getitem__(self, at: int) -> Page: ...
    @overload
    def __getitem__(self, at: slice) -> tuple[Page, ...]: ...
    def __getitem__(self, at: int | slice) -> Page | tuple[Page, ...]:
        if isinstance(at, slice):
            return tuple(map(self._draw, range(self._count)[at]))
        return self._draw(range(self._count)[at])
