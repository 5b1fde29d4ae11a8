"""Puzzles beside each other: their grids on one line, and of one size where they have as many cells."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from bookmaker.layout import Layout, layout_names, load_layout
from bookmaker.layout.pages import filling
from bookmaker.layout.pages.block import GUTTER, Block
from bookmaker.layout.pages.filling import Slot
from bookmaker.layout.pages.fitting import ALONE
from bookmaker.layout.pages.keys import key_rows
from bookmaker.layout.pages.puzzles import fill_pages, place_puzzles
from bookmaker.layout.pages.sizing import fit_above, fit_beside, in_line, levelled
from bookmaker.layout.setting.flow import height
from bookmaker.rules.common.drawing.frame import Margins
from tests.layout.sample_book import picked, sample_book

SEVERAL = [name for name in layout_names() if load_layout(name).puzzles.columns > 1]
FOUR = load_layout("a4-book-four")


def rows(layout: Layout) -> list[list[Slot]]:
    """The rows of all pages, those with one puzzle left out."""
    found = []
    for page in place_puzzles(sample_book().puzzles, layout, layout.depth):
        by_height = {slot.y: [other for other in page if other.y == slot.y] for slot in page}
        found += [row for row in by_height.values() if len(row) > 1]
    return found


def frame_of(block: Block) -> float:
    assert block.frame is not None
    return block.frame


@pytest.mark.parametrize("name", SEVERAL)
def test_grids_of_a_row_stand_on_one_line_and_those_of_one_size_are_equal(name: str) -> None:
    found = [row for row in rows(load_layout(name)) if row[0].block.frame is not None]
    assert found
    for row in found:
        blocks = [slot.block for slot in row]
        for one, other in pairwise(blocks):
            assert frame_of(one) == frame_of(other)
            if one.puzzle.puzzle.grid.size == other.puzzle.puzzle.grid.size:
                assert one.cell == other.cell
        for block in blocks:
            assert block.highest - 0.01 <= frame_of(block) <= block.lowest + 0.01


def blocks(*ids: str) -> list[Block]:
    wide, high = (FOUR.measure - FOUR.puzzles.gap) / 2, (FOUR.depth - FOUR.puzzles.gap) / 2
    return [fit_above(puzzle, FOUR, wide, high) for puzzle in picked(*ids).puzzles]


def test_without_the_row_they_would_differ() -> None:
    kettle, window = blocks("kettle", "window")
    assert kettle.cell != window.cell and kettle.highest != window.highest
    one, other = levelled([kettle, window])
    assert one.cell == other.cell == min(one.cell, kettle.cell, window.cell)
    assert frame_of(one) == frame_of(other)


def test_a_grid_of_another_size_keeps_its_cells_as_far_as_they_fit() -> None:
    small, large = levelled(blocks("morning", "stairs"))
    assert small.cell >= large.cell and frame_of(small) == frame_of(large)


def test_where_cells_would_be_too_small_each_block_stays_as_it_was() -> None:
    kettle, window = blocks("kettle", "window")
    crowded = [
        replace(block, layout=replace(FOUR, puzzles=replace(FOUR.puzzles, least=block.cell)))
        for block in (kettle, window)
    ]
    assert levelled(crowded) == tuple(crowded)


def beside(*ids: str) -> list[Block]:
    layout = load_layout("a4-book-two")
    high = (layout.depth - layout.puzzles.gap) / 2
    found = [fit_beside(puzzle, layout, layout.measure, high) for puzzle in picked(*ids).puzzles]
    return [block for block in found if block is not None]


def test_grids_below_each_other_have_the_same_room_for_clues() -> None:
    window, other = beside("window", "window")
    other = replace(other, claim=Margins(left=2.0, top=0.5))
    one, two = in_line([window, other])
    assert one.cell == two.cell < window.cell and one.claim == two.claim
    assert one.claim.left == 2.0 and one.claim.top == window.claim.top
    across = one.claim.left + 9 + one.claim.right
    assert one.hang + GUTTER + across * one.cell <= one.width + 0.01


def test_a_grid_without_clues_is_not_made_smaller_for_one_that_has_some() -> None:
    blocks = beside("kettle", "window")
    assert len(blocks) == 2 and in_line(blocks) == tuple(blocks)


def test_puzzles_too_large_for_a_sixth_of_a_page_have_half_of_it() -> None:
    layout = load_layout("a4-book-six")
    window, kettle = picked("window", "kettle").puzzles
    listed = [kettle, window, window, window, kettle, kettle, kettle, kettle, window]
    pages = place_puzzles([replace(puzzle, number=at) for at, puzzle in enumerate(listed)], layout, layout.depth)
    assert [[slot.block.puzzle.number for slot in page] for page in pages] == [[0, 1], [2, 3], [4, 5, 6, 7], [8]]
    for slot in (slot for page in pages for slot in page):
        block, large = slot.block, slot.block.puzzle.id == "window"
        assert block.text == ("beside" if large else "above")
        assert layout.puzzles.least <= block.cell <= (ALONE if large else layout.puzzles.most)
        assert slot.y + max(block.grid_height, height(block.head)) <= layout.depth + 0.01
    for upper, lower in (pages[0], pages[1]):
        assert upper.y + upper.block.depth + layout.puzzles.gap == pytest.approx(lower.y)
    assert [(slot.x, slot.y) for slot in pages[2][::3]] == [(0.0, 0.0), (0.0, pytest.approx(pages[1][1].y))]


def test_one_too_large_for_half_a_page_has_a_page_of_its_own() -> None:
    layout = load_layout("a4-book-six")
    (ledger,) = picked("ledger").puzzles
    narrow = replace(layout, puzzles=replace(layout.puzzles, least=9.0 * 72 / 25.4))
    ((slot,),) = place_puzzles([ledger], narrow, layout.depth)
    assert slot.block.text == "above" and slot.block.fits


def test_a_puzzle_with_more_to_say_has_more_of_the_page() -> None:
    layout = load_layout("a5-book-two")
    window, kettle = picked("window", "kettle").puzzles
    wordy = replace(window, note=" ".join(["A long note."] * 14))
    ((first, second),) = place_puzzles([kettle, wordy], layout, layout.depth)
    assert second.block.depth > layout.depth / 2 > first.block.depth
    assert first.block.depth + layout.puzzles.gap == pytest.approx(second.y)
    assert second.y + second.block.depth == pytest.approx(layout.depth)
    for slot in (first, second):
        assert slot.block.fits and slot.block.grid_height <= slot.block.depth + 0.01


@pytest.mark.parametrize("shares", [[], [1.0], [1.0, 500.0], [300.0, 40.0]])
def test_shares_of_a_page_are_even_but_for_those_that_need_more(shares: list[float]) -> None:
    layout = load_layout("a5-book-two")
    found = filling.shares(shares, layout, 510.0 + layout.puzzles.gap)
    assert all(deep >= needed for deep, needed in zip(found, shares, strict=True))
    if shares and max(shares) <= 255.0:
        assert found == pytest.approx([255.0] * len(shares))
    elif shares == [300.0, 40.0]:
        assert found == pytest.approx([300.0, 210.0])


def test_what_is_left_over_fills_its_page() -> None:
    """One alone has all of the page, two have halves; three in four places have two places and a half."""
    layout = load_layout("a4-book-four")
    kettle, window, morning = picked("kettle", "window", "morning").puzzles
    (((only,)),) = fill_pages([kettle], layout)
    assert only.block.depth == layout.depth and only.block.text == "above" and only.block.cell > layout.puzzles.most
    (two,) = fill_pages([kettle, window], layout)
    assert [slot.block.text for slot in two] == ["beside", "beside"] and two[1].y > layout.depth / 2
    (three,) = fill_pages([kettle, window, morning], layout)
    assert [slot.block.puzzle.id for slot in three] == ["kettle", "window", "morning"]
    assert [slot.block.text for slot in three] == ["above", "above", "beside"]


@pytest.mark.parametrize("name", layout_names())
def test_a_page_has_room_for_two_rows_of_keys(name: str) -> None:
    layout = load_layout(name)
    (puzzle,) = picked("kettle").puzzles
    first, white, second, _ = key_rows([puzzle] * 2 * layout.keys.columns, layout)
    assert height((first, white, second)) <= layout.depth + 0.01
