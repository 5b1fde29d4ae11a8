"""A puzzle written as a person would type it into a manifest. What is written reads back as the same puzzle.

In: a puzzle with its texts, a rule, or any body. Out: lines of YAML.
"""

from __future__ import annotations

import textwrap
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from bookmaker.manifest.rulefields import IN
from bookmaker.puzzle.grid import USUAL_BOXES, Grid
from bookmaker.puzzle.holed import Holed
from bookmaker.puzzle.overlapping import Overlapping
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.rules.common.area import LETTERS, picture
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Written
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Sequence as Items
from bookmaker.source.placed import Table, Word
from bookmaker.source.textgrid import drawn_rows
from bookmaker.source.yamlfile import parse_yaml

WIDTH = 100
"""Characters of a line, where it can be broken."""


def puzzle_lines(puzzle: RuledPuzzle, texts: Mapping[str, Written]) -> list[str]:
    """An item of a manifest's list of puzzles; `texts` are its id, title and so on, by name; empty ones are left out.

    Raises ValueError where a text cannot be typed into a manifest.
    """
    fields: dict[str, Written] = {name: text for name, text in texts.items() if text}
    lines = [f"  tags: {_flow(fields.pop('tags'))}"] if "tags" in fields else []
    lines = _entries(fields, 2) + lines + _entries(_grid(puzzle.grid), 2)
    lines += entry_lines("givens", givens_picture(puzzle.grid, puzzle.givens), 2)
    if puzzle.rules:
        lines.append("  rules:")
        lines += _rules(puzzle)
    return ["-" + lines[0][1:], *lines[1:]]


def _rules(puzzle: RuledPuzzle) -> Iterator[str]:
    """The rules; those of one of several grids together, but for a kind that holds in all of them alike."""
    every = Counter(replace(rule, square="") for rule in puzzle.rules if rule.form is Form.WHOLE)
    everywhere = {rule for rule, times in every.items() if times == len(puzzle.grid.squares)}
    said = [replace(rule, square="") if replace(rule, square="") in everywhere else rule for rule in puzzle.rules]
    for square in dict.fromkeys(rule.square for rule in said):
        if square:
            yield f"    {IN}{square}:"
        for rule in dict.fromkeys(rule for rule in said if rule.square == square):
            grid = puzzle.grid.squares[0] if rule in everywhere else rule.laid_on(puzzle.grid)
            yield from rule_lines(rule, grid, 6 if square else 4)


def rule_lines(rule: Rule, grid: Grid, indent: int = 0) -> list[str]:
    """The entry of a rule under “rules:”."""
    return entry_lines(rule.kind, rule.written(grid), indent)


def givens_picture(grid: Grid, digits: Sequence[int]) -> str:
    """Rows of digits with a gap between boxes and an empty line between bands."""
    text = digits_text(tuple(digits), grid.symbols)
    down, across = grid.box or (grid.extent, grid.extent)
    rows = []
    for row, line in enumerate(drawn_rows(grid, text.__getitem__)):
        if row and row % down == 0:
            rows.append("")
        rows.append("  ".join(" ".join(line[i : i + across]) for i in range(0, grid.width, across)))
    return "\n".join(rows)


def _grid(grid: Grid) -> dict[str, Written]:
    """What is said of a grid that is not the everyday one."""
    said: dict[str, Written] = {"size": str(grid.size)} if grid.size != 9 else {}
    if grid.regions and grid.box is None:
        said["regions"] = picture(dict(zip(LETTERS, grid.regions, strict=False)), grid)
    elif not isinstance(grid, Holed) and (grid.box is None or grid.box != USUAL_BOXES.get(grid.size)):
        said["boxes"] = f"{grid.box[0]}x{grid.box[1]}" if grid.box else "none"
    if isinstance(grid, Holed):
        said["holes"] = givens_picture(grid, (0,) * len(grid.cells))
    if isinstance(grid, Overlapping):
        said["grids"] = " ".join(square.name(square.cells[0]) for square in grid.squares)
    if grid.lettered:
        said["letters"] = grid.symbols
    elif not grid.first:
        said["digits"] = "from-zero"
    return said


def _entries(fields: Mapping[str, Written], indent: int) -> list[str]:
    return [line for name, value in fields.items() for line in entry_lines(name, value, indent)]


def entry_lines(name: str, value: Written, indent: int) -> list[str]:
    """“name: value”, in as many lines as it takes."""
    begin = f"{' ' * indent}{name}:"
    match value:
        case str(text) if "\n" in text:
            return [f"{begin} |", *textwrap.indent(text, " " * (indent + 2)).split("\n")]
        case str(text):
            return _folded(f"{begin} {scalar(text)}", indent + 2)
        case list(items):
            return [begin, *(line for item in items for line in _item(item, indent + 2))]
        case dict(entries) if len(entries) > 2 and all(len(key) == 1 for key in entries):
            return _folded(f"{begin} {_flow(entries)}", indent + 2)
        case dict(entries):
            return [begin, *_entries(entries, indent + 2)]


def _item(value: Written, indent: int) -> list[str]:
    """An item after its dash."""
    return _folded(f"{' ' * indent}- {_flow(value)}", indent + 2)


def _flow(value: Written) -> str:
    """A value in one line."""
    match value:
        case str(text):
            return scalar(text)
        case list(items):
            return f"[{', '.join(map(_flow, items))}]"
        case dict(entries):
            return "{" + ", ".join(f"{name}: {_flow(entry)}" for name, entry in entries.items()) + "}"


def _folded(line: str, indent: int) -> list[str]:
    """A line broken at spaces where it is too long; quotes, whose text would be read otherwise, are left whole."""
    if len(line) <= WIDTH or '"' in line:
        return [line]
    # A name stays on the line of its value.
    glued = line.replace(": ", ":\0")
    lines = textwrap.wrap(glued, WIDTH, subsequent_indent=" " * indent, break_long_words=False, break_on_hyphens=False)
    return [line.replace("\0", " ") for line in lines]


def scalar(text: str) -> str:
    """A text as it is typed after a colon or a dash: as it is if it reads back so, else in double quotes.

    Raises ValueError where even those do not help.
    """
    for typed in (text, _quoted(text)):
        if _reads_as(typed, text):
            return typed
    raise ValueError(f"a manifest has no way to hold {text!r}")


def _reads_as(typed: str, text: str) -> bool:
    if typed.isascii() and typed.replace("-", "").replace(" ", "").isalnum() and typed == text == text.strip("- "):
        return True  # nothing that YAML could mistake
    collector = Collector()
    named, listed = parse_yaml(f"name: {typed}", "", collector), parse_yaml(f"[{typed}]", "", collector)
    match named, listed:
        case Table(entries=((_, Word(value=one)),)), Items(values=(Word(value=other),)):
            return not collector.found and one == other == text
    return False


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'
