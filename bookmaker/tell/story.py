"""The story of a path: rounds grouped into passages, the hard moment announced before it comes.

In: a `Proof` with a grade. Out: a `Story`. The words vary with the place in the path, never by chance.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.grade.model import Grade
from bookmaker.manifest.model import BAND_NAMES
from bookmaker.proof.model import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import counted, listed, number
from bookmaker.tell.model import Mood, Passage, Story
from bookmaker.tell.rounds import Round, rounds
from bookmaker.tell.sentences import because, deduction, placements

FLOW_LENGTH = 10
"""Placements told in one passage before a new one begins."""

TOLD_IN_FULL = 3
"""Deductions of one round that are told with their reasons; the rest are named by where they stand."""

LEADS = ("Next, ", "Then ", "After that, ", "Now ", "From there, ")


def tell(proof: Proof, band_names: Sequence[str] = BAND_NAMES) -> Story:
    """Tell the path of a proven, graded puzzle. Raises ValueError for one without a grade."""
    if proof.grade is None:
        raise ValueError(f"“{proof.entry.id}” has no solving path")
    entry = proof.entry
    passages = [_opening(entry.puzzle, proof.grade, band_names)]
    passages.extend(_passages(entry.puzzle.grid, proof.grade))
    return Story(entry.title or entry.id, entry.setter, tuple(passages))


def _opening(puzzle: RuledPuzzle, grade: Grade, band_names: Sequence[str]) -> Passage:
    grid = puzzle.grid
    givens = sum(1 for digit in puzzle.givens if digit)
    on_top = listed(rule.title.lower() for rule in puzzle.rules)
    kind = "irregular grid" if grid.box is None else "grid"
    text = f"A {grid.size}×{grid.size} {kind} with {counted(givens, 'given') if givens else 'no givens at all'}"
    text += f", and {on_top} on top." if on_top else "."
    hardest = grade.path.hardest
    if hardest is not None:
        need = "singles all the way" if grade.singles_only else f"the hardest step on the way: {hardest.technique}"
        text += f" Band: {band_names[grade.band - 1]}; {need}."
    return Passage(Mood.OPENING, text, 0, 0)


def _passages(grid: Grid, grade: Grade) -> Iterator[Passage]:
    path = grade.path
    crux = path.hardest.rung if path.hardest and path.hardest.rung > 4 else None
    flow: list[Round] = []
    cut = list(rounds(path))
    for index, this in enumerate(cut):
        lone = this.places and len(this.steps) == 1 and this.steps[0].openings == 1 and this.rung == 4
        if this.places and this.rung <= 4 and not lone:
            flow.append(this)
            if sum(len(r.steps) for r in flow) >= FLOW_LENGTH and index + 1 < len(cut):
                yield _flow(grid, flow)
                flow = []
            continue
        if flow:
            yield _flow(grid, flow)
            flow = []
        if lone:
            yield _care(grid, this)
        else:
            yield _stuck(grid, this, crux == this.rung, bool(this.first))
            if crux == this.rung:
                crux = None
    if flow:
        yield _flow(grid, flow, ending=True)


def _flow(grid: Grid, flow: Sequence[Round], ending: bool = False) -> Passage:
    sentences = []
    for index, this in enumerate(flow):
        lead = LEADS[(this.first + index) % len(LEADS)] if index else ""
        sentences.append(_flow_sentence(grid, this, lead))
    if ending:
        sentences.append("And the grid is full.")
    return Passage(Mood.ENDING if ending else Mood.FLOW, " ".join(sentences), flow[0].first, flow[-1].after)


def _flow_sentence(grid: Grid, this: Round, lead: str) -> str:
    if len(this.steps) == 1:
        step = this.steps[0]
        reason = step.because if lead else because(step)
        tail = "" if this.rung in (2, 3) else f", so {placements(grid, this.steps)}"
        return f"{lead}{reason}{tail if this.rung == 1 else ''}."
    placed = placements(grid, this.steps)
    match this.rung:
        case 1 | 2:
            return f"{lead}{'scanning' if lead else 'Scanning'} the boxes gives {placed}."
        case 3:
            return f"{lead}{'rows' if lead else 'Rows'} and columns give {placed}."
        case _:
            return f"{lead}{'naked' if lead else 'Naked'} singles: {placed}."


def _care(grid: Grid, this: Round) -> Passage:
    step = this.steps[0]
    filled = len(grid.cells) - step.empty
    lead = f"Careful here: with {filled} cells filled there is just one opening, and it is a naked single."
    text = f"{lead} {because(step)}."
    return Passage(Mood.CARE, text, this.first, this.after)


def _stuck(grid: Grid, this: Round, crux: bool, begun: bool) -> Passage:
    step = this.steps[0]
    filled = len(grid.cells) - step.empty
    sentences = []
    if crux:
        sentences.append("Now comes the hard moment." if begun else "The hard moment comes first.")
    if begun and not this.places:
        sentences.append(f"With {filled} cells filled, no single is left.")
    if this.places:
        sentences.append(f"{because(step)}: {placements(grid, this.steps)}.")
    else:
        told = sorted(this.steps, key=lambda s: (-len(s.removed), s.cells))[:TOLD_IN_FULL]
        sentences.extend(deduction(grid, s) for s in told)
        rest = len(this.steps) - len(told)
        if rest:
            more = (
                "one more step of this kind strikes" if rest == 1 else f"{number(rest)} more steps of this kind strike"
            )
            sentences.append(f"In the same round {more} further candidates.")
    return Passage(Mood.CRUX if crux else Mood.DEDUCTION, " ".join(sentences), this.first, this.after)
