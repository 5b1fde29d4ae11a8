"""The book's own words: headings, the page on how to read it, and what a draft says of a flawed puzzle.

In: plain facts about the book. Out: sentences, ready to set.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import assert_never

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.manifest.dates import When
from bookmaker.manifest.entries import Manifest
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed, sentence_case
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict

CONTENTS = "Contents"
FOREWORD = "Foreword"
GUIDE = "How to read this book"
TEXT_GUIDE = "How to read this edition"
PRIMER = "Primer: the rules, one by one"
HINTS = "Hints"
CELL_NAMES = "Cells are named by row and column: r5c2 is in row 5, column 2."
HOUSES = "A house is a row, a column, a box or region, or any other set of cells in which no digit repeats."
HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    f"it, and the next is never in sight. {CELL_NAMES}"
)
SHEET_HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    f"it: cover those below with a sheet of paper. {CELL_NAMES}"
)
TEXT_HINTS_NOTE = (
    "There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before "
    "it. Open only the one you want."
)
HINT_LEVELS = ("Where to look", "What to look for", "The next step")
KEYS = "Solution keys"
CREDITS = "Credits"
INDEX = "Index"
INDEX_NOTE = "Figures are puzzle numbers."
BY_SETTER = "By setter"
BY_RULE = "By rule"
NOTES = "Notes"
ANSWER_KEY = "Answer key"

_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
"""Not strftime's, which differ from machine to machine."""


def date_in_words(day: date | When) -> str:
    """“14 March 2026”, “March 2026” or “2026”, as exact as it is known."""
    month = _MONTHS[day.month - 1] if day.month else ""
    return " ".join(str(part) for part in (day.day, month, day.year) if part)


def as_sentence(text: str) -> str:
    """What an editor typed, with a capital and a full stop, so that it can stand beside other sentences."""
    return sentence_case(text) + ("." if text[-1:].isalnum() or text[-1:] == ")" else "")


def shared_permission(puzzles: Sequence[BookPuzzle]) -> str:
    """The permission that holds for all puzzles and so is printed once; "" where they differ."""
    permissions = {puzzle.permission for puzzle in puzzles}
    return permissions.pop() if len(permissions) == 1 else ""


CREDITED = " After the keys come the credits: when puzzles were first shown, and who gave permission."


def with_credits_of_their_own(puzzles: Sequence[BookPuzzle]) -> tuple[BookPuzzle, ...]:
    """The puzzles that were shown before or have a permission that is not that of all."""
    shared = shared_permission(puzzles)
    return tuple(puzzle for puzzle in puzzles if puzzle.shown or (puzzle.permission and not shared))


def set_by(setters: Sequence[str]) -> str:
    """Who set the puzzles of a book."""
    return as_sentence(f"Puzzles by {listed(setters)}")


def kinds(puzzle: RuledPuzzle) -> tuple[str, ...]:
    """What a puzzle is: its grid, unless that is the usual one and rules say more, and its rules (“Thermometers”)."""
    titles = tuple(smart_quotes(rule.title) for rule in puzzle.rules)
    return titles if puzzle.grid.box and titles else (sentence_case(puzzle.grid.called), *titles)


def proved(draft: bool) -> str:
    """What is known of the puzzles of a book."""
    if draft:
        return "This is a draft: a puzzle in it may have no solution, or several."
    return (
        "Every puzzle has exactly one solution: each was checked exhaustively before printing, and its solution was "
        "then checked against the rules."
    )


def guide(manifest: Manifest, draft: bool, hinted: bool, credited: bool) -> tuple[str, ...]:
    """How to read the book, a paragraph each; `hinted` if it has hints, `credited` if it has a page of credits."""
    first, last = manifest.band_names[0], manifest.band_names[-1]
    as_listed = any(chapter.listed for chapter in manifest.chapters)
    order = {
        "difficulty": "The puzzles are in order of difficulty, gentlest first.",
        "listed": "The puzzles are in the order the editor chose.",
        "chapters": "The puzzles are grouped in chapters, each with the gentlest first.",
    }["listed" if as_listed else manifest.order]
    hints = (
        " If you get stuck, turn to the three hints for each puzzle, before the keys: where to look, what to look for, "
        "and the next step."
        if hinted
        else ""
    )
    return (
        "Beside each title a ridge of five peaks shows how hard the puzzle is. It fills from the left, peak by peak, "
        f"from {first} to {last}. The figure with it is the difficulty: the digit before the point counts the peaks, "
        f"the digit after it shows how close the next one is. {order}",
        "The rules given with a grid are complete, and all apply at once. Each kind of mark is drawn again beside the "
        "sentence that explains it. The grids are made for pencil: you can write over every mark.",
        f"{CELL_NAMES} {HOUSES}",
        f"{proved(draft)}{hints} The solution keys are at the back, with the givens in bold. The line under each key "
        "charts the solve, rising where a step takes more searching; arrowheads mark the sticking points."
        f"{CREDITED if credited else ''}",
    )


IN_A_PAD = (
    ("for each puzzle, before the keys:", "for each puzzle, after the last sheet:"),
    ("The solution keys are at the back,", "The solution keys are on the backs of their sheets,"),
    ("After the keys come the credits:", "At the end come the credits:"),
)
"""What the guide says otherwise where each key stands on the back of its puzzle."""


def text_guide(band_names: Sequence[str], draft: bool, pictured: bool) -> tuple[str, ...]:
    """The same for an edition without pages, which tells marks in words; `pictured` if it has pictures as well."""
    first, last = band_names[0], band_names[-1]
    where = (
        "Below its picture each grid is told once more, in words and as a table, to be unfolded."
        if pictured
        else "Below each rule stand its marks."
    )
    return (
        proved(draft),
        "Rows are numbered from top to bottom, columns from left to right, and a blank is a cell to fill. Where rows "
        "and columns are named together, all cells are meant in which they meet; the cells of a line are named in its "
        f"order, so that its columns or rows may run backwards. {where}",
        f"The band of a puzzle, from {first} to {last}, says how hard it is. Its difficulty is a figure: the digit "
        "before the point counts the bands, the digit after it shows how close the next one is.",
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


TERMS = "Words in the hints"
TERMS_POINTER = "Words that may be new are explained on page "
OVERLEAF = ("The second hints are overleaf.", "The third hints are overleaf.")
TURN_OVER = "The rules of the next puzzle face its grid."
TIMES = "Times"
RULES_HERE = "For every puzzle of this chapter:"
RULES_COMPLETE = "The rules given with a grid are complete,"
RULES_COMPLETE_WITH_SHARED = "The rules given with a grid and where its chapter opens are complete,"
"""What the guide says in place of that where rules are shared."""
DATE, TIME = "Date", "Time"
BELONGS = "This book belongs to"
BEGUN, FINISHED = "Begun on", "Finished on"
GLOSSARY = (
    (
        "Alternating chain",
        ("alternating chain",),
        "Cells and digits linked so that if one fails the next holds. "
        "Whichever end of the chain is true, a digit that both ends rule out is gone.",
    ),
    (
        "Cell seen by all places of a digit",
        ("every place of a digit",),
        "Wherever the digit goes in a house, it rules itself out in one cell outside: that cell cannot hold it.",
    ),
    ("Combination", ("combination",), "A set of digits that has the total asked for and may stand in the cells."),
    (
        "Contradiction",
        ("contradiction",),
        "A cell without a digit, a digit without a place, or a mark that cannot be met. What led there was wrong.",
    ),
    (
        "Eliminate",
        ("eliminated",),
        "To rule a digit out for a cell. What is not yet eliminated are the cell’s "
        "candidates, which many solvers note small in its corner.",
    ),
    (
        "Finned pattern",
        ("finned",),
        "An X-wing or a larger fish that is spoilt by a place or two, the fins. What both the "
        "pattern and each fin rule out is gone all the same.",
    ),
    (
        "Hidden pair, triple, quad",
        ("same two places", "share three places", "share four places"),
        "Two digits with the "
        "same two places in a house need both cells for themselves, whatever else seemed possible there. So do three "
        "digits with three places, and four with four.",
    ),
    (
        "Hidden single",
        ("only one place", "only place"),
        "A digit that fits in one cell of a house only, even if that cell "
        "could take others. Look where the digit already stands near by.",
    ),
    (
        "House",
        ("row", "column", "box", "region"),
        "A row, a column, a box or region, or any other set of cells in which no digit repeats.",
    ),
    (
        "Step beyond the ladder",
        ("beyond the ladder",),
        "No pattern that is named here gets any further; the digit is known from the proof that there is one solution.",
    ),
    ("Jellyfish", ("jellyfish",), "A swordfish with four rows and four columns."),
    (
        "Last empty cell",
        ("last empty cell",),
        "Of a house that is full but for one cell, that one takes the digit that is missing.",
    ),
    (
        "Locked candidates",
        ("all share another",),
        "Where all places for a digit in one house lie in a second house as "
        "well, the digit is used up there: it goes nowhere else in the second.",
    ),
    (
        "Mark",
        ("mark",),
        "What is printed in a grid, or beside it, for one of its rules: a thermometer, a cage, a dot, a clue outside.",
    ),
    (
        "Naked pair, triple, quad",
        ("same two digits left", "three digits left", "four digits left"),
        "Two cells of a house "
        "with the same two digits left use both of them up, so no other cell of the house takes one. The same goes for "
        "three cells with three digits, and four with four.",
    ),
    (
        "Naked single",
        ("only one possible digit", "can only be"),
        "A cell for which its row, column, box and marks together leave one digit. Count what it sees.",
    ),
    (
        "See",
        ("sees", "seen"),
        "Two cells see each other if they cannot hold the same digit, as they share a house or a rule says so.",
    ),
    (
        "Single-digit chain",
        ("single-digit chain",),
        "Places of one digit, two to a house, linked end to end. One end or the "
        "other is true, so a cell that sees both cannot hold the digit.",
    ),
    ("Swordfish", ("swordfish",), "An X-wing with three rows and three columns."),
    (
        "Whole cages",
        ("adds up to 45",),
        "The digits 1 to 9 add up to 45. Take away the cages that lie inside a house, and "
        "what is left belongs to its other cells.",
    ),
    (
        "W-wing",
        ("w-wing",),
        "Two cells with the same two digits left, joined by a house where one of the two has but two "
        "places, each seen by one of the cells. The other digit is in one of them, so a cell that sees both cannot "
        "hold it.",
    ),
    (
        "What-if",
        ("suppose", "what-if", "soon leads"),
        "Try a digit in the mind, follow what is forced, and strike it if "
        "that ends in a contradiction. Keep to short ones.",
    ),
    (
        "X-wing",
        ("x-wing",),
        "Two rows in which a digit has the same two columns only. It stands in opposite corners, so "
        "these columns have it nowhere else. Rows and columns may change places.",
    ),
    (
        "XY-wing",
        ("xy-wing",),
        "A cell with two digits left that sees two others, each sharing one of its digits and both a "
        "third. Whatever the first holds, one of the others is the third, so a cell that sees both is not.",
    ),
    (
        "XYZ-wing",
        ("xyz-wing",),
        "An XY-wing whose first cell may hold the third digit too. Only cells that see all three lose it.",
    ),
)
"""What solvers' words mean: the name, what hints that need it say, and the meaning."""
