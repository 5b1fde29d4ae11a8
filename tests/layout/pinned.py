"""A small book with every part, and the sheets around it, for the tests that keep pages as they were.

Ratings, hints, story and scenes are made up here, so that only the pages are under test: a change of the grader or of
the wording of a path leaves them alone.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import cache

from bookmaker.book import Book, make_book
from bookmaker.book.contents import BookPuzzle, Chapter, HintPages, Hints, Index, IndexEntry, IndexGroup, Part, Rating
from bookmaker.book.contest import enter_contest
from bookmaker.book.wording import hint_levels
from bookmaker.display.items import Document, Group
from bookmaker.grade.solve_path import Grade, SolvePath
from bookmaker.language import catalogue
from bookmaker.layout import (
    compose,
    compose_cover,
    compose_crib,
    compose_handout,
    compose_key,
    compose_marker,
    impose,
    load_layout,
    press_sheets,
)
from bookmaker.manifest import entries as typed
from bookmaker.manifest.markup import Run
from bookmaker.manifest.publication import Cover, Imprint, Publication
from bookmaker.puzzle.position import Position
from bookmaker.tell.passages import Mood, Passage, Sentence, Story
from bookmaker.tell.scenes import Scene
from tests.layout.sample_book import sample_manifest, sample_proofs

ENGLISH = catalogue("en")

RATINGS = {
    "morning": Rating(2, "Ramble", 2.4, (3.0, 2.0, 9.0, 4.0, 2.0, 1.5, 1.0), (2,), 23),
    "stairs": Rating(4, "Climb", 4.7, (40.0, 22.0, 310.0, 60.0, 18.0, 7.0, 120.0, 9.0, 3.0, 1.0), (2, 6), 71),
}
HINTED = {
    "morning": Hints(
        "The bottom left box, to begin with.",
        "A digit that has only one place there.",
        "The 4 of the bottom left box goes to r6c2.",
    ),
    "stairs": Hints(
        "The thermometer at r1c2, with 21 cells filled.",
        "What the thermometer no longer allows.",
        "Along the thermometer from r1c2 four digits must rise, so 7, 8 and 9 go from its bulb.",
    ),
}
PUBLICATION = Publication(
    half_title=True,
    imprint=Imprint("Attic Press", "Second edition", date(2026, 3, 14), "978-0-11-000222-4", "© 2026 Attic Press"),
    foreword=(
        (Run("It "), Run("rained", "italic"), Run(", so we sharpened the pencils and went up to the attic window.")),
        (Run("It has two panes and "), Run("no curtain", "bold"), Run(".")),
    ),
    primer=True,
    index=True,
    fold=16,
    link="https://example.org/attic",
    cover=Cover(((Run("Two puzzles for a wet Sunday, and a window to look out of in between."),),), leaf=0.2),
)
PAPERBACK = 80
"""Pages of a book whose spine is lettered."""


@cache
def pinned_book() -> Book:
    """Two puzzles in two chapters, and every part that a manifest can ask for."""
    chapters = (typed.Chapter("The Low Rooms", "What stands in the house itself."), typed.Chapter("Under the Roof"))
    proofs = [
        replace(proof, entry=replace(proof.entry, chapter=at), grade=Grade(SolvePath((), True), 10.0 * at, 1, False))
        for at, proof in enumerate(proof for proof in sample_proofs() if proof.entry.id in RATINGS)
    ]
    manifest = replace(sample_manifest(), order="chapters", chapters=chapters, publication=PUBLICATION)
    made = make_book(manifest, proofs)
    body = [_told(part) for part in made.body]
    body.insert(len(chapters), HintPages(ENGLISH.say("heading-hints"), ENGLISH.say("hints-note"), hint_levels(ENGLISH)))
    return replace(made, body=tuple(body))


def _told(part: Part) -> Part:
    match part:
        case Chapter():
            return replace(part, puzzles=tuple(map(_rated, part.puzzles)))
        case Index():
            groups = (IndexGroup(group.heading, tuple(map(_entry, group.entries))) for group in part.groups)
            return replace(part, groups=tuple(groups))
        case _:
            return part


def _entry(entry: IndexEntry) -> IndexEntry:
    return replace(entry, puzzles=tuple(map(_rated, entry.puzzles)))


def _rated(puzzle: BookPuzzle) -> BookPuzzle:
    return replace(puzzle, rating=RATINGS[puzzle.id], hints=HINTED[puzzle.id])


@cache
def pinned_document() -> Document:
    return compose(pinned_book(), load_layout("a5-book"))


def sheets_book() -> Book:
    """The puzzles of the book as a handout takes them: in one run, without hints."""
    book = pinned_book()
    puzzles = tuple(replace(puzzle, hints=None) for puzzle in book.puzzles)
    return replace(book, body=(Chapter(1, "", "", puzzles),))


def contest() -> Book:
    return enter_contest(sheets_book(), (10, 35))


def crib(cups: int = 1) -> Document:
    """The crib of the smallest puzzle, with a picture of each sign; it ends with so many sentences."""
    puzzle = pinned_book().puzzles[0]
    grid, solution = puzzle.puzzle.grid, puzzle.solution
    assert solution is not None
    bare = Position(grid, (0,) * (grid.size + 1))
    cell = puzzle.puzzle.givens.index(0)
    pencil = Position(grid, (0, *(1 << cell if digit in (1, solution[cell]) else 0 for digit in grid.digits)))
    given = sum(map(bool, puzzle.puzzle.givens))
    board = Scene(
        "A",
        given,
        puzzle.puzzle.givens,
        pencil,
        2,
        (2,),
        look=(0,),
        shaded=tuple(range(grid.size)),
        struck=((cell, 1),),
        goes=cell,
    )
    story = Story(
        puzzle.title,
        puzzle.setter,
        (
            Passage(Mood.OPENING, (Sentence("Ten digits are given, and the paper is still warm."),)),
            Passage(Mood.CRUX, (Sentence("Look along the first row: its second cell is not a 1.", (2,)),)),
            Passage(Mood.ENDING, (Sentence("The rest is read over a second cup.", (3,)),) * cups),
        ),
    )
    start = Scene("The start", given, puzzle.puzzle.givens, bare)
    end = Scene("The solution", len(grid.cells), solution, bare)
    return compose_crib(puzzle, story, {2: board}, start, end, load_layout("a4-book"))


def cover() -> Document:
    return compose_cover(pinned_book(), load_layout("a5-book"), PAPERBACK)


def pressed_cover() -> Document:
    return press_sheets(bundled(cover()), load_layout("a5-book"))


def booklet() -> Document:
    """The first sheet of the booklet, front and back."""
    document = impose(pinned_document(), load_layout("a5-booklet"))
    return replace(document, pages=document.pages[:2])


def pressed() -> Document:
    """Two pages on their sheets for the press."""
    document = pinned_document()
    return press_sheets(bundled(replace(document, pages=document.pages[:2])), load_layout("a5-book"))


def bundled(document: Document) -> Document:
    """The document with all that stands on a page in one group, apart from what a press adds to it."""
    pages = (replace(page, items=(Group(page.items, name=f"page {page.label}"),)) for page in document.pages)
    return replace(document, pages=tuple(pages))


def of_part(anchor: str, after: int = 0) -> Document:
    """The page that a part begins on, or one so many after it."""
    document = pinned_document()
    at = next(at for at, page in enumerate(document.pages) if any(found.name == anchor for found in page.anchors))
    return replace(document, pages=(document.pages[at + after],), bookmarks=())


def outline() -> Document:
    return replace(pinned_document(), pages=())


def first_page(document: Document) -> Document:
    return replace(document, pages=document.pages[:1], bookmarks=())


def half_title() -> Document:
    return first_page(pinned_document())


PINNED: dict[str, Callable[[], Document]] = {
    "outline": outline,
    "half-title": half_title,
    "title": lambda: of_part("title"),
    "imprint": lambda: of_part("imprint"),
    "contents": lambda: of_part("contents"),
    "foreword": lambda: of_part("foreword"),
    "guide": lambda: of_part("guide"),
    "primer": lambda: of_part("primer"),
    "opener": lambda: of_part("chapter 1"),
    "puzzle": lambda: of_part("puzzle morning"),
    "puzzle-marks": lambda: of_part("puzzle stairs"),
    "hints": lambda: of_part("hints"),
    "hints-between": lambda: of_part("hints", 2),
    "keys": lambda: of_part("keys"),
    "index": lambda: of_part("index"),
    "notes": lambda: of_part("notes"),
    "notes-ruled": lambda: of_part("notes", 1),
    "key-alone": lambda: first_page(compose_key(pinned_book(), load_layout("a4-book-two"))),
    "cover": cover,
    "handout": lambda: first_page(compose_handout(sheets_book(), load_layout("a4-handout"), "foot")),
    "contest": lambda: first_page(compose_handout(contest(), load_layout("a4-handout"), "none")),
    "marker": lambda: first_page(compose_marker(contest(), load_layout("a4-handout"))),
    "crib": crib,
    "booklet": booklet,
    "press": pressed,
    "press-cover": pressed_cover,
}
"""Every document of which pages are kept, by the name of its file."""
