"""How far the search of this process has come, for whoever waits for it.

In: a search notes itself when it begins. Out: its guesses so far and its budget, read from another thread at any time.
"""

from __future__ import annotations

from typing import Protocol


class Counted(Protocol):
    """A search that counts its guesses."""

    nodes: int
    budget: int | None


_latest: Counted | None = None


def begin(search: Counted | None) -> None:
    """A search begins, or with None all have ended."""
    global _latest
    _latest = search


def guesses() -> tuple[int, int | None] | None:
    """Guesses made by the latest search, and how many it may make in all; None where there is none."""
    search = _latest
    return None if search is None else (search.nodes, search.budget)
