"""What is wrong with a book, and where: the one vocabulary in which every room reports mistakes.

In: facts found while reading a manifest, a layout, a picture or a finished PDF.
Out: `Diagnostic` values with a place, a text in the user's words and a hint how to mend it; `BookErrors`
carries all of them at once to the command line, which prints them in file order.
"""

from __future__ import annotations

import os
import re
import shlex
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from difflib import get_close_matches
from subprocess import list2cmdline

LINE_BREAK = re.compile("\r\n|[\r\n\x85\u2028\u2029]")
"""What ends a line in every file that places point into."""


@dataclass(frozen=True, order=True, slots=True)
class Place:
    """A position in a file: `line` and `column` count from 1; line 0 means the file as a whole."""

    file: str
    line: int = 0
    column: int = 0

    def __str__(self) -> str:
        return f"{self.file}:{self.line}:{self.column}" if self.line else self.file


@dataclass(frozen=True, slots=True)
class Diagnostic:
    """One mistake: where it is, a short `code` for tests, what is wrong, and how to mend it.

    `also` are further places of the same file that are shown with a caret. A `warning` never stops a book.
    """

    place: Place
    code: str
    text: str
    hint: str = ""
    also: tuple[Place, ...] = ()
    warning: bool = False


class BookErrors(Exception):
    """Everything wrong with a book, in file order. The command line prints it and exits with 1."""

    def __init__(self, diagnostics: Iterable[Diagnostic]) -> None:
        self.diagnostics = in_file_order(diagnostics)
        super().__init__(f"{len(self.diagnostics)} diagnostic(s)")

    def __reduce__(self) -> tuple[type[BookErrors], tuple[tuple[Diagnostic, ...]]]:
        """They also come out of another process."""
        return type(self), (self.diagnostics,)


def in_file_order(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """Sort diagnostics by file, line and column, mistakes before what is only worth a look; equal ones are said
    once."""
    return tuple(sorted(dict.fromkeys(diagnostics), key=lambda t: (t.warning, t.place, t.code, t.text)))


@dataclass(slots=True)
class Collector:
    """Collects diagnostics while a file is read, so that all of them are reported together."""

    found: list[Diagnostic] = field(default_factory=list)

    def error(self, place: Place, code: str, text: str, hint: str = "", also: tuple[Place, ...] = ()) -> None:
        """Note a mistake that stops the book."""
        self.found.append(Diagnostic(place, code, text, hint, also))

    def warn(self, place: Place, code: str, text: str, hint: str = "") -> None:
        """Note something worth a look that stops nothing."""
        self.found.append(Diagnostic(place, code, text, hint, warning=True))

    def errors(self) -> Iterator[Diagnostic]:
        """The mistakes so far, without the warnings."""
        return (diagnostic for diagnostic in self.found if not diagnostic.warning)

    def raise_errors(self) -> None:
        """Raise `BookErrors` with everything found, if there is at least one mistake among it."""
        if any(True for _ in self.errors()):
            raise BookErrors(self.found)


FORMER = {
    "between-line": "bounded-line",
    "effort": "difficulty",
    "region-sum-line": "equal-part-line",
    "slow-thermometer": "resting-thermometer",
    "zipper-line": "hinge-line",
}
"""Words of earlier versions, and what they are called now. Whoever still writes one is told the new one."""


def nearest(word: str, known: Iterable[str]) -> str:
    """A hint that names the known word nearest to a misspelt one, or its new name if it had another before; else it
    lists the known words."""
    choices = sorted(known)
    if FORMER.get(word.lower()) in choices:
        return f"it is called “{FORMER[word.lower()]}” now"
    close = [choice for choice in choices if choice.lower() == word.lower()]
    close = close or get_close_matches(word, choices, n=1, cutoff=0.6)
    return f"did you mean “{close[0]}”?" if close else "known here: " + ", ".join(choices)


def typed(path: object) -> str:
    """The name of a file or folder as it is typed on the command line, in quotation marks where it needs them."""
    name = str(path)
    return list2cmdline([name]) if os.name == "nt" else shlex.quote(name)


def quoted(text: str) -> str:
    """What somebody typed, in quotes and on one line, cut short where it is long: for use inside a message."""
    line = " ".join(text.split())
    return f"“{line}”" if len(line) <= 40 else f"“{line[:36].rstrip()} …”"
