"""A rule taken apart into its marks, put together again, and written as a manifest has it.

For every kind, on the marks that its cases lay: what is written reads back as the same rule, also through YAML; its
parts make it; each part asks what it asks and no more; and what is read off a solution is true on it.
"""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

import pytest

from bookmaker.manifest.written import rule_lines
from bookmaker.puzzle.grid import CLASSIC, Grid, irregular_grid
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form, node_of
from bookmaker.rules.equal_part_line import EqualPartLine
from bookmaker.solve import prove
from bookmaker.solve.problem import Allowed, Problem
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.source.diagnostics import Collector, Place
from tests.rules.grids import GRIDS, random_solution
from tests.rules.harness import instances, sound_entry

SHEET = Place("sheet")


def alike(rule: Rule, other: Rule, grid: Grid) -> bool:
    """The same marks and options, in whatever order the marks were typed."""
    return type(rule) is type(other) and (
        set(rule.parts(grid)) == set(other.parts(grid))
        and rule.said_options() == other.said_options()
        and rule == other.with_parts(rule.parts(grid), grid)
    )


def laid(kind: str, wanted: int = 4) -> Iterator[tuple[Grid, Solution, Rule]]:
    rng = Random(f"parts {kind}")
    for grid in GRIDS:
        for solution, rule in instances(kind, grid, rng, wanted):
            yield grid, solution, rule


@pytest.mark.parametrize("kind", kinds())
def test_what_is_written_reads_back(kind: str) -> None:
    seen = 0
    for grid, _, rule in [(CLASSIC, (), sound_entry(kinds()[kind].example)), *laid(kind)]:
        collector = Collector()
        again = type(rule).read(node_of(rule.written(grid), SHEET), grid, collector)
        if again is None:  # marks laid at random may say too much to be typed, which their reader tells
            assert collector.found
            continue
        assert alike(rule, again, grid), (rule, again)
        typed = sound_entry("\n".join(rule_lines(rule, grid)), grid)
        assert alike(rule, typed, grid), (rule, typed)
        assert again.written(grid) == rule.written(grid)
        seen += 1
    assert seen >= 5


@pytest.mark.parametrize("kind", kinds())
def test_a_rule_is_made_of_its_parts(kind: str) -> None:
    for grid, solution, rule in laid(kind, 2):
        parts = rule.parts(grid)
        assert (rule.form is Form.WHOLE and kind != "diagonals") == (not parts)
        assert rule.with_parts(parts, grid) == rule
        assert type(rule).blank(grid).parts(grid) == ()
        blank = (
            type(rule).blank(grid).with_options({name: getattr(rule, name.replace("-", "_")) for name in rule.options})
        )
        assert blank.with_parts(parts, grid) == rule
        for part in parts:
            assert rule.keeps(part, grid, solution)
        asked = [made for part in parts for made in rule.asked_by(part, grid)]
        fixed = [Allowed((cell,), 1 << (digit - 1)) for cell, digit in enumerate(solution)]
        for digits in (solution, random_solution(grid, Random(1))):
            fixed = [Allowed((cell,), 1 << (digit - 1)) for cell, digit in enumerate(digits)]
            problem = Problem(len(grid.cells), grid.size, (*fixed, *asked, *rule.asked_besides(grid)))
            assert isinstance(prove(problem), Unique) == rule.holds(grid, digits)


@pytest.mark.parametrize("kind", kinds())
def test_each_part_says_its_share(kind: str) -> None:
    """A filled grid keeps a part exactly if it keeps the constraints that the part brings."""
    rng = Random(f"share {kind}")
    for grid, _, rule in laid(kind, 2):
        for digits in (random_solution(grid, rng) for _ in range(3)):
            fixed = tuple(Allowed((cell,), 1 << (digit - 1)) for cell, digit in enumerate(digits))
            for part in rule.parts(grid)[:6]:
                problem = Problem(len(grid.cells), grid.size, (*fixed, *rule.asked_by(part, grid)))
                assert isinstance(prove(problem), Unique) == rule.keeps(part, grid, digits), (rule, part)


@pytest.mark.parametrize("kind", kinds())
def test_what_is_read_off_a_solution_is_true_on_it(kind: str) -> None:
    rng = Random(f"read {kind}")
    for grid, solution, rule in laid(kind, 2):
        for part in rule.parts(grid):
            found = list(rule.read_off(part.cells, grid, solution, rng))
            assert all(rule.keeps(again, grid, solution) for again in found)
            if rule.form in (Form.CHAIN, Form.AREA, Form.BORDER, Form.CORNER, Form.EDGE):
                assert found, part
            if rule.form not in (Form.CHAIN, Form.AREA, Form.TWINS, Form.WHOLE):
                assert tuple(sorted(part.cells)) in {tuple(sorted(place)) for place in rule.places(grid)}


def test_a_line_through_irregular_regions_is_blank_for_them() -> None:
    grid = irregular_grid(4, "aabbaabbccddccdd")
    rule = kinds()["equal-part-line"].blank(grid)
    assert isinstance(rule, EqualPartLine)
    assert rule.home == "region"
