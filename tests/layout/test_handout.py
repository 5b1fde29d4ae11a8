from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from typing import Any

import pdfplumber

from bookmaker.book import make_book
from bookmaker.book.contest import check_digits, enter_contest
from bookmaker.book.wording import hint_levels
from bookmaker.display.items import Document, Line, Link, Page, Rect, Text, untagged
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.language import catalogue
from bookmaker.layout import KeyPlace, Occasion, compose_handout, compose_marker, load_layout
from bookmaker.layout.sheets.handout import share_rules
from bookmaker.preflight import inspect
from tests.layout.flat import flat
from tests.layout.sample_book import picked, sample_manifest, sample_proofs

A4 = load_layout("a4-handout")


def sheets(*ids: str) -> Sequence[Page]:
    return compose_handout(picked(*ids), A4).pages


def words(page: Page) -> list[str]:
    return [item.item.text.replace("\u00a0", " ") for item in flat(page) if isinstance(item.item, Text)]


def grids(page: Page) -> set[str]:
    return {name for item in flat(page) for name in item.names if name.startswith("grid ")}


def test_rules_that_all_share_are_said_once() -> None:
    first, *_ = sheets("kettle", "hinge", "attic")
    said = [line for line in words(first) if line.startswith("Fill the grid")]
    assert len(said) == 1
    assert len(grids(first)) == 3


def test_rules_that_differ_stand_with_their_puzzles() -> None:
    assert share_rules(picked("kettle", "stairs").puzzles)[1] is None
    first, *_ = sheets("kettle", "stairs")
    assert sum(line.startswith("Fill the grid") for line in words(first)) == 2


def test_every_sheet_has_lines_for_name_and_date_and_the_key_is_last() -> None:
    *front, last = sheets("stairs", "window", "loom", "kettle")
    assert len(front) == 2
    for page in front:
        assert {"Name", "Date", "The Attic Window"} <= set(words(page))
    assert not grids(last)
    keys = {name for item in flat(last) for name in item.names if name.startswith("key ")}
    assert keys == {"key stairs", "key window", "key loom", "key kettle"}


def test_one_puzzle_fills_its_sheet_and_six_take_two() -> None:
    (alone, _) = sheets("kettle")
    assert grids(alone) == {"grid kettle"}
    six = sheets("kettle", "hinge", "attic", "quilt", "morning", "stairs")
    assert [len(grids(page)) for page in six][-1] == 0
    assert sum(len(grids(page)) for page in six) == 6


def placed(page: Page, prefix: str) -> Any:
    """Boxes around what is drawn in the groups whose name begins so, by name."""
    boxes = {}
    for item in flat(page):
        for name in item.names:
            if name.startswith(prefix):
                box = boxes.get(name, item.box)
                boxes[name] = (*map(min, box[:2], item.box[:2]), *map(max, box[2:], item.box[2:]))
    return boxes


def handout(key: KeyPlace, *ids: str) -> Document:
    return compose_handout(picked(*ids), A4, key)


def test_a_key_on_the_reverse_has_the_puzzles_of_its_sheet() -> None:
    pages = handout("reverse", "stairs", "window", "loom", "kettle").pages
    assert len(pages) == 4
    for front, back in zip(pages[::2], pages[1::2], strict=True):
        assert {name.replace("grid ", "key ") for name in grids(front)} == set(placed(back, "key "))
        assert not grids(back)


def test_a_key_at_the_foot_stands_upside_down_under_the_grids_of_its_sheet() -> None:
    document = handout("foot", "stairs", "window", "loom")
    for page in document.pages:
        grid, key = placed(page, "grid "), placed(page, "key ")
        assert {name.replace("grid ", "key ") for name in grid} == set(key)
        assert max(box[3] for box in grid.values()) < min(box[1] for box in key.values())
    report = inspect(pdf_bytes(document), "handout.pdf", proofs_of("stairs", "window", "loom"), folded=False)
    assert report.diagnostics == ()
    assert len(report.printed) == 6
    # upside down: the first row is the lowest
    with pdfplumber.open(BytesIO(pdf_bytes(document))) as pdf:
        low = placed(document.pages[0], "key ")["key stairs"]
        digits = [c for c in pdf.pages[0].chars if low[0] < c["x0"] and c["x1"] < low[2] and c["top"] > low[1]]
    assert digits and all(c["matrix"][0] < 0 and c["matrix"][3] < 0 for c in digits)
    ordered = sorted(digits, key=lambda c: (-round(c["top"]), -c["x0"]))
    solution = picked("stairs").puzzles[0].solution or ()
    assert "".join(c["text"] for c in ordered) == "".join(map(str, solution))


def test_no_key_if_none_is_wanted() -> None:
    document = handout("none", "kettle", "stairs")
    assert not any(placed(page, "key ") for page in document.pages)
    assert document.bookmarks == ()


CONTEST = ("stairs", "window", "loom")


def test_a_contest_sheet_has_letters_in_its_grids_boxes_at_its_foot_and_no_key() -> None:
    pages = compose_handout(enter_contest(picked(*CONTEST), (10, 20, 35)), A4, "none").pages
    for page, total in zip(pages, ("Total of 30", None), strict=True):
        here = grids(page)
        letters = [item for item in flat(page) if item.inside("check ") and isinstance(item.item, Text)]
        assert "".join(item.item.text for item in letters) == "abcde" * len(here)
        boxed = [word for word in words(page) if word in ("a", "b", "c", "d", "e")]
        assert len(boxed) == 2 * len(letters)
        assert "Time" in words(page)
        assert (total in words(page)) if total else not any(word.startswith("Total") for word in words(page))
        assert not placed(page, "key ")
    assert "Summit  ·  10 points" in words(pages[0])


def test_letters_stand_in_their_cells_clear_of_the_digit() -> None:
    book = enter_contest(picked(*CONTEST))
    for page in compose_handout(book, A4, "none").pages:
        for puzzle in book.puzzles:
            if f"grid {puzzle.id}" not in grids(page):
                continue
            # the frame is the largest rectangle of a grid
            frames = [i.box for i in flat(page) if i.inside(f"grid {puzzle.id}") and isinstance(i.item, Rect)]
            left, top, right, _ = max(frames, key=lambda box: box[2] - box[0])
            cell = (right - left) / 9
            letters = [i.box for i in flat(page) if i.inside(f"check {puzzle.id}") and isinstance(i.item, Text)]
            for at, box in zip(puzzle.check, letters, strict=True):
                x, y = left + at % 9 * cell, top + at // 9 * cell
                assert x + 0.7 * cell < box[0] and box[2] < x + cell
                assert y + 0.7 * cell < box[3] < y + cell


def test_the_marker_has_the_check_digits_names_and_key() -> None:
    book = enter_contest(picked(*CONTEST), (10, 20, 35))
    document = compose_marker(book, A4)
    first, last = document.pages
    bold = [item for item in flat(first) if isinstance(item.item, Text) and item.item.size == 13.0]
    said = "".join(item.item.text for item in sorted(bold, key=lambda item: (round(item.box[1]), item.box[0])))
    assert said == "".join(str(digit) for puzzle in book.puzzles for digit in check_digits(puzzle))
    assert {"Name", "Time", "Total", "Place", "of 10", "of 20", "of 35", "of 65"} <= set(words(first))
    assert set(placed(last, "key ")) == {f"key {name}" for name in CONTEST}
    lines = {round(i.box[1], 1) for i in flat(first) if isinstance(i.item, Line) and i.box[2] - i.box[0] > 400}
    assert len(lines) > 20


def test_preflight_reads_the_grids_of_a_contest_without_its_letters() -> None:
    book = enter_contest(picked(*CONTEST))
    report = inspect(pdf_bytes(compose_handout(book, A4, "none")), "h.pdf", proofs_of(*CONTEST), folded=False)
    assert report.diagnostics == ()
    assert [grid.id for grid in report.printed] == list(CONTEST)


def proofs_of(*ids: str) -> Any:
    return [proof for proof in sample_proofs() if proof.entry.id in ids]


def test_the_text_stands_at_the_left_of_the_grid_on_every_sheet() -> None:
    *front, _ = sheets("stairs", "window", "loom", "kettle")
    sides = set()
    for page in front:
        for group in (item for item in untagged(page.items) if getattr(item, "name", "").startswith("puzzle ")):
            grid = min(item.box[0] for item in flat(page) if item.inside(f"grid {group.name.split()[1]}"))
            words = [item for item in flat(page) if item.inside(group.name) and isinstance(item.item, Text)]
            title = min(item.box[0] for item in words if not item.inside("grid "))
            sides.add(title < grid)
    assert len(front) == 2 and sides == {True}


def filled(*ids: str) -> list[list[str]]:
    """The grids of each sheet, without its key."""
    made = compose_handout(picked(*ids), A4, "none").pages
    return [sorted(grids(page)) for page in made]


def test_the_last_sheet_has_no_empty_place() -> None:
    """Three stand as one above two, two beside their text, one on a sheet of its own, each as large as it can be."""
    nines = ("kettle", "attic", "quilt", "morning", "hinge", "pantry", "window")
    for count in range(1, len(nines) + 1):
        pages = compose_handout(picked(*nines[:count]), A4, "none").pages
        boxes = placed(pages[-1], "grid ")
        depth = A4.height - A4.margins.top - A4.margins.bottom
        reach = max(box[3] for box in boxes.values()) - A4.margins.top
        assert reach > 0.6 * depth, (count, boxes)
        last = len(boxes)
        if last == 3:
            heights = sorted(box[3] - box[1] for box in boxes.values())
            assert heights[2] > heights[1]
    assert sum(map(len, filled(*nines))) == len(nines)


def test_copies_repeat_the_sheets_and_nothing_else() -> None:
    book = picked("kettle", "stairs")
    once, thrice = (compose_handout(book, A4, "last", Occasion(copies=count)).pages for count in (1, 3))
    assert len(thrice) == 3 * (len(once) - 1) + 1
    assert [page.label for page in thrice] == ["1", "1", "1", "1"]
    assert [bool(page.anchors) for page in thrice] == [True, False, False, True]
    assert grids(thrice[0]) == grids(thrice[2]) == grids(once[0])


def test_hints_of_a_sheet_lead_nowhere() -> None:
    """All of them on one sheet, in the order of the puzzles, the next level below."""
    proofs = [proof for proof in sample_proofs() if proof.entry.id in ("kettle", "stairs")]
    book = make_book(sample_manifest(), proofs, as_listed=True, hinted=True)
    *_, hints, _ = compose_handout(book, A4).pages
    said = words(hints)
    places = [said.index(level) for level in hint_levels(catalogue("en"))]
    assert places == sorted(places)
    assert not any(isinstance(item.item, Link) for item in flat(hints))
    assert pdf_bytes(compose_handout(book, A4, "none"))
