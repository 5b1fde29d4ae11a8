"""Is a reason made of what its classes say it is made of? Text that was kept may hold anything.

In: a value and the type that it should have. Out: whether it has, all the way down.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import fields, is_dataclass
from functools import cache, lru_cache
from types import UnionType
from typing import Any, Literal, Union, cast, get_args, get_origin, get_type_hints

KEPT = 8192
"""Answers that are remembered: a book meets the same reasons again and again."""


@lru_cache(maxsize=KEPT, typed=True)
def fits(value: Any, hint: Any) -> bool:
    """Does a value have the type that an annotation names? A truth value is no whole number."""
    origin, members = get_origin(hint), get_args(hint)
    if origin in (Union, UnionType):
        return any(fits(value, member) for member in members)
    if origin is Literal:
        return value in members
    if origin is tuple:
        if not isinstance(value, tuple):
            return False
        if members[1:] == (...,):
            return all(fits(member, members[0]) for member in value)
        return len(value) == len(members) and all(map(fits, value, members))
    if hint is None or hint is type(None):
        return value is None
    if hint is int:
        return isinstance(value, int) and not isinstance(value, bool)
    if not isinstance(value, hint):
        return False
    return all(fits(getattr(value, name), wanted) for name, wanted in _hints(cast(Hashable, type(value))))


@cache
def _hints(kind: Any) -> tuple[tuple[str, Any], ...]:
    """The fields of a class of values, each with its type; none of a class that has no fields."""
    if not is_dataclass(kind):
        return ()
    hints = get_type_hints(kind)
    return tuple((field.name, hints[field.name]) for field in fields(kind))
