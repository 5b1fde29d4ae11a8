"""What is made of values that come again and again as the very same object, such as the digits of grids.

In: a value. Out: what is made of it, from the last time if it is still there. Values are told apart by which object
they are, since to compare them would take as long as to make it once more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Generic, TypeVar

Value = TypeVar("Value")
Made = TypeVar("Made")


class Recurring(Generic[Value, Made]):
    """Calls `make` with a value, and keeps at most so many of the results."""

    def __init__(self, make: Callable[[Value], Made], most: int) -> None:
        self._make, self._most = make, most
        self._kept: dict[int, tuple[Value, Made]] = {}

    def __call__(self, value: Value) -> Made:
        kept = self._kept.get(id(value))
        if kept is None:
            if len(self._kept) >= self._most:
                self._kept.clear()
            kept = self._kept[id(value)] = value, self._make(value)  # so long as it is kept, its id is its own
        return kept[1]

    def all(self, values: Iterable[Value]) -> list[Made]:
        """What is made of each of the values: in less time than one by one, where most are kept."""
        known = self._kept.get
        return [kept[1] if (kept := known(id(value))) else self(value) for value in values]
