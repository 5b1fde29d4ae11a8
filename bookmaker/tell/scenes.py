"""Pictures for a story: the board at its key moments, and what to point out on it.

In: a proof and its story. Out: `Scene`s for sentences of hard places: for eliminations where they are found, for a
bottleneck where it goes; a what-if with the digits that follow, numbered in their order. No geometry.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from bookmaker.grade.solve_path import SolvePath
from bookmaker.language import catalogue
from bookmaker.logic.state import Ground, ground_of
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons.claims import spoken
from bookmaker.reasons.whatif import NoDigit, NoPlace, NothingFits, Refuted, ThenPlaced
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.passages import Mood, Passage, Sentence, Story
from bookmaker.tell.step_groups import step_groups
from bookmaker.trace import Traced, names_region

MOST, STEPS = 6, 12
"""No more pictures than this, or than one for so many steps; the easier places of a path go without."""

MOST_ELIMINATIONS = 3
"""No more pictures than this for one passage that is not the hard moment: those of the last eliminations before
something is opened."""

LONG = 2
"""A what-if of so many rounds always gets a picture: nobody follows it without one."""


@dataclass(frozen=True)
class Scene:
    """A board: `digits` has a digit for each cell, 0 where it is empty; `pencil` the candidates to show in it.

    `look` are cells to look at, `shaded` cells of houses to look along; `struck` candidates that go; `goes` is the
    cell that is filled next, its digit among `digits` unless candidates are struck there. In a what-if `follows` has
    the digits that are tried, and those that follow, by cell; `rounds` says at which of its rounds something comes
    about in a cell, 0 for what is tried. `group` counts the groups of steps of the path before this
    point; `steps` are the
    numbers of the steps that it shows.
    """

    label: str
    filled: int
    digits: tuple[int, ...]
    pencil: Position
    group: int = 0
    steps: tuple[int, ...] = ()
    look: tuple[int, ...] = ()
    shaded: tuple[int, ...] = ()
    struck: tuple[Candidate, ...] = ()
    goes: int | None = None
    follows: Mapping[int, tuple[int, ...]] = field(default_factory=dict)
    rounds: Mapping[int, tuple[int, ...]] = field(default_factory=dict)
    regions: bool = False
    """Are the letters of irregular regions to be shown?"""


def scenes_of(proof: Proof, story: Story) -> dict[int, Scene]:
    """Scenes by the number of the first step of the sentence that they stand beside, in the order of the story,
    lettered from A."""
    assert proof.grade is not None
    steps = {told.number: told for told in story.steps}
    chosen = _chosen(story, steps, len(proof.grade.path.steps), [step.effort for step in proof.grade.path.steps])
    first, _ = step_groups(proof.grade.path)
    stage = _Stage(proof.entry.puzzle, steps)
    scenes: dict[int, Scene] = {}
    for sentence, opens in chosen:
        told = [steps[number] for number in sentence.told]
        scene = stage.scene(told, steps[told[0].opens] if opens else None)
        group = _group(proof.grade.path, first, told[0], proof.entry.puzzle.given_count)
        scenes[told[0].number] = replace(scene, group=group, steps=sentence.told)
    return {number: replace(scene, label=_letters(at)) for at, (number, scene) in enumerate(scenes.items())}


def _group(path: SolvePath, first: Sequence[int], told: Traced, givens: int) -> int:
    """The group of the path that a step belongs to where as many cells are filled: its placement, or what is eliminated
    before it. The story may tell it earlier or later than the path has it."""
    filled = [givens + sum(bool(step.placed) for step in path.steps[:index]) for index in first]
    here = [group for group, count in enumerate(filled) if count == told.filled]
    return here[-1] if told.placed else here[0]


def board_after(puzzle: RuledPuzzle, story: Story, number: int) -> tuple[tuple[int, ...], Position]:
    """The board after so many steps of the telling: each cell's digit, 0 where it is empty, and the candidates. Raises
    ValueError if there are not so many."""
    if not 0 <= number <= len(story.steps):
        raise ValueError(f"the story has {len(story.steps)} steps, not {number}")
    digits = _digits(puzzle, story.steps[:number])
    if number < len(story.steps):
        return digits, story.steps[number].before
    boards = [0] * (puzzle.grid.size + 1)
    for cell, digit in enumerate(digits):
        boards[digit] |= 1 << cell
    return digits, Position(puzzle.grid, tuple(boards), board_of(puzzle.grid.cells))


def played(proof: Proof, story: Story) -> Iterator[tuple[Traced, Scene]]:
    """Every step in the order in which it is told, and its scene."""
    stage = _Stage(proof.entry.puzzle, {told.number: told for told in story.steps})
    yield from ((told, stage.scene((told,), None)) for told in story.steps)


def ends_of(proof: Proof, story: Story) -> tuple[Scene, Scene]:
    """The board as it is given, and the solution."""
    puzzle = proof.entry.puzzle
    assert proof.solution is not None
    words = catalogue(story.language)
    bare = Position(puzzle.grid, (0,) * (puzzle.grid.size + 1))
    return (
        Scene(words.say("start"), puzzle.given_count, puzzle.givens, bare, regions=any(map(names_region, story.steps))),
        Scene(words.say("solution"), len(puzzle.grid.cells), proof.solution, bare),
    )


def _digits(puzzle: RuledPuzzle, steps: Sequence[Traced]) -> tuple[int, ...]:
    """The givens and what some steps place."""
    digits = list(puzzle.givens)
    for told in steps:
        for cell, digit in told.placed:
            digits[cell] = digit
    return tuple(digits)


def _letters(at: int) -> str:
    """A to Z, then AA, AB …"""
    return (_letters(at // 26 - 1) if at >= 26 else "") + chr(ord("A") + at % 26)


def _chosen(
    story: Story, steps: Mapping[int, Traced], path_steps: int, efforts: Sequence[float]
) -> list[tuple[Sentence, bool]]:
    """The sentences that get a picture, those of the hardest passages first as long as there is room, in the order of
    the story; and whether the placement that they open is to be seen with them. Long what-ifs come beside these."""

    def effort(passage: Passage) -> float:
        return sum(efforts[steps[number].index] for number in passage.told)

    hard = [passage for passage in story.passages if passage.mood in (Mood.NARROW, Mood.DEDUCTION, Mood.CRUX)]
    room = max(MOST, path_steps // STEPS)
    chosen: list[int] = []
    leading = {id(passage): _leading(passage, steps) for passage in hard}
    for passage in sorted(hard, key=lambda passage: (passage.mood is not Mood.CRUX, -effort(passage))):
        count = len(leading[id(passage)])
        if count <= room or passage.mood is Mood.CRUX:
            chosen.append(id(passage))
            room -= count
    pairs: list[tuple[Sentence, bool]] = []
    for passage in story.passages:
        mine = {sentence.told: opens for sentence, opens in leading.get(id(passage), ()) if id(passage) in chosen}
        pairs += [
            (sentence, mine.get(sentence.told, False))
            for sentence in passage.sentences
            if sentence.told and (sentence.told in mine or _is_long(steps[sentence.told[0]]))
        ]
    return pairs


def _is_long(told: Traced) -> bool:
    claim = told.reason.claim
    return isinstance(claim, Refuted) and len(claim.links) >= LONG


def _leading(passage: Passage, steps: Mapping[int, Traced]) -> list[tuple[Sentence, bool]]:
    """The sentences of a passage that get a picture: its first eliminations, or else its first single."""
    telling = [sentence for sentence in passage.sentences if sentence.told]
    first = next(at for at, sentence in enumerate(telling) if steps[sentence.told[-1]].placed)
    before = telling[:first]
    if not before:
        return [(telling[0], False)]
    shown = before if passage.mood is Mood.CRUX else before[-MOST_ELIMINATIONS:]
    return [(sentence, sentence is before[-1]) for sentence in shown]


class _Stage:
    """Draws the boards of told steps."""

    def __init__(self, puzzle: RuledPuzzle, steps: Mapping[int, Traced]) -> None:
        self.puzzle, self.grid = puzzle, puzzle.grid
        self.ground: Ground = ground_of(puzzle)
        self.houses = {area.ref: area.cells for area in self.ground.areas}
        self.steps = steps

    def scene(self, told: Sequence[Traced], opened: Traced | None) -> Scene:
        """The board before some steps that one sentence tells, and what they are about; `opened` is the placement that
        comes next."""
        first = told[0]
        digits = _digits(self.puzzle, [step for number, step in self.steps.items() if number < first.number])
        bare = Scene("", first.filled, digits, Position(self.grid, (0,) * (self.grid.size + 1)))
        if first.placed:
            return self._single(bare, first)
        scene = self._what_if(bare, told) if isinstance(first.reason.claim, Refuted) else self._elimination(bare, told)
        scene = replace(scene, regions=any(map(names_region, told)))
        return self._with(scene, opened) if opened else scene

    def _elimination(self, bare: Scene, told: Sequence[Traced]) -> Scene:
        """What goes, and the cells that the reason speaks of."""
        first = told[0]
        struck = tuple(pair for step in told for pair in step.removed)
        look = tuple(dict.fromkeys(cell for step in told for cell in step.cells))
        claim = first.reason.claim
        cells = {*look, *(cell for cell, _ in struck), *spoken(claim).cells}
        shaded = [cell for house in spoken(claim).houses for cell in self.houses.get(house, ())]
        digits = {digit for _, digit in struck}
        only = digits if getattr(claim, "one_digit", False) and len(digits) == 1 else None
        if only:
            cells |= set(shaded)
        whole = len(look) >= self.grid.size
        return replace(
            bare,
            pencil=self._pencil(first.before, cells, only),
            look=() if whole else look,
            shaded=tuple(dict.fromkeys([*(look if whole else ()), *shaded])),
            struck=struck,
        )

    def _what_if(self, bare: Scene, told: Sequence[Traced]) -> Scene:
        """The candidates that are tried, what follows from each of them in its order, and where it ends."""
        claim = told[0].reason.claim
        assert isinstance(claim, Refuted)
        follows: dict[int, tuple[int, ...]] = {}
        rounds: dict[int, tuple[int, ...]] = {}
        struck: list[Candidate] = []
        for cell, digit in (pair for step in told for pair in step.removed):
            follows[cell] = (*follows.get(cell, ()), digit)
            rounds[cell] = (0,)
        for number, link in enumerate(claim.links, start=1):
            if isinstance(link, ThenPlaced):
                follows[link.cell] = (link.digit,)
                rounds[link.cell] = (*rounds.get(link.cell, ()), number)
            else:
                struck += link.gone
                rounds |= {at: (*rounds.get(at, ()), number) for at in dict.fromkeys(at for at, _ in link.gone)}
        shaded: Sequence[int] = ()
        look: tuple[int, ...] = ()
        match claim.end:
            case NoPlace(house, _):
                shaded = self.houses[house]
            case NoDigit(at, _, _):
                look = (at,)
            case NothingFits(mark):
                shaded = mark.cells
        before = told[0].before
        gone = [pair for pair in struck if pair[0] not in follows]
        all_of = board_of({*look} - {cell for cell, _ in gone} - set(follows))
        boards = [
            board & (all_of | board_of(cell for cell, one in gone if one == digit))
            for digit, board in enumerate(before.boards)
        ]
        return replace(
            bare,
            pencil=Position(self.grid, tuple(boards), before.placed),
            look=look,
            shaded=tuple(shaded),
            struck=tuple(struck),
            follows=follows,
            rounds=rounds,
        )

    def _single(self, bare: Scene, told: Traced) -> Scene:
        """A single: the houses that its cell lies in, or the digits that look into its house."""
        view = told.view
        houses = {house for house, _ in view.holders if house} | ({told.house} if told.house else set())
        shaded = {cell for house in houses for cell in self.houses[house]}
        look = view.lookers
        scene = replace(bare, shaded=tuple(sorted(shaded)), look=look, regions=names_region(told))
        return self._with(scene, told)

    def _with(self, scene: Scene, told: Traced) -> Scene:
        """The scene with the cell that is filled next: its digit, or what was struck there just now."""
        if any(cell == told.cell for cell, _ in scene.struck) or told.cell in scene.follows:
            return replace(scene, goes=told.cell)
        digits = list(scene.digits)
        digits[told.cell] = told.digit
        boards = tuple(board & ~(1 << told.cell) for board in scene.pencil.boards)
        pencil = Position(self.grid, boards, scene.pencil.placed | 1 << told.cell)
        return replace(scene, digits=tuple(digits), goes=told.cell, pencil=pencil)

    def _pencil(self, position: Position, cells: set[int], digits: set[int] | None) -> Position:
        """The candidates of some cells, or only some digits there."""
        inside = board_of(cells)
        boards = [
            board & inside if digits is None or digit in digits else 0 for digit, board in enumerate(position.boards)
        ]
        return Position(self.grid, tuple(boards), position.placed)
