"""Where a puzzle comes from and what its setter says of it: tags, source, private notes and the setter's own solution.

In: the fields of a puzzle. Out: typed values, with troubles on the desk.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from bookmaker.manifest.givens import Givens, read_givens
from bookmaker.placed import Node, Sequence, Word
from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.trouble import Desk, quoted

_TAG = re.compile(r"\w+(?:[-' ]\w+)*")

TAG = 40
"""Characters of a tag."""


def read_tags(fields: Mapping[str, Node], desk: Desk) -> tuple[str, ...]:
    """The words of a list, or of one line with commas between, each once and in the order typed."""
    node = fields.get("tags")
    if node is None:
        return ()
    hint = "such as “tags: harbour, easter” or a list with a tag on each line"
    words = node.values if isinstance(node, Sequence) else (node,)
    tags: dict[str, None] = {}
    for word in words:
        if not isinstance(word, Word):
            desk.error(word.place, "not-a-tag", "a tag should be a word or two", hint)
            continue
        for part in re.finditer(r"[^,\s][^,]*", word.value):
            text = " ".join(part[0].split())
            if not text:
                continue
            if not _TAG.fullmatch(text) or len(text) > TAG:
                said = f"{quoted(text)} cannot be a tag"
                desk.error(
                    word.at_offset(part.start()), "not-a-tag", said, f"a tag has letters, digits, dashes; {hint}"
                )
                continue
            tags[text] = None
    return tuple(tags)


def read_solution(fields: Mapping[str, Node], puzzle: Puzzle[object] | None, grid: Grid, desk: Desk) -> Givens | None:
    """The setter's own solution, each digit with its place. The givens must be in it; with the proof it is compared
    later."""
    node = fields.get("solution")
    if node is None or (isinstance(node, Word) and not node.value):
        return None
    before = len(desk.found)
    solution = read_givens(node, grid, desk, "the solution")
    if solution is None:
        return None
    if gaps := [solution.place(cell) for cell in grid.cells if not solution.digits[cell]]:
        said = f"the solution leaves {len(gaps)} cells open" if len(gaps) > 1 else "the solution leaves a cell open"
        desk.error(gaps[0], "solution-open", said, "type every digit, or leave “solution” out", tuple(gaps[1:]))
    elif puzzle is not None:
        for cell, (given, digit) in enumerate(zip(puzzle.givens, solution.digits, strict=True)):
            if given and given != digit:
                said = (
                    f"the solution has {SYMBOLS[digit - 1]} in {grid.name(cell)}, where {SYMBOLS[given - 1]} is given"
                )
                desk.error(solution.place(cell), "solution-given", said, "one of the two is likely a slip")
    return solution if len(desk.found) == before else None
