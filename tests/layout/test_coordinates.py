"""Where r5c2 is, can be found: numbers along grids, letters in irregular regions, pencil marks that can be read."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bookmaker.book import make_book
from bookmaker.display.items import Group, Page, Text
from bookmaker.layout import compose, load_layout
from bookmaker.layout.art.coordinates import coordinates, miniature, numbered
from bookmaker.layout.art.gridart import outside
from bookmaker.layout.art.scenepicture import READABLE, cell_for, draw_scene
from bookmaker.layout.sheets.single_picture import grid_picture
from bookmaker.puzzle.grid import CLASSIC, REGION_LETTERS, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell import tell
from bookmaker.tell.scenes import scenes_of
from tests.layout.flat import Flat, flat
from tests.layout.sample_book import sample_manifest, sample_proofs
from tests.rules.harness import sound_entry
from tests.tell.stories import demo_proof

CELL = 30.0


def texts(drawn: Group) -> list[Flat]:
    return [one for one in flat(Page(1000.0, 1000.0, (drawn,), "")) if isinstance(one.item, Text)]


def said(one: Flat) -> str:
    assert isinstance(one.item, Text)
    return one.item.text


@pytest.mark.parametrize("kind", ["thermometer", "sandwich", "x-sum", "diagonal-sum"])
def test_rows_and_columns_are_numbered_beyond_the_clues(kind: str) -> None:
    puzzle: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, (sound_entry(kinds()[kind].example),))
    found, claim = texts(coordinates(puzzle, CELL)), outside(puzzle)
    along = [one for one in found if one.box[2] <= -claim.left * CELL]
    over = [one for one in found if one.box[3] <= -claim.top * CELL + 0.3]
    assert [said(one) for one in along] == [said(one) for one in over] == [str(n) for n in range(1, 10)]
    for at, (row, column) in enumerate(zip(along, over, strict=True)):
        assert (row.box[1] + row.box[3]) / 2 == pytest.approx((at + 0.5) * CELL, abs=0.06 * CELL)
        assert (column.box[0] + column.box[2]) / 2 == pytest.approx((at + 0.5) * CELL, abs=0.06 * CELL)
    room = numbered(puzzle)
    assert all(one.box[0] >= -room.left * CELL and one.box[1] >= -room.top * CELL for one in found)


def test_rows_above_nine_are_numbered_by_their_number() -> None:
    puzzle: RuledPuzzle = Puzzle(boxed_grid(12, 3, 4), (0,) * 144)
    assert [said(one) for one in texts(coordinates(puzzle, CELL))][::2] == [str(n) for n in range(1, 13)]


def test_a_picture_has_them_if_it_is_asked_to() -> None:
    puzzle: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81)
    plain, with_them = grid_picture(puzzle, "grid a"), grid_picture(puzzle, "grid a", with_coordinates=True)
    assert not [one for one in flat(plain) if one.inside("coordinates")]
    assert len([one for one in flat(with_them) if one.inside("coordinates")]) == 18
    assert with_them.width > plain.width and with_them.height > plain.height


def test_a_layout_may_number_the_grids_of_a_book() -> None:
    book, layout = make_book(sample_manifest(), sample_proofs()), load_layout("a5-book")
    asked = replace(layout, puzzles=replace(layout.puzzles, coordinates=True))
    sizes = {f"grid {puzzle.id}": puzzle.puzzle.grid.size for puzzle in book.puzzles}
    for made, wanted in ((layout, 0), (asked, 2)):
        numbered = 0
        for page in compose(book, made).pages:
            grids = {name for one in flat(page) for name in one.names} & set(sizes)
            numbers = [one for one in flat(page) if grids and one.inside("coordinates")]
            assert len(numbers) == wanted * sum(map(sizes.__getitem__, grids))
            assert all(one.box[0] >= 0.0 and one.box[2] <= page.width for one in numbers)
            numbered += len(grids)
        assert numbered == len(sizes)


def test_a_small_grid_has_each_irregular_region_by_its_letter() -> None:
    grid, size = demo_proof("patchwork").entry.puzzle.grid, 10.0
    small, high = miniature(grid, size)
    cell = (high - small.dy) / grid.size
    drawn = [one for one in texts(replace(small, dx=0.0, dy=0.0)) if said(one).isalpha()]
    assert [said(one) for one in drawn] == [*REGION_LETTERS[: len(grid.regions)]]
    for one, region in zip(drawn, grid.regions, strict=True):
        x, y = (one.box[0] + one.box[2]) / 2, (one.box[1] + one.box[3]) / 2
        assert int(y // cell) * grid.size + int(x // cell) in region


@pytest.mark.parametrize("name", ["soundings", "delta", "patchwork"])
def test_no_pencil_mark_of_a_crib_is_too_small(name: str) -> None:
    proof = demo_proof(name)
    puzzle = proof.entry.puzzle
    scenes = [*scenes_of(proof, tell(proof, full=True)).values()]
    cell = cell_for(puzzle.grid, scenes)
    small = []
    for scene in scenes:
        for one in texts(draw_scene(puzzle, scene, cell, "scene")):
            rounds = isinstance(one.item, Text) and one.item.colour == 0.0
            if not one.inside("coordinates") and not one.inside("scene") and rounds and one.item.size < READABLE - 0.01:
                small.append((said(one), one.item.size))
    assert not small
