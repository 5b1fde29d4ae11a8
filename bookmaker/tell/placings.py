"""Placements in sentences: runs of one digit, houses that fill up, cells that follow from each other.

In: told placements in order. Out: sentences that name every one of them, in that order. How they are worded depends on
what is seen: whether a digit is completed, whether each cell follows from the one before, in which band they lie.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise

from bookmaker.grade.singles import Kind
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.wording import cells_listed, counted, listed, number, symbol
from bookmaker.tell.context import Context
from bookmaker.tell.model import Sentence
from bookmaker.tell.reasons import lookers, seen
from bookmaker.tell.strikings import payoff, steps_counted, strikes, twin_opened
from bookmaker.tell.trail import Told
from bookmaker.tell.voice import Voice, placed, sentence, several

LINKED = 2
"""No more placements than this hang on another in one sentence, with “which leaves …”."""

SHORT = 4
"""So many placements at the end need no words about falling into place."""


@dataclass(frozen=True, slots=True)
class Unit:
    """Placements that are told in one breath: a run of one digit, a `house` that fills up, a single cell, or `paired`
    steps, each before its twin."""

    steps: tuple[Told, ...]
    house: str = ""
    paired: bool = False

    @property
    def first(self) -> Told:
        """The step that begins it."""
        return self.steps[0]

    @property
    def last(self) -> Told:
        """The step that ends it."""
        return self.steps[-1]


def units(grid: Grid, steps: Sequence[Told], context: Context) -> Iterator[Unit]:
    """Cut placements into units, in order; those with hinges stand alone."""
    at = 0
    while at < len(steps):
        free = at + 1
        if steps[at].index not in context.hinges:
            while free < len(steps) and steps[free].index not in context.hinges:
                free += 1
        unit = _unit(grid, steps[at:free], context.twins)
        yield unit
        at += len(unit.steps)


def _unit(grid: Grid, steps: Sequence[Told], twins: Mapping[int, int]) -> Unit:
    """The first unit of some placements."""
    pairs = 0
    while steps[2 * pairs : 2 * pairs + 2] and _twins(steps, 2 * pairs, twins) and _alike(steps, 2 * pairs):
        pairs += 1
    if pairs:
        return Unit(tuple(steps[: 2 * pairs]), paired=True)
    end = 1
    while end < len(steps) and steps[end].digit == steps[0].digit and not _twins(steps, end, twins):
        end += 1
    house = ""
    if end == 1:
        house, end = _filling(grid, steps)
    if end == 2 and not house and _follows(steps[0], steps[1]):
        end = 1  # “which leaves …” says more than that the digits are the same
    return Unit(tuple(steps[:end]), house)


def _twins(steps: Sequence[Told], at: int, twins: Mapping[int, int]) -> bool:
    return at + 1 < len(steps) and twins.get(steps[at].index) == steps[at + 1].index


def _alike(steps: Sequence[Told], at: int) -> bool:
    """Do the steps from `at` have the digits of the first two?"""
    return (steps[at].digit, steps[at + 1].digit) == (steps[0].digit, steps[1].digit)


def flow(
    grid: Grid,
    steps: Sequence[Told],
    voice: Voice,
    context: Context,
    opened: Told | None = None,
    begins: bool = False,
) -> list[Sentence]:
    """Sentences for placements that follow each other; `begins` where these are the first steps of all, `opened` is the
    placement that a stretch of strikes just told has opened."""
    sentences: list[Sentence] = []
    clauses: list[str] = []
    said: list[int] = []
    before: Told | None = None
    for unit in units(grid, steps, context):
        first, mirrored = unit.first, before or opened
        hinge = context.hinges.get(first.index)
        alone_after = before is not None and len(unit.steps) == 1 and _follows(before, first)
        if alone_after and not hinge and 0 < len(clauses) <= LINKED:
            clauses.append(linked(grid, first, voice))
        else:
            if clauses:
                sentences.append(Sentence(_said(clauses), tuple(said)))
            clauses, said = [], []
            if hinge and mirrored and context.twins.get(mirrored.index) == first.index:
                sentences.append(twin_opened(grid, hinge, first, voice))
            elif hinge:
                sentences += strikes(grid, hinge, voice, context)
                sentences.append(payoff(grid, first, voice))
            elif begins and not before:
                clauses = [_start(grid, unit, context)]
            else:
                clauses = [_clause(grid, unit, voice, before)]
        if clauses:
            said += [step.index for step in unit.steps]
        before, opened = unit.last, None
    return [*sentences, Sentence(_said(clauses), tuple(said))] if clauses else sentences


def alone(grid: Grid, told: Told, voice: Voice) -> str:
    """A clause for one placement."""
    cell, digit = grid.name(told.cell), symbol(told.digit)
    house = told.area.name if told.area else ""
    if told.of_digit == grid.size and house:
        return voice.pick(
            "last of a digit", f"the last {digit} goes to {cell}", f"{house} takes the last {digit}, in {cell}"
        )
    match told.kind:
        case Kind.LAST:
            return voice.pick(
                "last cell",
                f"the last cell of {house}, {cell}, takes {digit}",
                f"{house} lacks only {digit}, which goes to {cell}",
                f"{house} closes with {digit} in {cell}",
            )
        case Kind.NAKED:
            return voice.pick("naked", f"only {digit} is left for {cell}", f"nothing but {digit} fits in {cell}")
    return voice.pick(
        "hidden",
        f"in {house} only {cell} takes {digit}",
        f"{house} has one place for {digit}, {cell}",
        f"the {digit} of {house} goes to {cell}",
    )


def linked(grid: Grid, told: Told, voice: Voice) -> str:
    """A placement that the one before it makes a single, to follow “which”: “leaves r8c8 for 8 in row 8”."""
    cell, digit = grid.name(told.cell), symbol(told.digit)
    house = told.area.name if told.area else ""
    match told.kind:
        case Kind.LAST:
            return f"leaves {digit} for {cell}, the last cell of {house}"
        case Kind.NAKED:
            return f"leaves {cell} nothing but {digit}"
    return voice.pick("linked", f"leaves {cell} for {digit} in {house}", f"leaves {house} only {cell} for {digit}")


def fixed(grid: Grid, steps: Sequence[Told], context: Context) -> list[Sentence]:
    """Digits that marks fix by themselves, or that the ladder does not reach."""
    sentences = []
    for name, run in groupby(steps, key=lambda told: told.step.technique):
        mine = list(run)
        written = _written(grid, mine)
        if name in context.nouns:
            marks = steps_counted([name], context.nouns)
            verb = "fixes" if marks.endswith(name) else "fix"
            words = f"{marks} {verb} {counted(len(mine), 'cell')} at once: {written}"
        else:
            words = f"here the ladder ends, and the proof has to help with {written}"
        sentences.append(Sentence(sentence(words), tuple(told.index for told in mine)))
    return sentences


def ending(grid: Grid, steps: Sequence[Told], voice: Voice) -> Sentence:
    """The last placements as one list."""
    if len(steps) <= SHORT:
        words = f"what remains is {_written(grid, steps)}"
    else:
        lead = voice.pick("ending", "from here everything falls into place", "the rest falls into place")
        words = f"{lead}: {_written(grid, steps, ', and at last')}"
    return Sentence(sentence(words), tuple(told.index for told in steps))


def _written(grid: Grid, steps: Sequence[Told], last: str = " and") -> str:
    """“7 in r1c2 and r5c4, 3 in r2c2 and 5 in r9c9”."""
    pairs = ((step.cell, step.digit) for step in steps)
    *most, final = [placed(grid, run) for _, run in groupby(pairs, key=lambda pair: pair[1])]
    return f"{', '.join(most)}{last} {final}" if most else final


def _follows(before: Told, step: Told) -> bool:
    return step.since == before.index


def _filling(grid: Grid, steps: Sequence[Told]) -> tuple[str, int]:
    """The house that the first placements fill up between them, and how many these are."""
    for end in range(len(steps), 1, -1):
        if len({step.digit for step in steps[:end]}) == end:
            for house in grid.houses:
                if house.name in steps[end - 1].closes and all(step.cell in house.cells for step in steps[:end]):
                    return house.name, end
    return "", 1


def _said(clauses: Sequence[str]) -> str:
    first, *links = clauses
    return sentence(first + "".join((", and that " if at else ", which ") + link for at, link in enumerate(links)))


def _start(grid: Grid, unit: Unit, context: Context) -> str:
    """The first placements of all."""
    first = unit.first
    if len(unit.steps) > 1 and not unit.house and not unit.paired:
        return f"start with the {several(first.digit)}: {cells_listed(grid, [step.cell for step in unit.steps])}"
    if first.area and first.kind is not Kind.LAST:
        digit = symbol(first.digit)
        return f"start with the {digit} of {first.area.name}: {lookers(grid, first)} only {grid.name(first.cell)}"
    return f"start here: {seen(grid, first, context)}"


def _clause(grid: Grid, unit: Unit, voice: Voice, before: Told | None) -> str:
    if unit.paired:
        return _pairs(grid, unit, voice)
    if unit.house:
        written = listed(placed(grid, [(step.cell, step.digit)]) for step in unit.steps)
        return voice.pick("house", f"{unit.house} fills up with {written}", f"{unit.house} is finished with {written}")
    if len(unit.steps) == 1:
        lead = voice.pick("lead", "", "then ", "", "next, ") if before else ""
        return lead + alone(grid, unit.first, voice)
    return _run(grid, unit, voice)


def _pairs(grid: Grid, unit: Unit, voice: Voice) -> str:
    """Steps with their twins."""
    ones, others = unit.steps[::2], unit.steps[1::2]
    if len(ones) == 1:
        twin = others[0]
        return f"{alone(grid, ones[0], voice)}, and its twin, {grid.name(twin.cell)}, takes {symbol(twin.digit)}"
    these, those = (cells_listed(grid, [step.cell for step in steps]) for steps in (ones, others))
    many, turned = several(ones[0].digit), several(others[0].digit)
    called = f"their twins, {turned}," if turned != many else "their twins"
    return f"{number(len(ones))} {many} go to {these}, and {called} to {those}"


def _run(grid: Grid, unit: Unit, voice: Voice) -> str:
    """A run of one digit."""
    steps, many = unit.steps, several(unit.first.digit)
    cells = [step.cell for step in steps]
    named, count = cells_listed(grid, cells), number(len(steps))
    if unit.last.of_digit == grid.size:
        return voice.pick(
            "run to the end",
            f"the last {count} {many} go to {named}",
            f"{count} {many} are left, and they go to {named}",
            f"the {many} are completed by {named}",
        )
    if len(steps) > 2 and all(_follows(one, other) for one, other in pairwise(steps)):
        digit = symbol(unit.first.digit)
        return voice.pick(
            "chain", f"one {digit} leads to the next: {named}", f"the {many} follow one from another: {named}"
        )
    if band := _band(grid, cells):
        return voice.pick(
            "band", f"scanning the {many} through the {band} gives {named}", f"the {many} of the {band} are {named}"
        )
    return voice.pick(
        "run",
        f"{count} {many} follow, {named}",
        f"scanning the {many} gives {named}",
        f"then the {many}: {named}",
        f"the {many} go on with {named}",
    )


def _band(grid: Grid, cells: Sequence[int]) -> str:
    """“top band”, “left stack”: the row or column of boxes in which all cells lie, where there are three of each."""
    if grid.box is None or grid.size // grid.box[0] != 3 or grid.size // grid.box[1] != 3:
        return ""
    bands = {grid.row(cell) // grid.box[0] for cell in cells}
    stacks = {grid.column(cell) // grid.box[1] for cell in cells}
    if len(bands) == 1:
        return ("top", "middle", "bottom")[bands.pop()] + " band"
    return ("left", "centre", "right")[stacks.pop()] + " stack" if len(stacks) == 1 else ""
