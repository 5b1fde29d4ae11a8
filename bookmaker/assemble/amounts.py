"""How many: numbers as briefs say them.

In: a node such as `3`, `at least 4`, `2 to 5`, or a table {at-least, at-most, exactly, rather}. Out: an `Amount`, or
None with the trouble on the desk.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from bookmaker.placed import Node, Table, Word, read_fields, read_switch, read_whole
from bookmaker.trouble import Desk, quoted

MOST = 2_000
"""Puzzles that a collection may have."""

PHRASES = (
    (re.compile(r"(\d{1,6})"), lambda n: (n, n)),
    (re.compile(r"exactly (\d{1,6})"), lambda n: (n, n)),
    (re.compile(r"at least (\d{1,6})"), lambda n: (n, None)),
    (re.compile(r"at most (\d{1,6})"), lambda n: (0, n)),
    (re.compile(r"(\d{1,6}) to (\d{1,6})"), lambda a, b: (a, b)),
    (re.compile(r"none|no"), lambda: (0, 0)),
)

AMOUNT_KEYS = ("at-least", "at-most", "exactly", "rather")

HOW = "write a number, “at least 4”, “at most 4”, “2 to 5” or “none”"


@dataclass(frozen=True, slots=True)
class Amount:
    """From `least` to `most` (None: no limit); `rather` says that it may be missed where it must be."""

    least: int
    most: int | None
    rather: bool = False

    def __str__(self) -> str:
        """“5”, “at least 4”, “at most 3”, “2 to 5”."""
        if self.most is None:
            return f"at least {self.least}"
        if self.least == self.most:
            return str(self.least) if self.most else "none"
        return f"at most {self.most}" if not self.least else f"{self.least} to {self.most}"

    def missed_by(self, count: int) -> int:
        """How far a count is from what is wanted."""
        return max(self.least - count, 0 if self.most is None else count - self.most, 0)


def read_amount(node: Node, what: str, desk: Desk, rather: bool = False) -> Amount | None:
    """An amount; `rather` holds unless the node says otherwise itself."""
    if isinstance(node, Table):
        return _from_table(node, what, desk, rather)
    if isinstance(node, Word):
        text = " ".join(node.value.lower().split())
        for phrase, bounds in PHRASES:
            if found := phrase.fullmatch(text):
                least, most = bounds(*map(int, found.groups()))
                return _checked(node, least, most, what, desk, rather)
        said = f"{what} should be an amount, not {quoted(node.value)}" if node.value else f"{what} is left empty"
        desk.error(node.place, "bad-amount", said, HOW)
    else:
        desk.error(node.place, "bad-amount", f"{what} should be an amount, not a list", HOW)
    return None


def _from_table(node: Table, what: str, desk: Desk, rather: bool) -> Amount | None:
    fields = read_fields(node, what, desk, AMOUNT_KEYS)
    numbers = {
        name: read_whole(fields[name], f"“{name}”", desk, 0, MOST)
        for name in ("at-least", "at-most", "exactly")
        if name in fields
    }
    if not numbers:
        desk.error(node.place, "bad-amount", f"{what} says no amount", "add “at-least: 2” or “at-most: 6”")
        return None
    if None in numbers.values():
        return None
    if "rather" in fields:
        rather = bool(read_switch(fields["rather"], "“rather”", desk))
    exactly = numbers.get("exactly")
    least = exactly if exactly is not None else numbers.get("at-least") or 0
    most = exactly if exactly is not None else numbers.get("at-most")
    return _checked(node, least, most, what, desk, rather)


def _checked(node: Node, least: int, most: int | None, what: str, desk: Desk, rather: bool) -> Amount | None:
    if most is not None and least > most:
        desk.error(node.place, "bad-amount", f"{what}: {least} is more than {most}", HOW)
        return None
    if least > MOST:
        desk.error(node.place, "bad-amount", f"{what}: a collection has at most {MOST} puzzles")
        return None
    return Amount(least, most, rather)
