"""The book's own words: headings, the page on how to read it, and what a draft says of a flawed puzzle.

In: plain facts about the book. Out: sentences, ready to set.
"""

from __future__ import annotations

from datetime import date
from typing import assert_never

from bookmaker.manifest.model import Manifest
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import sentence_case
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict

CONTENTS = "Contents"
FOREWORD = "Foreword"
GUIDE = "How to read this book"
TEXT_GUIDE = "How to read this edition"
PRIMER = "The rules, one by one"
HINTS = "Hints"
CELL_NAMES = "Cells are named by row and column: r5c2 is in row 5, column 2."
HOUSES = "A house is a set of cells that no digit may repeat in: a row, a column, a box or region."
HINTS_NOTE = (
    "There are three hints for every puzzle, for the place where solvers get stuck first. Each gives away more than "
    f"the one before it, and the next is never in sight of it. {CELL_NAMES}"
)
HINT_LEVELS = ("Where to look", "What to look for", "How it goes on")
KEYS = "Solution keys"
CREDITS = "Credits"
INDEX = "Index"
INDEX_NOTE = "The figures are the numbers of the puzzles."
BY_SETTER = "By setter"
BY_RULE = "By kind of rule"
NOTES = "Notes"
ANSWER_KEY = "Answer key"

_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
"""Not strftime's, which differ from machine to machine."""


def date_in_words(day: date) -> str:
    """“14 March 2026”."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


def kinds(puzzle: RuledPuzzle) -> tuple[str, ...]:
    """What a puzzle is: its grid, unless that is the usual one and rules say more, and its rules (“Thermometers”)."""
    titles = tuple(rule.title for rule in puzzle.rules)
    return titles if puzzle.grid.box and titles else (sentence_case(puzzle.grid.called), *titles)


def proved(draft: bool) -> str:
    """What is known of the puzzles of a book."""
    if draft:
        return "This is a draft: its puzzles may still be without a solution, or have several."
    return (
        "Every puzzle has exactly one solution. Each was searched through to the end before it was set, and its "
        "solution was checked once more against the rules."
    )


def guide(manifest: Manifest, draft: bool, hinted: bool) -> tuple[str, ...]:
    """How to read the book, a paragraph each; `hinted` if it has hints."""
    first, last = manifest.band_names[0], manifest.band_names[-1]
    order = {
        "effort": "The puzzles stand in order of effort, the gentlest first.",
        "listed": "The puzzles stand in the order their editor chose.",
        "chapters": "The puzzles stand in chapters, and within each the gentlest comes first.",
    }[manifest.order]
    hints = (
        " If you get stuck, there are three hints for each puzzle before the keys: where to look, what to look for, "
        "and how it goes on."
        if hinted
        else ""
    )
    return (
        "Beside each title a ridge of five peaks shows how hard the puzzle is. It is filled from the left, peak by "
        f"peak, from {first} to {last}. The figure with it is the effort: how much looking the puzzle asks of somebody "
        f"who takes the easiest step every time. {order}",
        "The rules given with a grid are complete, and all of them hold together. Where a puzzle has marks, each kind "
        "is drawn once more beside the sentence that explains it. The grids are made for pencil: you can write over "
        "every mark.",
        f"{CELL_NAMES} {HOUSES}",
        f"{proved(draft)}{hints} The solution keys stand at the back; their bold digits are those that the puzzle gave "
        "you. The line under a key is the walk to its solution, higher where a step asks for more; a mark stands over "
        "the narrow points. After the keys come the credits: who set each puzzle, when it was first shown, and by "
        "whose leave it is printed.",
    )


def flaw(verdict: Verdict) -> str:
    """What a draft prints in place of a key; nothing for a proven puzzle."""
    match verdict:
        case Unique():
            return ""
        case NoSolution():
            return "No solution"
        case Several():
            return "More than one solution"
        case Undecided():
            return "Not decided"
        case _ as never:
            assert_never(never)
