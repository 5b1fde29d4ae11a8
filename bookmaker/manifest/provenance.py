"""Where a puzzle comes from and what its setter says of it: tags, source, private notes and the setter's own solution.

In: the fields of a puzzle. Out: typed values, and diagnostics.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from bookmaker.manifest.entries import HiddenWord
from bookmaker.manifest.givens import Givens, read_givens
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, quoted
from bookmaker.source.placed import Node, Sequence, Word, read_fields, read_text

_TAG = re.compile(r"\w+(?:[-' ]\w+)*")

TAG = 40
"""Characters of a tag."""


def read_tags(fields: Mapping[str, Node], collector: Collector) -> tuple[str, ...]:
    """The words of a list, or of one line with commas between, each once and in the order typed."""
    node = fields.get("tags")
    if node is None:
        return ()
    hint = "such as “tags: harbour, easter” or a list with a tag on each line"
    words = node.values if isinstance(node, Sequence) else (node,)
    tags: dict[str, None] = {}
    for word in words:
        if not isinstance(word, Word):
            collector.error(word.place, "not-a-tag", "a tag should be a word or two", hint)
            continue
        for part in re.finditer(r"[^,\s][^,]*", word.value):
            text = " ".join(part[0].split())
            if not text:
                continue
            if not _TAG.fullmatch(text) or len(text) > TAG:
                said = f"{quoted(text)} cannot be a tag"
                collector.error(
                    word.at_offset(part.start()), "not-a-tag", said, f"a tag has letters, digits, dashes; {hint}"
                )
                continue
            tags[text] = None
    return tuple(tags)


def read_solution(
    fields: Mapping[str, Node], puzzle: Puzzle[object] | None, grid: Grid, collector: Collector
) -> Givens | None:
    """The setter's own solution, each digit with its place. The givens must be in it; with the proof it is compared
    later."""
    node = fields.get("solution")
    if node is None or (isinstance(node, Word) and not node.value):
        return None
    before = len(collector.found)
    solution = read_givens(node, grid, collector, "the solution")
    if solution is None:
        return None
    if gaps := [solution.place(cell) for cell in grid.cells if not solution.digits[cell]]:
        said = f"the solution leaves {len(gaps)} cells open" if len(gaps) > 1 else "the solution leaves a cell open"
        collector.error(gaps[0], "solution-open", said, "type every digit, or leave “solution” out", tuple(gaps[1:]))
    elif puzzle is not None:
        for cell, (given, digit) in enumerate(zip(puzzle.givens, solution.digits, strict=True)):
            if given and given != digit:
                said = (
                    f"the solution has {grid.symbol(digit)} in {grid.name(cell)}, where {grid.symbol(given)} is given"
                )
                collector.error(solution.place(cell), "solution-given", said, "one of the two is likely a slip")
    return solution if len(collector.found) == before else None


def read_word(node: Node, grid: Grid, collector: Collector) -> HiddenWord | None:
    """A word that the solution spells, as “{cells: r5c1-r5c9, reads: SHIPWRECK}”; with the proof it is compared
    later."""
    fields = read_fields(node, "the word", collector, ("cells", "reads"), ("cells", "reads"))
    typed, reads = fields.get("cells"), fields.get("reads")
    if typed is None or reads is None:
        return None
    text = read_text(reads, "the word", collector)
    if not isinstance(typed, Word):
        collector.error(typed.place, "not-cells", "the cells of the word stand in one line", "such as r5c1-r5c9")
        return None
    cells = read_cells(typed, grid, collector)
    if text is None or cells is None:
        return None
    text = text.upper()
    if strange := [sign for sign in text if sign not in grid.symbols]:
        said = f"the word has {quoted(strange[0])}, which does not stand in this grid"
        collector.error(reads.place, "word-sign", said, f"the grid holds {grid.symbols}")
    elif len(text) != len(cells):
        said = f"the word has {len(text)} letters for {len(cells)} cells"
        collector.error(reads.place, "word-length", said, "name a cell for each letter, in their order")
    else:
        return HiddenWord(cells, text, node.place)
    return None
