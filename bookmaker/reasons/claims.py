"""All claims, and which cells, digits and houses a claim speaks of.

A new claim is a class in one of the modules named here, a member of `Claim`, and a phrase in each language; the
exhaustive `match` in `phrases` and in the tests will ask for the rest.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, fields
from functools import cache
from typing import Any, TypeAlias

from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons.bymark import (
    Apart,
    Beside,
    BesideAll,
    Bounds,
    CommonSum,
    CountsTo,
    Enclosed,
    FirstDigits,
    HeldByRest,
    LeftOver,
    LimitsMeet,
    Needed,
    NoCombination,
    NoFilling,
    NoPartner,
    NoRun,
    OneCombination,
    OnlyDigits,
    OnlyIn,
    Reached,
    SameDigit,
    Steps,
    TooNear,
)
from bookmaker.reasons.patterns import (
    Chain,
    Fish,
    HiddenSubset,
    LinkedWing,
    Locked,
    NakedSubset,
    PivotWing,
    SeenByAll,
)
from bookmaker.reasons.singles import Fixed, FromProof, HiddenSingle, LastCell, NakedSingle
from bookmaker.reasons.throughmarks import EitherWay, ExtendedChain
from bookmaker.reasons.whatif import Refuted

Single: TypeAlias = LastCell | HiddenSingle | NakedSingle | Fixed | FromProof
"""Claims that place a digit."""

Pattern: TypeAlias = Locked | NakedSubset | HiddenSubset | Fish | SeenByAll | PivotWing | LinkedWing | Chain
"""Claims of techniques that look at candidates only; the houses and areas of a rule serve them as well."""

ThroughMarks: TypeAlias = EitherWay | ExtendedChain
"""Claims about candidates and what one mark at a time says of them."""

ByMark: TypeAlias = (
    Apart
    | Beside
    | BesideAll
    | Bounds
    | CommonSum
    | CountsTo
    | Enclosed
    | FirstDigits
    | HeldByRest
    | LeftOver
    | LimitsMeet
    | Needed
    | NoCombination
    | NoFilling
    | NoPartner
    | NoRun
    | OneCombination
    | OnlyDigits
    | OnlyIn
    | Reached
    | SameDigit
    | Steps
    | TooNear
)

Claim: TypeAlias = Single | Pattern | ThroughMarks | Refuted | ByMark


@dataclass(frozen=True, slots=True)
class Spoken:
    """What a claim speaks of, each once, in order."""

    cells: tuple[int, ...]
    digits: tuple[int, ...]
    houses: tuple[HouseRef, ...]


def spoken(claim: Claim) -> Spoken:
    """The cells, digits and houses of a claim, told by the types that it declares for its members."""
    found: dict[str, dict[Any, None]] = {"cells": {}, "digits": {}, "houses": {}}
    for what, values in _spoken_in(claim):
        found[what].update(dict.fromkeys(values))
    return Spoken(*(tuple(values) for values in found.values()))


def _spoken_in(part: Any) -> Iterator[tuple[str, Iterable[Any]]]:
    """The same bit by bit, each as cells, digits or houses."""
    for name, role in members(part.__class__):
        value = getattr(part, name)
        if value is None:
            continue
        match role:
            case "Cell":
                yield "cells", (value,)
            case "Cells":
                yield "cells", value
            case "Digit":
                yield "digits", (value,)
            case "Digits":
                yield "digits", value
            case "tuple[Digits, ...]":
                yield "digits", (digit for digits in value for digit in digits)
            case "Candidate":
                yield "cells", value[:1]
                yield "digits", value[1:]
            case "tuple[Candidate, ...]":
                yield "cells", (cell for cell, _ in value)
                yield "digits", (digit for _, digit in value)
            case "HouseRef" | "HouseRef | None":
                yield "houses", (value,)
            case "Houses":
                yield "houses", value
            case "Spans":
                yield "cells", (cell for cell, _, _ in value)
            case "tuple[ChainLink, ...]" | "tuple[ExtendedLink, ...]" | "tuple[Link, ...]":
                for inner in value:
                    yield from _spoken_in(inner)
            case "End":
                yield from _spoken_in(value)
            case "MarkRef" | "MarkRef | None" | "Marks" | "int" | "bool" | "tuple[int, ...]":
                pass
            case _:
                raise TypeError(f"{type(part).__name__}.{name} has no role in roles.py")


def argument(claim: Claim) -> tuple[Any, ...]:
    """What makes it the same argument on another board: all its members but those that vary with the candidates there
    (`varies`), and the cells of bounds, but not how narrow they are."""
    if isinstance(claim, Bounds):
        return tuple(cell for cell, _, _ in claim.spans)
    kind: Any = type(claim)
    varies = getattr(kind, "varies", ())
    return tuple(getattr(claim, name) for name, _ in members(kind) if name not in varies)


def name_of(claim: Claim) -> str:
    """“locked”, “naked-subset”: what a claim is called where it is data."""
    return "".join(f"-{c.lower()}" if c.isupper() else c for c in type(claim).__name__).removeprefix("-")


@cache
def members(kind: Any) -> tuple[tuple[str, str], ...]:
    """Names of the members of a claim, or of a part of one, each with the name of its type (`roles.py`)."""
    return tuple((field.name, str(field.type)) for field in fields(kind))
