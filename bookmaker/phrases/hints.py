"""The words of hints: where a solver should look, and for what.

In: what is to be found. Out: sentences that give away no digit and no cell that is filled.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.phrases.phrasebook import Phrasebook
from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons import Reason
from bookmaker.reasons.claims import name_of
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.singles import Fixed


def where_said(words: Phrasebook, where: str, filled: int | None) -> str:
    """The first hint: a place, and how many cells stand by then (None: the givens alone)."""
    if filled is None:
        return words.sentence("hint-where-at-start", where=where)
    return words.sentence("hint-where", filled=str(filled), where=where)


def lines_said(words: Phrasebook, lines: Sequence[HouseRef]) -> str:
    """“rows 2, 5 and 7”."""
    return str(words.houses(lines))


def cells_said(words: Phrasebook, cells: Sequence[int]) -> str:
    """“the cells r1c2 and r5c2”."""
    return words.say("hint-cells", cells=words.cells(cells))


def around_said(words: Phrasebook, cell: int) -> str:
    """“the cells around r5c5”."""
    return words.say("hint-around", cell=words.cell(cell))


def what_said(words: Phrasebook, reason: Reason) -> str:
    """The second hint: what kind of step it is."""
    if isinstance(reason.claim, Fixed):
        return words.sentence("hint-what-fixed")
    if reason.technique == MARK and reason.mark:
        name = words.first(f"hint-what-mark--{reason.kind}", "hint-what-mark")
        return words.sentence(name, noun=words.noun(reason.kind))
    own = f"hint-what-{reason.technique}"
    if words.catalogue.has(own):
        return words.sentence(own)
    if words.catalogue.has(f"technique-{reason.technique}"):
        return words.sentence("hint-what", technique=words.say(f"technique-{reason.technique}", "one"))
    return words.sentence(f"hint-what-{name_of(reason.claim)}")
