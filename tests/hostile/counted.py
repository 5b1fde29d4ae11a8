"""Work that is counted, not timed: the same on every machine, however busy."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType


class TooMuch(AssertionError):
    """More was called than should be."""


@contextmanager
def at_most(calls: int) -> Iterator[None]:
    """Let no more functions be called inside, whether of Python or built in; what goes on without end ends there."""
    left = calls

    def count(frame: FrameType, event: str, argument: object) -> None:
        nonlocal left
        left -= event in ("call", "c_call")
        if left < 0:
            sys.setprofile(None)
            raise TooMuch(f"more than {calls:,} calls")

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        yield
    finally:
        sys.setprofile(before)
