"""The rules of a wish: marks drawn as in a manifest, or so many left to chance, or at places where they are read off.

In: the node under `rules:`. Out: a `RuleWish` for each kind, or diagnostics at their places.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from bookmaker.manifest.example import example_rule
from bookmaker.manifest.rulefields import check_signs, stands_on
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules import kinds
from bookmaker.rules.common.area import read_areas
from bookmaker.rules.common.border import read_borders, read_corner
from bookmaker.rules.common.chain import read_chains
from bookmaker.rules.common.clue import SIDES
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.outside import OutsideRule, digit_clue
from bookmaker.rules.common.parts import Form, node_of
from bookmaker.rules.common.reading import parts_of
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, nearest, quoted
from bookmaker.source.placed import Node, Table, Word, read_fields, read_switch, read_text, read_whole
from bookmaker.source.placed import Sequence as Items
from bookmaker.wishes.span import Span, read_span
from bookmaker.wishes.wish import Amount, RuleWish

Cells = tuple[int, ...]

COUNTED = {
    Form.CHAIN: "shapes",
    Form.AREA: "shapes",
    Form.TWINS: "shapes",
    Form.BORDER: "marks",
    Form.CORNER: "marks",
    Form.CELL: "marks",
    Form.EDGE: "clues",
}
"""What the marks of a kind are called where they are counted."""

USUAL_MARKS = {
    Form.CHAIN: (4, 6),
    Form.AREA: (4, 8),
    Form.TWINS: (2, 3),
    Form.BORDER: (4, 14),
    Form.CORNER: (4, 8),
    Form.CELL: (4, 12),
    Form.EDGE: (4, 10),
    Form.WHOLE: (0, 0),
}
"""How many marks, from and to, where nothing is said."""

_UNKNOWN = "?"
"""Stands at a clue whose figure is to be found."""


def read_rule_wishes(node: Node, grid: Grid, collector: Collector) -> tuple[RuleWish, ...]:
    """Each kind with what is wished of it; faulty ones are reported and left out."""
    if isinstance(node, Word) and not node.value:
        return ()
    if isinstance(node, Word):
        node = Items(node.place, (node,))
    if isinstance(node, Items):  # kinds alone: everything is left to chance
        words = [word for word in node.values if isinstance(word, Word)]
        for at, word in enumerate(words):
            if word.value in {before.value for before in words[:at]}:
                collector.error(word.place, "repeated-key", f"{quoted(word.value)} appears twice", "name it once")
        node = Table(node.place, tuple((word, Word(word.place, "")) for word in words))
    found = []
    for word, body in node.entries:
        kind = kinds().get(word.value)
        if kind is None:
            said = f"there is no rule kind {quoted(word.value)}"
            collector.error(word.place, "unknown-rule", said, nearest(word.value, kinds()))
            continue
        if not stands_on(kind, grid, word.place, collector):
            continue
        if grid.overlaps and kind.in_one_square() and kind.form is not Form.WHOLE:
            said = f"“{word.value}” stands in one grid, and can't be wished for where several overlap"
            collector.error(word.place, "which-grid", said, "draft without it, and add its clues by hand")
            continue
        wish = _read(kind, body, grid.squares[0] if kind.in_one_square() else grid, collector)
        if wish is not None:
            check_signs(wish.rule, grid, word.place, collector)
            squares = grid.square_letters if kind.in_one_square() else ("",)
            found += [replace(wish, rule=replace(wish.rule, square=square)) for square in squares]
    return tuple(found)


def by_chance(kind: type[Rule], grid: Grid) -> RuleWish:
    """A rule whose marks are left to chance, in the usual numbers; one for the whole grid as its example has it."""
    if kind.form is not Form.WHOLE:
        rule = kind.blank(grid)
        return RuleWish(rule, usual_amount(rule, grid))
    return RuleWish(example_rule(kind))


def usual_amount(rule: Rule, grid: Grid) -> Amount:
    """How many marks, of how many cells, where a wish does not say."""
    shortest, longest = (count or grid.size for count in rule.usual_cells)
    return Amount(*USUAL_MARKS[rule.form], shortest, longest)


def _read(kind: type[Rule], body: Node, grid: Grid, collector: Collector) -> RuleWish | None:
    own = () if kind.form is Form.WHOLE else (COUNTED[kind.form], *own_words(kind))
    left_open = isinstance(body, Word) and not body.value and kind.form is not Form.WHOLE
    wished = isinstance(body, Table) and all(key.value in (*own, *kind.options) for key, _ in body.entries)
    if kind.form is Form.WHOLE and isinstance(body, Word) and not body.value:  # its name alone
        body = node_of(example_rule(kind).written(CLASSIC), body.place)
    if kind.form is Form.WHOLE or not (left_open or wished) or (isinstance(body, Table) and body.get("total")):
        drawn = kind.read(body, grid, collector)
        return None if drawn is None else RuleWish(drawn)
    fields = read_fields(body, kind.kind, collector, (*own, *kind.options)) if isinstance(body, Table) else {}
    before = len(collector.found)
    rule = _with_options(kind, fields, grid, collector)
    usual = usual_amount(rule, grid)
    counted = _whole_span(fields, COUNTED[kind.form], Span(usual.least, usual.most), Span(1, 200), collector)
    size = _whole_span(fields, "cells", Span(usual.shortest, usual.longest), Span(1, len(grid.cells)), collector)
    places = _read_places(rule, fields["at"], grid, collector) if "at" in fields else ()
    shapes = _read_shapes(rule, fields["moved"], grid, collector) if "moved" in fields else ()
    if len(collector.found) > before:
        return None
    if shapes and COUNTED[kind.form] not in fields:
        counted = (len(shapes), max(len(shapes), usual.most))
    return RuleWish(rule, Amount(*counted, *size), places, shapes)


def own_words(kind: type[Rule]) -> tuple[str, ...]:
    """What can be said of marks left to chance besides how many."""
    words = {
        "cells": kind.usual_cells != (1, 1),
        "at": bool(kind.figures) or kind.form in (Form.BORDER, Form.CELL),
        "moved": kind.form in (Form.CHAIN, Form.AREA),
    }
    return tuple(word for word, fits in words.items() if fits)


def _with_options(kind: type[Rule], fields: Mapping[str, Node], grid: Grid, collector: Collector) -> Rule:
    blank = kind.blank(grid)
    values: dict[str, bool | int] = {}
    for name in kind.options:
        if name not in fields:
            continue
        value: bool | int | None
        if isinstance(getattr(blank, name.replace("-", "_")), bool):
            value = read_switch(fields[name], name, collector)
        elif name == "digit":
            text = read_text(fields[name], name, collector)
            value = None if text is None else digit_clue(text, fields[name].place, grid, collector)
        else:
            value = read_whole(fields[name], name, collector, 1, grid.size - 1)
        if value is not None:
            values[name] = value
    return blank.with_options(values)


def _whole_span(
    fields: Mapping[str, Node], name: str, usual: Span, within: Span, collector: Collector
) -> tuple[int, int]:
    read = read_span(fields[name], f"“{name}”", collector, within) if name in fields else usual
    return (read or usual).whole


def _read_places(rule: Rule, node: Node, grid: Grid, collector: Collector) -> tuple[Cells, ...]:
    """Where marks stand whose figures are to be read off the solution."""
    what = f"the {rule.noun}"
    if rule.form is Form.AREA:
        return tuple(area.cells for area in read_areas(node, what, grid, collector, 1) or ())
    if rule.form is Form.BORDER:
        return tuple(border.pair for border in read_borders(node, what, grid, collector) or ())
    if isinstance(rule, OutsideRule):
        return _read_edges(node, grid, collector)
    words = [part for word in _words(node, collector) for part in parts_of(word)]
    if rule.form is Form.CORNER:
        return tuple(cells for word in words if (cells := read_corner(word, what, grid, collector)))
    if rule.form is Form.CELL:
        return tuple((cell,) for word in words for cell in read_cells(word, grid, collector) or ())
    return _read_entries(rule, node, grid, collector)


def _words(node: Node, collector: Collector) -> list[Word]:
    nodes = node.values if isinstance(node, Items) else (node,)
    for odd in nodes:
        if not isinstance(odd, Word):
            collector.error(odd.place, "not-a-list", "“at” should be a list of places", "such as r1c1 r2c5")
    return [word for word in nodes if isinstance(word, Word)]


def _read_edges(node: Node, grid: Grid, collector: Collector) -> tuple[Cells, ...]:
    """Lines with a “?” at their end: “left: . ? . . ? . . . .”."""
    lines: list[Cells] = []
    for side, row in read_fields(node, "“at”", collector, SIDES).items():
        signs = parts_of(row) if isinstance(row, Word) else ()
        if len(signs) != grid.size or any(sign.value not in (_UNKNOWN, ".") for sign in signs):
            said = f"at the {side}, {grid.size} signs are wanted, each a “?” for a clue or a dot for none"
            collector.error(row.place, "clue-count", said)
            continue
        houses = grid.rows if side in ("left", "right") else grid.columns
        for sign, house in zip(signs, houses, strict=True):
            if sign.value == _UNKNOWN:
                lines.append(house.cells if side in ("left", "top") else house.cells[::-1])
    return tuple(lines)


def _read_entries(rule: Rule, node: Node, grid: Grid, collector: Collector) -> tuple[Cells, ...]:
    """Lines told by the cell where they enter the grid and their way: “r1c3 down-right”."""
    found = []
    for word in _words(node, collector):
        cell, _, way = word.value.partition(" ")
        down, across = 1 if way.startswith("down") else -1, 1 if way.endswith("right") else -1
        for cells in rule.places(grid):
            ends = grid.name(cells[0]), grid.row(cells[1]) - grid.row(cells[0]), cells[1] - cells[0]
            if ends == (cell, down, down * grid.size + across) and way in _WAYS:
                found.append(cells)
                break
        else:
            said = f"no {rule.noun} enters the grid at {quoted(word.value)}"
            collector.error(word.place, "no-such-place", said, "such as “r1c3 down-right”")
    return tuple(found)


_WAYS = ("down-right", "down-left", "up-right", "up-left")


def _read_shapes(rule: Rule, node: Node, grid: Grid, collector: Collector) -> tuple[Cells, ...]:
    if rule.form is Form.CHAIN:
        return read_chains(node, rule.noun, grid, collector) or ()
    return tuple(area.cells for area in read_areas(node, f"the {rule.noun}", grid, collector) or ())
