"""How a language names what steps speak of, on one grid: cells, digits, houses, marks, techniques.

In: values. Out: text, or lists that messages join. What a kind of rule is called it says itself (`Rule.noun`, its
title in a sentence for several); a language has messages of its own for kinds where that does not do.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import assert_never

from bookmaker.language import Argument, Listed, Manner, Named, capital, catalogue
from bookmaker.phrases.titles import noun_of, nouns_of
from bookmaker.puzzle.grid import REGION_LETTERS, Grid, HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef, Reason
from bookmaker.reasons.marks import At, Between, Joined, Lettered, Line, Outside, Slanting, Whole
from bookmaker.reasons.reason import MARK
from bookmaker.rules import kinds
from bookmaker.rules.common.words.letters import in_letters

LONG = 4
"""So many digits in a row are said by the first and the last."""


class Phrasebook:
    """The words of one language for one grid, said in one manner."""

    def __init__(self, grid: Grid, language: str = "en", manner: Manner = "printed") -> None:
        self.grid = grid
        self.catalogue = catalogue(language).in_manner(manner)

    def say(self, name: str, wording: int | str = 0, /, **arguments: Argument) -> str:
        """A message filled in, in one of its wordings."""
        text = self.catalogue.say(name, wording, divided=self.grid.divided, **arguments)
        return in_letters(self.catalogue, text, self.grid)

    def sentence(self, name: str, wording: int | str = 0, /, **arguments: Argument) -> str:
        """The same with a capital at its start."""
        return capital(self.say(name, wording, **arguments))

    def first(self, *names: str) -> str:
        """The first of these messages that there is; the last where there is none."""
        return self.catalogue.first(*names)

    def cell(self, cell: int) -> str | Named:
        """“r1c2”; for the ear “row 1 column 2”."""
        if self.catalogue.manner == "printed":
            return self.grid.name(cell)
        row, column = self.grid.place(cell)
        return self.catalogue.named("cell-at", row=str(row + 1), column=str(column + 1))

    def cells(self, cells: Iterable[int]) -> Listed:
        """“r1c2, r1c5 and r3c4”."""
        return self.catalogue.listed(map(self.cell, cells))

    def digit(self, digit: int) -> str:
        """A digit as it is printed."""
        return self.grid.symbol(digit)

    def digits(self, digits: Iterable[int]) -> Listed:
        """“1, 2 and 5”; four or more in a row as “2 to 6”."""
        members, named = list(digits), list[str]()
        for run in _runs(members):
            if len(run) >= LONG:
                named.append(self.say("digits-run", first=self.digit(run[0]), last=self.digit(run[-1])))
            else:
                named += map(self.digit, run)
        return self.catalogue.listed(named, count=len(members))

    def numbers(self, numbers: Iterable[int]) -> Listed:
        """“2 and 5”, for numbers that are no digits."""
        return self.catalogue.listed(map(str, numbers))

    def number(self, count: int) -> Named:
        """“three”; figures above twelve."""
        return self.catalogue.number(count)

    def candidate(self, candidate: Candidate) -> str:
        """“4 in r1c2”."""
        cell, digit = candidate
        return self.say("candidate", cell=self.cell(cell), digit=self.digit(digit))

    def clauses(self, clauses: Iterable[str]) -> str:
        """“a, b, and c”, for clauses that hold commas of their own."""
        return self.catalogue.joined(tuple(clauses), "clauses")

    def gone(self, candidates: Sequence[Candidate]) -> str:
        """“4 is eliminated from r3c5, and 7 from r3c8”: by digits or by cells, whichever is shorter."""
        parts = [
            self.say("gone-next" if at else "gone-first", digits=self.digits(digits), cells=self.cells(cells))
            for at, (digits, cells) in enumerate(gathered(candidates))
        ]
        return self.clauses(parts)

    def house(self, ref: HouseRef) -> Named:
        """“row 3”, “the centre box”, “region D”, “the window at r2c2”."""
        grid = self.grid
        match ref.kind:
            case "row" | "column":
                return self.catalogue.named(f"house-{ref.kind}", number=self.line(str(ref.number), ref.square))
            case "box":
                return self.catalogue.named("house-box", place=_box_place(grid, ref.number - 1), cell=self.cell(ref.at))
            case "region":
                return self.catalogue.named("house-region", letter=REGION_LETTERS[ref.number - 1])
        name = self.first(f"house-{ref.kind}-{ref.key}", f"house-{ref.kind}", "house-of-rule")
        last = ref.number + grid.box[0] - 1 if grid.box else ref.number
        numbers: dict[str, Argument] = {"number": str(ref.number), "n": ref.number, "last": str(last)}
        return self.catalogue.named(name, noun=self.noun(ref.kind), cell=self.cell(ref.at), **numbers)

    def line(self, numbers: str, square: str) -> str:
        """The number of a row or column, or of several, and of which of the grids that overlap."""
        return self.say("line-in-grid", number=numbers, grid=square) if square else numbers

    def houses(self, refs: Sequence[HouseRef]) -> Named | Listed:
        """“rows 2 and 5”; “the centre box”; houses of other kinds by name, one after the other."""
        together, square = f"houses-{refs[0].kind}", refs[0].square
        alike = len({(ref.kind, ref.square) for ref in refs}) == 1
        if len(refs) > 1 and alike and self.catalogue.has(together):
            numbers = self.numbers(ref.number for ref in refs)
            return self.catalogue.named(together, numbers=self.line(str(numbers), square) if square else numbers)
        return self.catalogue.listed(self.house(ref) for ref in refs)

    def noun(self, kind: str) -> Argument:
        """What a mark of a kind of rule is called."""
        return noun_of(self.catalogue, kinds()[kind])

    def nouns(self, kind: str) -> str:
        """What several are called."""
        return nouns_of(self.catalogue, kinds()[kind])

    def mark(self, mark: MarkRef) -> Named:
        """A mark by what is printed and where: “the thermometer from r1c1 to r4c1”, “the cage of 17 at r1c2”."""
        said: dict[str, Argument] = {"value": mark.value or "none"}
        match mark.anchor:
            case Line(first, last):
                anchored = "line"
                said |= {"first": self.cell(first), "last": self.cell(last)}
            case At(cell):
                anchored = "at"
                said |= {"cell": self.cell(cell)}
            case Between(one, other):
                anchored = "between"
                said |= {"one": self.cell(one), "other": self.cell(other)}
            case Outside(side, line, square):
                anchored = "outside"
                said["where"] = self.catalogue.named("beside-line", side=side, line=self.line(str(line), square))
            case Slanting(start, way):
                anchored = "slanting"
                said |= {"start": self.cell(start), "way": way}
            case Lettered(letter):
                anchored = "lettered"
                said |= {"letter": letter}
            case Joined(cells):
                anchored = "joined"
                said |= {"nouns": self.nouns(mark.kind), "cells": self.cells(cells)}
            case Whole():
                anchored = "whole"
            case _ as never:
                assert_never(never)
        own = f"mark-{mark.kind}"
        names = [f"{own}-{mark.variety}"] if mark.variety and anchored != "joined" else []
        names += [f"{own}-{anchored}"] + [own] * (anchored not in ("joined", "whole"))
        names += [f"mark-{anchored}-{mark.variety}"] * bool(mark.variety) + [f"mark-{anchored}"]
        return self.catalogue.named(self.first(*names), noun=self.noun(mark.kind), **said)

    def marks(self, kind: str) -> str:
        """All marks of a kind: “the arrows”."""
        return self.say(self.first(f"marks-{kind}", "marks"), noun=self.noun(kind), nouns=self.nouns(kind))

    def technique(self, reason: Reason) -> str:
        """What a step is called: “naked pair”, or by its mark, “thermometer”."""
        return str(self.noun(reason.kind)) if reason.technique == MARK else self.say(f"technique-{reason.technique}")

    def steps(self, reasons: Iterable[Reason]) -> str:
        """What steps are taken: “the cages, a naked pair and two what-ifs”, in the order in which they are met."""
        counts: dict[tuple[str, str], int] = {}
        for reason in reasons:
            key = reason.technique, reason.kind if reason.technique == MARK else ""
            counts[key] = counts.get(key, 0) + 1
        return self.catalogue.joined([self._counted(*key, count) for key, count in counts.items()], "and")

    def _counted(self, technique: str, kind: str, count: int) -> str:
        if technique == MARK:
            return self.marks(kind)
        if count == 1:
            return self.say(f"technique-{technique}", "one")
        return self.say(f"technique-{technique}", "many", count=self.number(count))


def gathered(candidates: Sequence[Candidate]) -> list[tuple[list[int], list[int]]]:
    """Candidates as few pairs of digits and cells: every digit with all its cells, or every cell with all its digits;
    those alike together."""
    ways = []
    for by in (1, 0):
        found: dict[int, list[int]] = {}
        for candidate in candidates:
            found.setdefault(candidate[by], []).append(candidate[1 - by])
        alike: dict[tuple[int, ...], list[int]] = {}
        for key, members in found.items():
            alike.setdefault(tuple(sorted(members)), []).append(key)
        pairs = [(sorted(keys), list(members)) for members, keys in alike.items()]
        ways.append(pairs if by else [(digits, cells) for cells, digits in pairs])
    return min(ways, key=lambda way: sum(len(digits) + 2 * len(cells) for digits, cells in way))


def _runs(digits: Sequence[int]) -> list[list[int]]:
    """Digits cut where they do not go on by one."""
    runs: list[list[int]] = []
    for digit in digits:
        if runs and digit == runs[-1][-1] + 1:
            runs[-1].append(digit)
        else:
            runs.append([digit])
    return runs


def _box_place(grid: Grid, index: int) -> str:
    """“top-left” where boxes stand in no more than three rows and columns of one grid; “” elsewhere."""
    assert grid.box is not None
    if grid.overlaps:
        return ""
    rows, columns = grid.size // grid.box[0], grid.size // grid.box[1]
    down = {2: ("top", "bottom"), 3: ("top", "middle", "bottom")}.get(rows)
    across = {2: ("left", "right"), 3: ("left", "centre", "right")}.get(columns)
    return f"{down[index // columns]}-{across[index % columns]}" if down and across else ""
