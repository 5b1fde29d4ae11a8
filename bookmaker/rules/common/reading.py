"""Small things that several rule kinds read from the manifest: digits, single words of a line, a plain “yes”.

In: nodes with their places. Out: values, or diagnostics at the exact character.
"""

from __future__ import annotations

import re

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.words.wording import signs_of
from bookmaker.source.cells import closed_up
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Word, read_text

_PART = re.compile(r"[^\s,]+")


def parts_of(word: Word) -> tuple[Word, ...]:
    """What stands between spaces and commas, each part with its own place; a run with spaces around its dash is one."""
    word = closed_up(word)
    return tuple(Word(word.at_offset(found.start()), found.group()) for found in _PART.finditer(word.value))


def read_yes(body: Node, what: str, collector: Collector) -> bool:
    """True where the body is “yes” or empty; anything else is a diagnostic."""
    word = read_text(body, what, collector)
    if word is None:
        return False
    if word in ("", "yes", "true"):
        return True
    if word in ("no", "false"):
        collector.error(body.place, "rule-off", f"{what} is turned off here", "to do without the rule, leave it out")
    else:
        collector.error(
            body.place, "not-yes", f"{what} takes only “yes”, no cells or values", "it applies to the whole grid"
        )
    return False


def read_digits(node: Node, what: str, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    """One or more digits of the grid; None after any diagnostic. A word of other signs alone is one mistake."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-digits", f"{what} should be digits such as 1 2 5")
        return None
    found: list[int] = []
    sound = True
    for part in parts_of(node):
        if len(part.value) == 3 and part.value[1] in "-–":
            ends = [_digit(part, index, what, grid, collector) for index in (0, 2)]
            found += range(ends[0], ends[1] + 1) if all(ends) else ()
            sound &= all(ends)
            if all(ends) and ends[0] >= ends[1]:
                collector.error(
                    part.place, "backward-range", f"“{part.value}” does not run from a digit to a greater one"
                )
                sound = False
            continue
        if len(part.value) > 1 and not any(sign.upper() in grid.symbols for sign in part.value):
            text = f"{what} can't hold “{part.value}”: {signs_of(grid)}"
            collector.error(part.place, "not-a-digit", text)
            sound = False
            continue
        digits = [_digit(part, index, what, grid, collector) for index in range(len(part.value))]
        found += digits
        sound &= all(digits)
    if sound and not found:
        collector.error(node.place, "no-digits", f"{what} names no digit")
        return None
    return tuple(found) if sound else None


def _digit(word: Word, index: int, what: str, grid: Grid, collector: Collector) -> int:
    """The digit at a character of a word; 0 after a diagnostic."""
    character = word.value[index].upper()
    if character in grid.symbols:
        return grid.symbols.index(character) + 1
    text = f"{what} can't hold “{word.value[index]}”: {signs_of(grid)}"
    collector.error(word.at_offset(index), "not-a-digit", text)
    return 0
