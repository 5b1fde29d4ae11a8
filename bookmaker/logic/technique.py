"""What a solving technique is, and where they are found: one file each in `techniques/`, discovered by folder.

In: a `State`. Out: `Finding`s, all of them, since the effort of a step depends on how many there are to find.
"""

from __future__ import annotations

import importlib
import inspect
import pkgutil
from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from typing import ClassVar

from bookmaker.logic import techniques
from bookmaker.logic.state import State
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung


@dataclass(frozen=True, slots=True)
class Finding:
    """One instance of a technique: candidates (cell, digit) that can go, and why.

    `cells` are where to look. `reach` is how far a person must think ahead: links of a chain, rounds of a what-if,
    0 for a pattern seen at once. `reason` gives the reason; it is asked for only if the step is taken.
    `by_mark` says that one mark shows it by itself.
    `again`, where only the nearest findings of a technique are yielded, says whether another state has this one, too.
    """

    rung: Rung
    cells: tuple[int, ...]
    removed: tuple[Candidate, ...]
    reason: Callable[[], Reason]
    reach: int = 0
    by_mark: bool = False
    again: Callable[[State], bool] | None = None


class Technique(ABC):
    """A way to strike candidates. A class with a name and a rung of the ladder is one; without, a base.

    The name is a key; what the trade calls it, each language says in `phrases`. Where a technique has several names,
    as fish have by their size, `step_names` are those of its steps.
    """

    name: ClassVar[str]
    step_names: ClassVar[tuple[str, ...]] = ()
    rung: ClassVar[Rung]
    by_digit: ClassVar[bool] = False
    """Is each instance about one digit, and looked for on this digit's board alone?"""

    @property
    def names(self) -> tuple[str, ...]:
        """The keys of its steps."""
        return self.step_names or (self.name,)

    @abstractmethod
    def find(self, state: State) -> Iterator[Finding]:
        """All instances in a state; each is sound, and each strikes at least one candidate that still stands."""

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        """Those among them that strike these candidates, and perhaps others."""
        return self.find(state)


@cache
def ladder() -> tuple[tuple[Technique, ...], ...]:
    """The techniques of every rung that has some, the lowest rung first; within a rung in the order of their files."""
    rungs: dict[Rung, list[Technique]] = {}
    for module_info in pkgutil.iter_modules(techniques.__path__):
        module = importlib.import_module(f"{techniques.__name__}.{module_info.name}")
        for kind in vars(module).values():
            if not inspect.isclass(kind) or kind.__module__ != module.__name__ or not issubclass(kind, Technique):
                continue
            if "name" in vars(kind):
                rungs.setdefault(kind.rung, []).append(kind())
    return tuple(tuple(rungs[rung]) for rung in sorted(rungs))
