"""Reasons as text, and back: what a cache keeps.

In: a reason. Out: JSON, in which each part is a list headed by the name of its class; and from such text the same value
again. Raises ValueError where a text is none, or a part of it is not what its class says.
"""

from __future__ import annotations

import json
from dataclasses import fields
from functools import cache, lru_cache
from typing import Any, get_args

from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons import claims, marks, whatif
from bookmaker.reasons.checking import fits
from bookmaker.reasons.patterns import ChainLink
from bookmaker.reasons.reason import Reason
from bookmaker.reasons.throughmarks import ExtendedLink

KEPT = 8192
"""Reasons kept by their texts: most steps place a digit in one of few ways, and a book meets them again and again."""


@lru_cache(maxsize=KEPT)
def to_text(reason: Reason) -> str:
    """A reason as one line of JSON."""
    return json.dumps(_plain(reason), separators=(",", ":"))


@lru_cache(maxsize=KEPT)
def from_text(text: str) -> Reason:
    """The reason in such a text."""
    found = _value(json.loads(text))
    if not fits(found, Reason):
        raise ValueError("not a reason")
    assert isinstance(found, Reason)
    return found


def _plain(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain(member) for member in value]
    if value is None or isinstance(value, int | str):
        return value
    return [value.__class__.__name__, *(_plain(getattr(value, name)) for name in _names(value.__class__))]


def _value(data: Any) -> Any:
    if not isinstance(data, list):
        return data
    if data and isinstance(data[0], str):
        kind = _kinds().get(data[0])
        if kind is None or len(data) != len(_names(kind)) + 1:
            raise ValueError(f"no part of a reason: {data[0]}")
        return kind(*map(_value, data[1:]))
    return tuple(map(_value, data))


@cache
def _names(kind: type) -> tuple[str, ...]:
    return tuple(field.name for field in fields(kind))


@cache
def _kinds() -> dict[str, type]:
    """All classes that a reason can be made of, by name."""
    unions = (claims.Claim, marks.Anchor, whatif.End, whatif.Link)
    members = [member for union in unions for member in get_args(union)]
    return {kind.__name__: kind for kind in (Reason, marks.MarkRef, HouseRef, ChainLink, ExtendedLink, *members)}
