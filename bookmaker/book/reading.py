"""A book in words and digits, for readers who see no page: what the text edition, the web page and the e-book have.

In: a `Book`. Out: for each of its parts the blocks it is read as, in the order in which a person reads. The marks of a
puzzle are said by its rules. Exporters decide how a block looks, never what it says.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias, assert_never

from bookmaker.book import wording
from bookmaker.book.contents import (
    Book,
    BookPuzzle,
    Chapter,
    Contents,
    Credits,
    Foreword,
    Glossary,
    Guide,
    HalfTitle,
    HintPages,
    ImprintPage,
    Index,
    Keys,
    Part,
    Primer,
    TitlePage,
    WorkedFigure,
)
from bookmaker.book.rulestext import base_sentence
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import Catalogue, Manner
from bookmaker.language.figures import decimal_said
from bookmaker.manifest.markup import Run, Runs
from bookmaker.phrases.rulesentences import rules_said
from bookmaker.phrases.titles import title_of
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle, Sample
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.verdict import Solution


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading; `level` 2 is a part of the book, 3 a part of that. `name` is what links lead to."""

    level: int
    text: str
    name: str = ""


@dataclass(frozen=True, slots=True)
class Words:
    """A paragraph."""

    runs: Runs

    @property
    def text(self) -> str:
        return "".join(run.text for run in self.runs)


@dataclass(frozen=True, slots=True)
class Listing:
    """A paragraph that introduces a list, and the list. Where it is a rule that draws something, `mark` is a sample."""

    text: str
    items: tuple[str, ...]
    mark: Sample | None = None


@dataclass(frozen=True, slots=True)
class Figure:
    """A worked figure, for readers of pictures, and what it shows in words."""

    figure: WorkedFigure
    text: str


@dataclass(frozen=True, slots=True)
class Found:
    """An entry of the index."""

    name: str
    puzzles: tuple[BookPuzzle, ...]


@dataclass(frozen=True, slots=True)
class Numbered:
    """What is said of each of several puzzles: pairs of a puzzle and its words."""

    entries: tuple[tuple[BookPuzzle, str], ...]


@dataclass(frozen=True, slots=True)
class Board:
    """The digits of a puzzle, or with `solution` of its key."""

    puzzle: BookPuzzle
    solution: Solution | None = None

    @property
    def digits(self) -> tuple[int, ...]:
        """A digit a cell, 0 where it is blank."""
        return self.solution or self.puzzle.puzzle.givens


Block: TypeAlias = Heading | Words | Listing | Figure | Found | Numbered | Board


def read_parts(
    book: Book, manner: Manner = "heard", pictured: bool = False
) -> Iterator[tuple[Part, tuple[Block, ...]]]:
    """The parts that have something to say besides their own name, with their blocks; `pictured` if the reader has
    pictures as well."""
    words = book.words.in_manner(manner)
    for part in (*book.front, *book.body):
        blocks = tuple(_read(part, book, words, pictured))
        if blocks:
            yield part, blocks


def paragraph(text: str) -> Words:
    """A paragraph of one style."""
    return Words((Run(text),))


def _read(part: Part, book: Book, words: Catalogue, pictured: bool) -> Iterator[Block]:
    match part:
        case HalfTitle() | TitlePage() | Contents():
            pass  # the title again, and a list of pages
        case ImprintPage():
            yield from map(paragraph, part.paragraphs)
        case Foreword():
            yield Heading(2, part.heading, "foreword")
            yield from map(Words, part.paragraphs)
        case Guide():
            yield Heading(2, words.say("heading-text-guide"), "guide")
            yield from map(paragraph, wording.text_guide(words, book.band_names, book.draft, pictured))
        case Primer():
            yield Heading(2, part.heading, "primer")
            for lesson in part.lessons:
                yield Heading(3, lesson.title)
                yield paragraph(lesson.text)
                if lesson.figure:
                    yield Figure(lesson.figure, figure_read(words, lesson.figure))
        case Chapter():
            if part.title:
                yield Heading(
                    2, words.say("chapter-titled", number=str(part.number), title=part.title), f"chapter-{part.number}"
                )
            if part.note:
                yield paragraph(part.note)
            for puzzle in part.puzzles:
                yield from puzzle_read(words, puzzle, 3 if part.title else 2)
        case HintPages():
            for level in wording.LEVELS:
                yield Heading(2, words.say(f"hints-level-{level}"), f"hints-{level}")
                yield Numbered(tuple((p, hints_read(p, words.manner)[level - 1]) for p in book.puzzles if p.hints))
        case Glossary():
            yield Heading(2, part.heading, "glossary")
            yield from (Words((Run(f"{term.name}. ", "bold"), Run(term.meaning))) for term in part.terms)
        case Keys():
            yield Heading(2, part.heading, "keys")
            for puzzle in book.puzzles:
                yield Heading(3, words.say("key-to", name=puzzle.named(words)), f"key-{puzzle.number}")
                yield Board(puzzle, puzzle.solution) if puzzle.solution else paragraph(puzzle.flaw)
        case Credits():
            yield Heading(2, part.heading, "credits")
            if not any(isinstance(other, ImprintPage) for other in book.front):
                yield from map(paragraph, part.said)
            if part.puzzles:
                yield Numbered(
                    tuple((puzzle, _credit(words, puzzle, puzzle.permission in part.said)) for puzzle in part.puzzles)
                )
        case Index():
            yield Heading(2, part.heading, "index")
            yield paragraph(part.note)
            for group in part.groups:
                yield Heading(3, group.heading)
                yield from (Found(entry.name, entry.puzzles) for entry in group.entries)
        case _ as never:
            assert_never(never)


def puzzle_read(words: Catalogue, puzzle: BookPuzzle, level: int) -> Iterator[Block]:
    """A puzzle: who set it and how hard it is, its rules with their marks, its digits."""
    grid = puzzle.puzzle.grid
    yield Heading(level, words.say("puzzle-named", name=puzzle.named(words)), f"puzzle-{puzzle.number}")
    rating = puzzle.rating
    setter = words.say("set-by", setter=puzzle.setter) if puzzle.setter else ""
    hard = ""
    if rating:
        hard = words.say(
            "band-said", band=rating.band_name, number=str(rating.band), figure=decimal_said(words, rating.figure)
        )
    if setter or hard:
        yield paragraph(" ".join(said for said in (setter, hard) if said))
    if puzzle.flaw:
        yield paragraph(f"{puzzle.flaw}.")
    if grid.box:
        high, wide = grid.box
        rows = words.say("rows-counted", n=high, number=words.number(high))
        columns = words.say("columns-counted", n=wide, number=words.number(wide))
        said = f"{base_sentence(words, grid)} {words.say('boxes-have', high=rows, wide=columns)}"
        yield Listing(said, grids_read(words, grid)) if grid.overlaps else paragraph(said)
    else:
        yield Listing(base_sentence(words, grid), tuple(_regions(words, grid)))
    for each in rules_said(words, puzzle.puzzle):
        title = smart_quotes(title_of(words, type(each.rule)))
        said = words.say("rule-titled", title=title, sentence=each.sentence)
        marks = (mark for rule in each.squares for mark in rule.spoken(words, rule.laid_on(grid)))
        yield Listing(said, tuple(marks), each.rule.key())
    yield Board(puzzle)
    yield from (paragraph(said) for said in (puzzle.note, puzzle.link) if said)


def grid_read(words: Catalogue, puzzle: RuledPuzzle) -> tuple[str, ...]:
    """What a picture of the grid shows beside its digits: irregular regions, and the marks of its rules."""
    marks = (mark for rule in puzzle.rules for mark in rule.spoken(words, rule.laid_on(puzzle.grid)))
    return (*grids_read(words, puzzle.grid), *(() if puzzle.grid.box else _regions(words, puzzle.grid)), *marks)


def grids_read(words: Catalogue, grid: Grid) -> tuple[str, ...]:
    """Where each of several overlapping grids lies."""
    return tuple(
        words.say("grid-at", grid=letter, top=top, left=left, bottom=bottom, right=right)
        for letter, square in zip(grid.square_letters, grid.squares, strict=True)
        for (top, left), (bottom, right) in [[map(_from_one, square.place(square.cells[at])) for at in (0, -1)]]
        if grid.overlaps
    )


def _from_one(line: int) -> str:
    """The number of a row or column as it is said."""
    return str(line + 1)


def hints_read(puzzle: BookPuzzle, manner: Manner = "heard") -> tuple[str, ...]:
    """The three hints of a puzzle; none where it has no hints."""
    return puzzle.hints.said(manner) if puzzle.hints else ()


def figure_read(words: Catalogue, figure: WorkedFigure) -> str:
    """A figure in words: its marks, then its digits row by row."""
    grid = figure.sample.grid
    rows = []
    for row in range(figure.rows):
        digits = ", ".join(grid.symbol(figure.digits[grid.cell(row, column)]) for column in range(figure.columns))
        rows.append(words.say("row-holds", number=str(row + 1), digits=digits))
    return "; ".join((*figure.sample.rule.spoken(words, grid), *rows))


def rows_read(words: Catalogue, grid: Grid, digits: Sequence[int]) -> Iterator[str]:
    """The digits row by row; `digits` has one for each cell, 0 where it is blank."""
    for row in range(grid.height):
        cells = (
            words.say("cell-none")
            if cell is None
            else grid.symbol(digits[cell])
            if digits[cell]
            else words.say("blank")
            for cell in grid.across(row)
        )
        yield words.say("row-digits", number=str(row + 1), digits=", ".join(cells))


def _regions(words: Catalogue, grid: Grid) -> Iterator[str]:
    """Where irregular regions lie."""
    return (
        words.say("region-at", number=str(number), cells=cells_said(words, grid, cells))
        for number, cells in enumerate(grid.regions, start=1)
    )


def _credit(words: Catalogue, puzzle: BookPuzzle, permission_said: bool) -> str:
    shown = words.say("first-shown", date=puzzle.shown) if puzzle.shown else ""
    word = wording.word_said(words, puzzle.word, puzzle.puzzle.grid) if puzzle.word else ""
    details = ", ".join(said for said in (puzzle.setter, shown, word) if said)
    said: Sequence[str] = (puzzle.title, details, "" if permission_said else puzzle.permission.rstrip("."))
    return ". ".join(part for part in said if part)
