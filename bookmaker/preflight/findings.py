"""What is wrong in a file, gathered page by page.

In: findings as the checks make them. Out: one diagnostic for each kind, with all the pages it is found on.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import groupby

from bookmaker.source.diagnostics import Diagnostic, Place


@dataclass(slots=True)
class Findings:
    """What is wrong, gathered by kind: (code, text, hint, warning) → the pages it is found on, from 1."""

    pages: dict[tuple[str, str, str, bool], list[int]] = field(default_factory=dict)

    def add(self, page: int, code: str, text: str, hint: str = "", warning: bool = False) -> None:
        """Note something on a page, later than those noted before; page 0 is the file as a whole."""
        found = self.pages.setdefault((code, text, hint, warning), [])
        if page not in found[-1:]:
            found.append(page)

    def add_all(self, others: Findings) -> None:
        """Note what was found on later pages."""
        for kind, pages in others.pages.items():
            self.pages.setdefault(kind, []).extend(pages)

    def diagnostics(self, file: str) -> tuple[Diagnostic, ...]:
        """One diagnostic of the file for each kind, in the order of the first page it is found on."""
        place = Place(file)
        listed = []
        for (code, text, hint, warning), pages in self.pages.items():
            where = f"{_pages(pages)}: " if pages != [0] else ""
            listed.append((pages[0], Diagnostic(place, code, where + text, hint, warning=warning)))
        return tuple(diagnostic for _, diagnostic in sorted(listed, key=lambda one: one[0]))


def _pages(pages: Iterable[int]) -> str:
    """“page 3” or “pages 1–4, 7”."""
    runs = [[page for _, page in run] for _, run in groupby(enumerate(pages), lambda pair: pair[1] - pair[0])]
    said = ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in runs)
    return ("page " if sum(map(len, runs)) == 1 else "pages ") + said
