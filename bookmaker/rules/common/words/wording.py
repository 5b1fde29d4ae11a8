"""One voice for all rule kinds: calm, present tense, complete sentences, the trade's own words.

In: counts, digits, cells. Out: pieces of text to build sentences from. Numbers up to twelve that count things are
words (“three cells”); digits, sums and differences are figures (“at least 5”).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.puzzle.grid import SYMBOLS, Grid

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


def number(count: int) -> str:
    """“three”; figures above twelve."""
    return _NUMBERS[count] if 0 <= count < len(_NUMBERS) else str(count)


def counted(count: int, singular: str, plural: str = "") -> str:
    """“one cell”, “three cells”, “14 cells”."""
    return f"{number(count)} {singular if count == 1 else plural or singular + 's'}"


def the_or_each(count: int, noun: str) -> str:
    """“the cage” where there is one, else “each cage”."""
    return f"the {noun}" if count == 1 else f"each {noun}"


def one_or_many(count: int, singular: str, plural: str) -> str:
    """The whole text that fits the count."""
    return singular if count == 1 else plural


def listed(items: Iterable[str], last: str = "and") -> str:
    """“a”, “a and b”, “a, b and c”."""
    words = list(items)
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def symbol(digit: int) -> str:
    """A digit as it is printed: 1 to 9, then letters, on a grid whose digits begin with 1."""
    return SYMBOLS[digit - 1]


def signs_of(grid: Grid) -> str:
    """What a grid is filled with, for a message: “the digits of this grid run from 1 to 9”."""
    if grid.lettered:
        return f"the letters of this grid are {grid.symbols}"
    return f"the digits of this grid run from {grid.symbols[0]} to {grid.symbols[-1]}"


def digits_listed(grid: Grid, digits: Iterable[int], last: str = "and") -> str:
    """“1, 2 and 5”, as printed, in the order given."""
    return listed(map(grid.symbol, digits), last)


def cells_listed(grid: Grid, cells: Iterable[int], last: str = "and") -> str:
    """“r1c1, r1c2 and r3c5”."""
    return listed((grid.name(cell) for cell in cells), last)


def ends_named(grid: Grid, chain: Sequence[int]) -> str:
    """How a step calls a line: “from r1c1 to r4c5”."""
    return f"from {grid.name(chain[0])} to {grid.name(chain[-1])}"


def sentence_case(text: str) -> str:
    """The text with a capital at its start, the rest as it is."""
    return text[:1].upper() + text[1:]
