"""What one has to know to follow steps, for a glossary.

In: told steps. Out: concepts by name: techniques, claims (`name_of`), those of a kind of rule (“left-over--cage”), what
claims lean on (their `concepts`), and what every board knows: “house”, “mark”, “eliminate”.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from bookmaker.reasons import Reason
from bookmaker.reasons.claims import name_of, spoken
from bookmaker.trace import Traced


def concepts_of(steps: Iterable[Traced]) -> frozenset[str]:
    """The concepts behind all these steps, the singles' own and those of what left them alone included."""
    return frozenset(concept for step in steps for concept in _of_step(step))


def _of_step(step: Traced) -> Iterator[str]:
    yield from concepts_behind(step.reason)
    if step.removed or step.view.struck or step.view.strikers:
        yield "eliminate"
    if step.view.marked or any(striker is None for striker, _ in step.view.strikers):
        yield "mark"
    if any(house for house, _ in step.view.holders):
        yield "house"
    for striker, _ in step.view.strikers:
        if striker:
            yield from concepts_behind(striker)


def concepts_behind(reason: Reason) -> Iterator[str]:
    """The concepts behind one reason, some perhaps twice."""
    claim = reason.claim
    yield from (reason.technique, name_of(claim))
    yield from getattr(claim, "concepts", ())
    if spoken(claim).houses:
        yield "house"
    if reason.mark:
        yield from ("mark", f"{name_of(claim)}--{reason.kind}")
