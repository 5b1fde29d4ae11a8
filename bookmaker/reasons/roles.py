"""What the members of a claim are. They are plain numbers; the names of their types say what of.

The room `phrases` and the report read a claim by these names, so a claim declares each of its members by one of them.
"""

from __future__ import annotations

from typing import TypeAlias

from bookmaker.puzzle.grid import HouseRef

Cell: TypeAlias = int
Cells: TypeAlias = tuple[int, ...]
Digit: TypeAlias = int
Digits: TypeAlias = tuple[int, ...]
Houses: TypeAlias = tuple[HouseRef, ...]
Span: TypeAlias = tuple[int, int, int]
"""A cell, the least and the greatest digit that it can hold."""
Spans: TypeAlias = tuple[Span, ...]
