"""Small Roman numerals, as front matter is numbered with and as page labels are read."""

from __future__ import annotations

_WORTH = (
    (1000, "m"), (900, "cm"), (500, "d"), (400, "cd"), (100, "c"), (90, "xc"), (50, "l"), (40, "xl"), (10, "x"),
    (9, "ix"), (5, "v"), (4, "iv"), (1, "i"),
)  # fmt: skip


def roman(number: int) -> str:
    """A number in small Roman numerals."""
    numerals = ""
    for worth, letters in _WORTH:
        count, number = divmod(number, worth)
        numerals += letters * count
    return numerals


def roman_value(numerals: str) -> int:
    """What small Roman numerals are worth; 0 for anything that `roman` does not write."""
    value, rest = 0, numerals
    for worth, letters in _WORTH:
        while rest.startswith(letters):
            value += worth
            rest = rest[len(letters) :]
    return value if numerals == roman(value) else 0
