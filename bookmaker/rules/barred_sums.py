"""Barred sums: no two cells that share a side add up to one of some numbers, in the whole grid.

Manifest: `barred-sums: 5 10`; or `{sums: 10, diagonal: yes}` for cells that touch at a corner as well.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.barred import BarredRule
from bookmaker.rules.common.parts import Written
from bookmaker.rules.common.reading import parts_of
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items, read_switch, read_whole


@dataclass(frozen=True)
class BarredSums(BarredRule):
    """No neighbours add up to one of `sums`."""

    kind = "barred-sums"
    title = "Barred sums"
    noun = "ban on sums"
    typed = ("lines", "sums: lines, diagonal: switch")
    relabels = "reversed"
    from_zero = True
    example = "barred-sums: 5 10\n"
    options = ("diagonal", "sums")

    sums: frozenset[int] = frozenset()

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        diagonal: bool | None = False
        if isinstance(body, Table):
            fields = read_fields(body, cls.kind, collector, ("sums", "diagonal"), ("sums",))
            if "sums" not in fields or len(fields) < len(body.entries):
                return None
            if "diagonal" in fields:
                diagonal = read_switch(fields["diagonal"], "diagonal", collector)
            body = fields["sums"]
        sums = _read_sums(body, bool(diagonal), grid, collector)
        return None if sums is None or diagonal is None else cls(diagonal, sums)

    def written(self, grid: Grid) -> Written:
        said = self.said_options()
        return said if self.diagonal else said["sums"]

    def said_options(self) -> dict[str, Written]:
        sums = " ".join(map(str, sorted(self.sums)))
        return {"sums": sums, "diagonal": "yes"} if self.diagonal else {"sums": sums}

    def barred(self, worth: int) -> frozenset[int]:
        return frozenset(total - worth for total in self.sums)

    def clash(self, one: int, other: int) -> bool:
        return one + other in self.sums

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return super().arguments(words) | {"sums": words.listed(map(str, sorted(self.sums)), "or")}


def _read_sums(body: Node, alike: bool, grid: Grid, collector: Collector) -> frozenset[int] | None:
    """One or more sums that two digits can make, which may be `alike`."""
    first, last = grid.worth(1), grid.worth(grid.size)
    least, most = (2 * first, 2 * last) if alike else (2 * first + 1, 2 * last - 1)
    found: list[int] = []
    errors = sum(1 for _ in collector.errors())
    for item in read_items(body, "the barred sums", collector):
        if not isinstance(item, Word):
            collector.error(item.place, "not-a-number", "the barred sums should be whole numbers such as 5 10")
            continue
        for word in parts_of(item) or (item,):
            number = read_whole(word, "a barred sum", collector, least, most)
            if number is not None and number in found:
                collector.error(word.place, "sum-twice", f"{number} is named twice")
            elif number is not None:
                found.append(number)
    if not found and sum(1 for _ in collector.errors()) == errors:
        collector.error(body.place, "no-sums", "no sum is named here", "such as “barred-sums: 5 10”")
    return frozenset(found) if sum(1 for _ in collector.errors()) == errors else None
