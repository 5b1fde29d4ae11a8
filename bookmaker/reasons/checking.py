"""Is a reason made of what its classes say it is made of? Text that was kept may hold anything.

In: a value and the type that it should have. Out: whether it has, all the way down.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from functools import cache
from types import UnionType
from typing import Any, Literal, TypeAlias, Union, get_args, get_origin, get_type_hints

Check: TypeAlias = Callable[[Any], bool]


def fits(value: Any, hint: Any) -> bool:
    """Does a value have the type that an annotation names? A truth value is no whole number."""
    return _check(hint)(value)


@cache
def _check(hint: Any) -> Check:
    """What tells whether a value has a type; made once for each, as a book meets the same types again and again."""
    origin, members = get_origin(hint), get_args(hint)
    if origin in (Union, UnionType):
        checks = tuple(map(_check, members))
        return lambda value: any(check(value) for check in checks)
    if origin is Literal:
        return lambda value: value in members
    if origin is tuple:
        return _tuple(tuple(map(_check, members[:1])) if members[1:] == (...,) else None, members)
    if hint is None or hint is type(None):
        return lambda value: value is None
    if hint is int:
        return lambda value: type(value) is int
    kind: type = hint
    if not is_dataclass(kind):
        return lambda value: isinstance(value, kind)
    return lambda value: (
        isinstance(value, kind) and all(check(getattr(value, name)) for name, check in _parts(type(value)))
    )


def _tuple(each: tuple[Check, ...] | None, members: tuple[Any, ...]) -> Check:
    """A tuple of any length whose members are alike, or one with a type for each."""
    if each is not None:
        (check,) = each
        return lambda value: isinstance(value, tuple) and all(map(check, value))
    checks = tuple(map(_check, members))
    return lambda value: (
        isinstance(value, tuple)
        and len(value) == len(checks)
        and all(check(member) for check, member in zip(checks, value, strict=True))
    )


@cache
def _parts(kind: type) -> tuple[tuple[str, Check], ...]:
    """The fields of a class of values, each with what tells whether it has its type."""
    hints = get_type_hints(kind)
    return tuple((field.name, _check(hints[field.name])) for field in fields(kind))
