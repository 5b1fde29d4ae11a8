"""Pictures for a story: the board at its key moments, and what to point out on it.

In: a proof and its story. Out: `Scene`s, passage by passage: for every strike of a hard place where it is found, for
every narrow single where it goes. No geometry.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import takewhile

from bookmaker.grade.model import SolvePath, Step
from bookmaker.grade.singles import Kind
from bookmaker.grade.state import State, ground_of, start
from bookmaker.proof.model import Proof
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.tell.model import Mood, Passage, Story
from bookmaker.tell.moments import moments
from bookmaker.tell.needs import needs_of
from bookmaker.tell.trail import Told, trail

MOST, STEPS = 6, 12
"""No more pictures than this, or than one for so many steps; the easier places of a path go without."""

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"

MOST_STRIKES = 3
"""No more pictures than this for one passage: those of the last strikes before something is opened."""

ONE_DIGIT = ("locked candidates", "X-wing", "swordfish", "jellyfish", "single-digit chain", "seen by all places")
"""Techniques that look at the places of one digit; fish with fins are among them."""


@dataclass(frozen=True, slots=True)
class Scene:
    """A board: `digits` has a digit for each cell, 0 where it is empty; `pencil` the candidates to show in it.

    `look` are cells to look at, `shaded` cells of houses to look along; `struck` candidates that go; `goes` is the
    cell that is filled next, its digit among `digits` unless candidates are struck there. `moment` counts the moments
    of the path before it.
    """

    label: str
    filled: int
    moment: int
    digits: tuple[int, ...]
    pencil: Position
    look: tuple[int, ...] = ()
    shaded: tuple[int, ...] = ()
    struck: tuple[Candidate, ...] = ()
    goes: int | None = None


def scenes_of(proof: Proof, story: Story) -> dict[int, Scene]:
    """Scenes by the number of the step that they show, in the order of the story, lettered from A."""
    assert proof.grade is not None
    chosen = _chosen(proof.grade.path, story.passages)
    found = [scene for at, scenes in _Stage(proof).play(story.passages) if at in chosen for scene in scenes]
    return {index: replace(scene, label=LETTERS[at]) for at, (index, scene) in enumerate(found)}


def played(proof: Proof, story: Story) -> Iterator[tuple[int, Scene, Position]]:
    """Every step in the order in which it is told: its number, its scene, and all candidates before it."""
    stage = _Stage(proof, every=True)
    for _, scenes in stage.play(story.passages):
        yield from ((index, scene, stage.boards[index]) for index, scene in scenes)


def ends_of(proof: Proof) -> tuple[Scene, Scene]:
    """The board as it is given, and the solution."""
    puzzle = proof.entry.puzzle
    assert proof.solution is not None
    bare = Position(puzzle.grid, (0,) * (puzzle.grid.size + 1))
    return (
        Scene("The start", puzzle.given_count, 0, puzzle.givens, bare),
        Scene("The solution", len(puzzle.grid.cells), 0, proof.solution, bare),
    )


def _chosen(path: SolvePath, passages: Sequence[Passage]) -> frozenset[int]:
    """The hardest passages, as many as there may be pictures."""

    def effort(at: int) -> float:
        return sum(path.steps[index].effort for index in range(passages[at].first, passages[at].after))

    hard = [at for at, p in enumerate(passages) if p.mood in (Mood.NARROW, Mood.DEDUCTION, Mood.CRUX)]
    chosen: list[int] = []
    room = max(MOST, len(path.steps) // STEPS)
    for at in sorted(hard, key=lambda at: (passages[at].mood is not Mood.CRUX, -effort(at))):
        count = len(_leading(path, passages[at]))
        if count <= room:
            chosen.append(at)
            room -= count
    return frozenset(chosen)


def _leading(path: SolvePath, passage: Passage) -> tuple[int, ...]:
    """The steps of a passage that get a picture: the strikes it begins with, or else its first single."""
    strikes = tuple(takewhile(lambda index: not path.steps[index].placed, passage.told))
    return strikes[-MOST_STRIKES:] or passage.told[:1]


class _Stage:
    """The board as it stands in the telling: only what was told has been struck."""

    def __init__(self, proof: Proof, every: bool = False) -> None:
        """`every` asks for a scene of every step, not only of those that lead a passage."""
        assert proof.grade is not None
        self.every = every
        self.boards: dict[int, Position] = {}
        self.puzzle, self.path = proof.entry.puzzle, proof.grade.path
        self.grid: Grid = self.puzzle.grid
        self.state: State = start(ground_of(self.puzzle))
        self.digits = list(self.puzzle.givens)
        self.first = moments(self.path)[0]
        needs = needs_of(self.puzzle, self.path)
        self.nouns = tuple(rule.noun for rule in self.puzzle.rules)
        self.told = {told.index: told for told in trail(self.puzzle, self.path, needs)}

    def play(self, passages: Sequence[Passage]) -> Iterator[tuple[int, list[tuple[int, Scene]]]]:
        """Every passage with the scenes it could have, by their steps."""
        for at, passage in enumerate(passages):
            scenes: list[tuple[int, Scene]] = []
            shown = passage.told if self.every else _leading(self.path, passage)
            opened = next((i for i in passage.told if self.path.steps[i].placed), None)
            for index in passage.told:
                told = self.told[index]
                if index in shown:
                    after = opened if index == shown[-1] and not self.every else None
                    if self.every:
                        self.boards[index] = self.state.position()
                    scene = self._goes(told) if told.places else self._struck(told, after)
                    moment = sum(1 for first in self.first if first <= passage.first) - 1
                    scenes.append((index, replace(scene, moment=moment)))
                for cell, digit in told.step.placed:
                    self.state.place(cell, digit)
                    self.digits[cell] = digit
                self.state.remove(told.removed)
            yield at, scenes

    def _scene(self, pencil: Position) -> Scene:
        return Scene("", sum(1 for digit in self.digits if digit), 0, tuple(self.digits), pencil)

    def _struck(self, told: Told, opened: int | None) -> Scene:
        """A strike; with the cell that it opens, if it is the last before it."""
        step = told.step
        removed = self.state.present(told.removed)  # told late, some may have gone by themselves
        cells = {*step.cells, *(cell for cell, _ in removed), *self._named(step)}
        digits = {digit for _, digit in removed}
        if len(digits) == 1 and (step.technique in ONE_DIGIT or step.technique.startswith("finned")):
            homes = [area for area in self.state.ground.areas if len({*step.cells} & {*area.cells}) > 1]
            cells |= {cell for area in homes for cell in area.cells}
            pencil = self._pencil(cells, digits)
        else:
            pencil = self._pencil(cells)
        whole = len(step.cells) >= self.grid.size
        scene = self._scene(pencil)
        scene = replace(scene, look=() if whole else step.cells, shaded=step.cells if whole else (), struck=removed)
        return self._with(scene, self.told[opened]) if opened is not None else scene

    def _goes(self, told: Told) -> Scene:
        """A single: the houses that its cell lies in, or the digits that look into its house."""
        view = told.view
        houses = {name for name, _ in view.holders} | ({told.area.name} if told.area else set())
        shaded = {cell for area in self.state.ground.areas if area.name in houses for cell in area.cells}
        scene = self._scene(self._pencil(set()))
        look = view.lookers if told.kind is not Kind.NAKED else ()
        return self._with(replace(scene, shaded=tuple(sorted(shaded)), look=look), told)

    def _with(self, scene: Scene, told: Told) -> Scene:
        """The scene with the cell that is filled next: its digit, or what was struck there just now."""
        if any(cell == told.cell for cell, _ in scene.struck):
            return replace(scene, goes=told.cell)
        digits = list(scene.digits)
        digits[told.cell] = told.digit
        boards = tuple(board & ~(1 << told.cell) for board in scene.pencil.boards)
        pencil = Position(self.grid, boards, scene.pencil.placed | 1 << told.cell)
        return replace(scene, digits=tuple(digits), goes=told.cell, pencil=pencil)

    def _named(self, step: Step) -> list[int]:
        """The cells that a reason speaks of."""
        names = re.findall(r"r(\d+)c(\d+)", step.because)
        return [self.grid.cell(int(row) - 1, int(column) - 1) for row, column in names]

    def _pencil(self, cells: set[int], digits: set[int] | None = None) -> Position:
        """The candidates of some cells, or only some digits there."""
        position = self.state.position()
        inside = board_of(cells)
        boards = [
            board & inside if digits is None or digit in digits else 0 for digit, board in enumerate(position.boards)
        ]
        return Position(self.grid, tuple(boards), position.placed)
