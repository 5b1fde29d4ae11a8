"""What a story says, as values: one for each kind of sentence that a presenter needs. The words are in `phrases`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.marks import MarkRef
from bookmaker.reasons.reason import Reason
from bookmaker.reasons.roles import Cell, Cells, Digit, Digits
from bookmaker.reasons.singles import HiddenSingle, LastCell, NakedSingle

Candidates: TypeAlias = tuple[Candidate, ...]
Seen: TypeAlias = LastCell | HiddenSingle | NakedSingle


# What lies on the table


@dataclass(frozen=True, slots=True)
class Table:
    """The grid and how many givens it has; `regions` are “boxes”, “irregular” or “none”; “holes” where there are some,
    “overlap” where there are several `grids`."""

    size: int
    givens: int
    regions: str
    grids: int = 1


@dataclass(frozen=True, slots=True)
class RuleSaid:
    """A rule in its own sentence."""

    text: str


@dataclass(frozen=True, slots=True)
class Symmetry:
    """A turn or reflection maps the puzzle onto itself; the digits of each cycle go over into each other."""

    turn: str
    cycles: tuple[Digits, ...]


@dataclass(frozen=True, slots=True)
class Introduction:
    """What is to come: how often the singles run out, and how many eliminations it takes at most to go on; at how many
    filled cells the hard moment is (None: there is none), and whether that is the very start; without either, whether
    there are bottlenecks, and the least choice of singles."""

    band: str
    stuck: int
    longest: int
    crux_at: int | None
    at_start: bool
    bottlenecks: bool
    choice: int


# Placements


@dataclass(frozen=True, slots=True)
class Places:
    """A single; `last_of_digit` where the digit is complete by it, `first` where a passage begins with it."""

    single: Seen
    last_of_digit: bool
    first: bool


@dataclass(frozen=True, slots=True)
class Leaves:
    """A single that the placement told right before it has made one."""

    single: Seen


@dataclass(frozen=True, slots=True)
class Opens:
    """A single that the eliminations told right before it have made one."""

    single: Seen


@dataclass(frozen=True, slots=True)
class Run:
    """Several of one digit: the last ones, or each following from the one before, or all in a band of boxes (“top”,
    “left” …), or just so; `starts` where the path begins with them."""

    digit: Digit
    cells: Cells
    completes: bool
    chained: bool
    band: str
    starts: bool


@dataclass(frozen=True, slots=True)
class Fills:
    """A house is filled up by several placements."""

    house: HouseRef
    placed: Candidates


@dataclass(frozen=True, slots=True)
class WithImage:
    """A single and its mirror image."""

    single: Seen
    image: Candidate


@dataclass(frozen=True, slots=True)
class RunWithImages:
    """Several of one digit, each with its mirror image."""

    digit: Digit
    cells: Cells
    other: Digit
    images: Cells


@dataclass(frozen=True, slots=True)
class SeenInHouse:
    """A hidden single in full: the digits that look into its house, and whether earlier eliminations or marks help."""

    single: LastCell | HiddenSingle
    lookers: Cells
    struck: bool
    marked: bool
    starts: bool


@dataclass(frozen=True, slots=True)
class SeenInCell:
    """A naked single in full: which houses (None: other cells in sight) hold which digits, and which digits went by
    which reason (None: by the cell's own mark)."""

    single: NakedSingle
    holders: tuple[tuple[HouseRef | None, Digits], ...]
    strikers: tuple[tuple[Reason | None, Digits], ...]


@dataclass(frozen=True, slots=True)
class StartsHere:
    """The path begins with what comes next."""


@dataclass(frozen=True, slots=True)
class Fixes:
    """What the marks of a kind fix before anything else."""

    kind: str
    marks: int
    placed: Candidates


@dataclass(frozen=True, slots=True)
class TakenFromProof:
    """What no technique reaches."""

    placed: Candidates


@dataclass(frozen=True, slots=True)
class FallsIntoPlace:
    """The last placements; `short` where they are few."""

    placed: Candidates
    short: bool


# Where it gets narrow


@dataclass(frozen=True, slots=True)
class Few:
    """There are only so many singles, all of them naked or not; perhaps the hard moment."""

    filled: int
    singles: int
    naked: bool
    crux: bool


@dataclass(frozen=True, slots=True)
class Stuck:
    """No single is left; at the `start` there is none to begin with. The hard moment says what is needed."""

    filled: int
    start: bool
    crux: bool
    needs: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Aim:
    """What a long fight is for: a single, and the candidates that must go for it."""

    single: Seen
    rivals: Candidates


# Eliminations


@dataclass(frozen=True, slots=True)
class Names:
    """The technique of what comes next is met for the first time."""

    reason: Reason


@dataclass(frozen=True, slots=True)
class Eliminates:
    """Candidates go, for a reason. Several what-ifs that end in the same way are told as one."""

    reason: Reason
    removed: Candidates


@dataclass(frozen=True, slots=True)
class SameHolds:
    """The same is true of another mark as of the one before it."""

    reason: Reason
    removed: Candidates


@dataclass(frozen=True, slots=True)
class BySymmetry:
    """Mirror images of what was just eliminated go as well; `opens` where they make a single of the last one's
    image."""

    removed: Candidates
    opens: Candidate | None


@dataclass(frozen=True, slots=True)
class WhatIfsFollow:
    """Several what-ifs, and what they share: a house and a digit without a place, a mark that they break, a kind of
    mark, a digit, a cell or a house that they are tried in; nothing."""

    count: int
    house: HouseRef | None = None
    digit: Digit | None = None
    mark: MarkRef | None = None
    kind: str = ""
    tried_digit: Digit | None = None
    tried_cell: Cell | None = None
    tried_house: HouseRef | None = None


@dataclass(frozen=True, slots=True)
class MoreAlike:
    """Further what-ifs of the kind just told, folded into one sentence."""

    count: int
    removed: Candidates


Utterance: TypeAlias = (
    Table
    | RuleSaid
    | Symmetry
    | Introduction
    | Places
    | Leaves
    | Opens
    | Run
    | Fills
    | WithImage
    | RunWithImages
    | SeenInHouse
    | SeenInCell
    | StartsHere
    | Fixes
    | TakenFromProof
    | FallsIntoPlace
    | Few
    | Stuck
    | Aim
    | Names
    | Eliminates
    | SameHolds
    | BySymmetry
    | WhatIfsFollow
    | MoreAlike
)
