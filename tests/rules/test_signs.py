"""Rule kinds on grids whose digits begin with 0, and those that letters go with.

Whatever a kind says of itself (`from_zero`, `lettered`) is tried: on a filled grid from 0 its marks are read off again,
so that sums are sums of what digits are worth; its constraints, its definition for CP-SAT and its plain predicate
agree, and no step takes away a digit of the solution.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import islice
from random import Random

import pytest

from bookmaker.crosscheck import second_opinion
from bookmaker.display.items import Text
from bookmaker.language import catalogue
from bookmaker.language.catalogues import LOCALES
from bookmaker.manifest.rulefields import check_signs
from bookmaker.puzzle.bits import board_of, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons.bymark import CommonSum
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.rules.common.parts import Written, node_of
from bookmaker.rules.no_doubles import NoDoubles
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution, Unique
from bookmaker.source.diagnostics import Collector, Place
from tests.rules.grids import GRIDS, MIDDLE, near_misses, random_solution
from tests.rules.harness import cases_of, from_zero, instances, only_rule, read_entry
from tests.rules.test_kinds import _demand_sound, _position, cells_of

FROM_ZERO = [kind for kind, rule in kinds().items() if rule.from_zero]
COUNTS = re.compile(r"[0-9]+(≠| different letters?)")
"""How a number of different letters is printed and said."""

SAID = {"arrow", "numbered-room", "pointing", "x-sum"}
"""Kinds whose sentence leaves something open about a 0."""

LINES = re.compile(r"(row|column)s? [0-9](?:(?:, | and | to )[0-9])*")
"""How rows and columns are numbered in what is said."""


def test_what_letters_go_with_goes_with_0() -> None:
    assert set(FROM_ZERO) >= {kind for kind, rule in kinds().items() if rule.lettered}


@pytest.mark.parametrize("kind", FROM_ZERO)
def test_constraints_definition_and_predicate_agree_from_zero(kind: str) -> None:
    rng = Random(f"zero {kind}")
    answers = {True: 0, False: 0}
    for plain in GRIDS:
        for grid, solution, rule in from_zero(kind, plain, rng, 3):
            assert rule.holds(grid, solution), rule
            for digits in (solution, random_solution(plain, rng), *islice(near_misses(plain, solution, rng), 8)):
                said = rule.holds(grid, digits)
                answers[said] += 1
                assert isinstance(prove(only_rule(rule, grid, digits)), Unique if said else NoSolution), (rule, digits)
                theirs = second_opinion(Puzzle(grid, digits, (rule,)))
                assert isinstance(theirs, Unique if said else NoSolution), (rule, digits)
    assert min(answers.values()) >= 3


@pytest.mark.parametrize("kind", FROM_ZERO)
def test_steps_are_sound_from_zero(kind: str) -> None:
    rng = Random(f"zero steps {kind}")
    for plain in GRIDS:
        for grid, solution, rule in from_zero(kind, plain, rng, 3):
            for share in (0.0, 0.1, 0.3, 0.6, 1.0):
                _demand_sound(rule, _position(grid, solution, rng, share), solution)


@pytest.mark.parametrize("kind", FROM_ZERO)
def test_marks_from_zero_are_read_as_they_are_written(kind: str) -> None:
    rng = Random(f"zero written {kind}")
    for grid, _, rule in from_zero(kind, CLASSIC, rng, 2):
        collector = Collector()
        again = kinds()[kind].read(node_of(rule.written(grid), Place("rule")), grid, collector)
        assert not [*collector.errors()]
        assert again is not None
        assert set(again.parts(grid)) == set(rule.parts(grid))
        assert again.suits(grid)


@pytest.mark.parametrize("kind", [kind for kind, rule in kinds().items() if rule.lettered])
def test_letters_stand_wherever_marks_name_them(kind: str) -> None:
    """What a kind that goes with letters writes reads back, and no digit is printed or said but in names of lines and
    where letters are counted."""
    grid, english = replace(CLASSIC, symbols="ABDEGHKNT", first=None), catalogue("en")
    for _, rule in instances(kind, CLASSIC, Random(f"letters {kind}"), 2):
        again = kinds()[kind].read(node_of(rule.written(grid), Place("rule")), grid, Collector())
        assert again is not None
        assert set(again.parts(grid)) == set(rule.parts(grid))
        printed = [mark.item.text for mark in again.marks(Frame(grid, 30.0)) if isinstance(mark.item, Text)]
        said = [LINES.sub("", text) for text in again.spoken(english, grid)]
        assert not [text for text in (*printed, *said) if re.search("[0-9]", COUNTS.sub("", text))]
        assert not [text for text in said if "digit" in text]


@pytest.mark.parametrize("kind", sorted(set(kinds()) - {kind for kind, rule in kinds().items() if rule.lettered}))
def test_kinds_that_compare_or_add_refuse_letters(kind: str) -> None:
    grid = replace(MIDDLE, symbols="ABDEGH", first=None)
    for _, rule in instances(kind, MIDDLE, Random(f"no letters {kind}"), 2):
        assert not rule.suits(grid)


def test_a_kind_that_does_not_say_so_is_refused_from_zero(monkeypatch: pytest.MonkeyPatch) -> None:
    grid, collector = replace(CLASSIC, symbols="", first=0), Collector()
    rule, _ = read_entry("sandwich:\n  left: . 7 . . . . . . .", grid)
    assert rule is not None and rule.suits(grid)
    monkeypatch.setattr(type(rule), "from_zero", False)
    check_signs(rule, grid, Place("rule"), collector)
    assert [found.code for found in collector.found] == ["other-signs"]


def test_cages_go_with_letters_as_long_as_they_have_no_total() -> None:
    grid, solution = replace(MIDDLE, symbols="ABDEGH", first=None), random_solution(MIDDLE, Random(6))
    cage = kinds()["cage"].blank(grid)
    parts = [*cage.read_off((0, 1, 2), grid, solution, Random(1))]
    assert [part.value for part in parts] == [()]
    assert cage.with_parts(parts, grid).suits(grid)
    numbered = cage.with_parts([replace(parts[0], value=(9,))], MIDDLE)
    assert not numbered.suits(grid)
    assert numbered.suits(MIDDLE)


def test_messages_name_the_digits_of_the_grid() -> None:
    grid = replace(Grid(4, ()), symbols="", first=0)
    slips: tuple[tuple[str, Written], ...] = (
        ("skyscraper", {"left": "1 . . .", "right": "1 . . ."}),
        ("resting-thermometer", ["r1c1-r1c4 r2c4-r2c1"]),
        ("thermometer", ["r1c1-r1c4", "r1c4-r3c4"]),
    )
    for kind, body in slips:
        collector = Collector()
        kinds()[kind].read(node_of(body, Place("rule")), grid, collector)
        said = [f"{found.text} {found.hint}" for found in collector.found]
        assert any(re.search(r"\b3\b", text) for text in said), kind
        assert not [text for text in said if re.search(r"(only|above) 4", text)]


@pytest.mark.parametrize("kind", [kind for kind in kinds() if hasattr(cases_of(kind), "FROM_ZERO")])
def test_steps_worked_out_from_zero_are_found(kind: str) -> None:
    grid = replace(CLASSIC, symbols="", first=0)
    for entry, candidates, expected in cases_of(kind).FROM_ZERO:
        rule, collector = read_entry(entry, grid)
        assert rule is not None, collector.found
        masks = [grid.all_digits for _ in grid.cells]
        for cells, digits in candidates.items():
            for cell in cells_of(cells):
                masks[cell] = mask_of(grid.symbols.index(sign) + 1 for sign in digits)
        boards = tuple(
            board_of(cell for cell in grid.cells if digit and masks[cell] >> (digit - 1) & 1) for digit in range(10)
        )
        found = {pair for step in rule.deductions(Position(grid, boards)) for pair in step.removed}
        wanted = {
            (cell, grid.symbols.index(sign) + 1)
            for cells, signs in expected.items()
            for cell in cells_of(cells)
            for sign in signs
        }
        assert wanted
        assert wanted <= found, (entry, sorted(wanted - found))


@pytest.mark.parametrize("language", sorted(LOCALES))
def test_what_is_said_of_0_follows_the_sentence(language: str) -> None:
    grid, words = replace(CLASSIC, symbols="", first=0), catalogue(language)
    told = set()
    for kind in FROM_ZERO:
        for _, rule in instances(kind, grid, Random(f"zero said {kind}"), 2):
            said, plain = rule.sentences(words, grid), rule.sentence(words)
            assert rule.sentences(words, CLASSIC) == plain
            assert said.startswith(plain) and said.endswith(".") and said == " ".join(said.split(" "))
            told |= {kind} if said != plain else set()
    assert told == SAID


def test_sums_in_steps_are_sums_of_what_digits_are_worth() -> None:
    """A magic box of 0 to 8 has 36 in all, and 12 in a line."""
    grid = replace(CLASSIC, symbols="", first=0)
    block, _ = read_entry("square-block: {magic: r4c4-r6c6}", grid)
    assert block is not None
    elsewhere = board_of(grid.cells) & ~board_of([30])
    with_an_8 = Position(grid, (0, *[elsewhere] * 8, board_of(grid.cells)))
    assert [step.claim for step in block.deductions(with_an_8)] == [CommonSum((12,))]


def test_no_two_0s_touch_where_doubles_may_not_touch_at_all() -> None:
    """A Latin square found by the engine; with the 0 of row 4 in column 5 it touches that above."""
    grid = replace(Grid(7, ()), symbols="", first=0)
    apart = "0326145 3250614 2561403 6014532 1645320 4103256 5432061"
    rule = NoDoubles(diagonal=True)
    for text, said in ((apart, True), (apart.replace("6014532", "6514032"), False)):
        digits = tuple(grid.symbols.index(sign) + 1 for sign in text.replace(" ", ""))
        assert rule.holds(grid, digits) is said
        assert isinstance(prove(only_rule(rule, grid, digits)), Unique if said else NoSolution)
    digits = tuple(grid.symbols.index(sign) + 1 for sign in apart.replace(" ", ""))
    assert isinstance(second_opinion(Puzzle(grid, digits, (rule,))), Unique)
    assert "no two 0s" in rule.sentences(catalogue("en"), grid)
    assert "0" not in rule.sentences(catalogue("en"), CLASSIC) + NoDoubles().sentences(catalogue("en"), grid)


def test_a_known_puzzle_from_zero() -> None:
    """Two cells that make 1 hold 0 and 1, however they are counted."""
    grid = replace(Grid(4, ()), symbols="", first=0)
    collector = Collector()
    cage = kinds()["cage"].read(node_of([{"cells": "r1c1 r1c2", "total": "1"}], Place("rule")), grid, collector)
    assert cage is not None, collector.found
    assert cage.holds(grid, (1, 2, *[0] * 14))
    assert not cage.holds(grid, (2, 3, *[0] * 14))
    verdict = prove(problem_of(Puzzle(grid, (0, 1, *[0] * 14), (cage,))))
    assert not isinstance(verdict, NoSolution)
