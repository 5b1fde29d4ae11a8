from bookmaker.display.items import Text
from bookmaker.layout import compose_handout, load_layout
from bookmaker.layout.handout import share_rules
from tests.layout.flat import flat
from tests.layout.sample_book import picked

A4 = load_layout("a4-handout")


def sheets(*ids):
    return compose_handout(picked(*ids), A4).pages


def words(page):
    return [item.item.text.replace("\u00a0", " ") for item in flat(page) if isinstance(item.item, Text)]


def grids(page):
    return {name for item in flat(page) for name in item.names if name.startswith("grid ")}


def test_rules_that_all_share_are_said_once():
    first, *_ = sheets("kettle", "hinge", "attic")
    said = [line for line in words(first) if line.startswith("Fill the grid")]
    assert len(said) == 1
    assert len(grids(first)) == 3


def test_rules_that_differ_stand_with_their_puzzles():
    assert share_rules(picked("kettle", "stairs").puzzles)[1] is None
    first, *_ = sheets("kettle", "stairs")
    assert sum(line.startswith("Fill the grid") for line in words(first)) == 2


def test_every_sheet_has_lines_for_name_and_date_and_the_key_is_last():
    *front, last = sheets("stairs", "window", "loom", "kettle")
    assert len(front) == 2
    for page in front:
        assert {"Name", "Date", "The Attic Window"} <= set(words(page))
    assert not grids(last)
    keys = {name for item in flat(last) for name in item.names if name.startswith("key ")}
    assert keys == {"key stairs", "key window", "key loom", "key kettle"}


def test_one_puzzle_fills_its_sheet_and_six_take_two():
    (alone, _) = sheets("kettle")
    assert grids(alone) == {"grid kettle"}
    six = sheets("kettle", "hinge", "attic", "quilt", "morning", "stairs")
    assert [len(grids(page)) for page in six][-1] == 0
    assert sum(len(grids(page)) for page in six) == 6
