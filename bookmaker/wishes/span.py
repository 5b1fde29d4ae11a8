"""Numbers within limits as people say them: “4 to 6”, “at most 24”, “at least 3”, “5”.

In: a node. Out: a `Span`, or None with the diagnostic in the collector.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from bookmaker.source.diagnostics import Collector, quoted
from bookmaker.source.placed import Node, Word

_NUMBER = r"(\d{1,4}(?:\.\d{1,2})?)"
FORMS = (
    (re.compile(rf"(?:exactly )?{_NUMBER}"), (1, 1)),
    (re.compile(rf"{_NUMBER} ?(?:to|-|–) ?{_NUMBER}"), (1, 2)),
    (re.compile(rf"at least {_NUMBER}"), (1, 0)),
    (re.compile(rf"at most {_NUMBER}"), (0, 1)),
)
"""Each form with the groups of its least and its most; 0 where that is open."""


@dataclass(frozen=True, slots=True)
class Span:
    """From `least` to `most`, both included."""

    least: float
    most: float

    def __contains__(self, number: float) -> bool:
        return self.least <= number <= self.most

    def distance(self, number: float) -> float:
        """How far a number lies outside; 0 within."""
        return max(self.least - number, number - self.most, 0.0)

    @property
    def whole(self) -> tuple[int, int]:
        """Both ends as whole numbers."""
        return int(self.least), int(self.most)

    def __str__(self) -> str:
        return f"{self.least:g}" if self.least == self.most else f"{self.least:g} to {self.most:g}"


def read_span(node: Node, what: str, collector: Collector, within: Span, whole: bool = True) -> Span | None:
    """A span inside `within`, whose ends stand in where one is open."""
    text = node.value.strip() if isinstance(node, Word) else ""
    for form, (low, high) in FORMS:
        if found := form.fullmatch(text):
            least = float(found[low]) if low else within.least
            most = float(found[high]) if high else within.most
            if whole and "." in text:
                break
            if least > most:
                collector.error(
                    node.place, "span-backward", f"{what} runs from {least:g} down to {most:g}", "turn it round"
                )
                return None
            if least not in within or most not in within:
                collector.error(node.place, "out-of-range", f"{what} should lie within {within}, not {quoted(text)}")
                return None
            return Span(least, most)
    such_as = "5, 4 to 6, at least 4 or at most 6" if whole else "2.5, 2 to 3.5, at least 2 or at most 3"
    said = f"{what} is left empty" if isinstance(node, Word) and not text else f"{what} should be a number or a span"
    collector.error(node.place, "not-a-span", said, f"such as {such_as}")
    return None
