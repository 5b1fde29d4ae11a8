"""The book's own words: headings, the page on how to read it, and what a draft says of a flawed puzzle.

In: plain facts about the book, and the catalogue of its language. Out: sentences, ready to set.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from typing import assert_never

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import Catalogue, capital, date_said
from bookmaker.manifest.dates import When
from bookmaker.manifest.entries import HiddenWord, Manifest
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.titles import nouns_of, title_of
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict

LEVELS = (1, 2, 3)
"""Of hints, each giving away more."""


def date_in_words(words: Catalogue, day: date | When) -> str:
    """“14 March 2026”, “March 2026” or “2026”, as exact as it is known."""
    return date_said(words, day.year, day.month or 0, day.day or 0)


def hint_levels(words: Catalogue) -> tuple[str, ...]:
    """What each level of hints is called."""
    return tuple(words.say(f"hint-level-{level}") for level in LEVELS)


def as_sentence(text: str) -> str:
    """What an editor typed, with a capital and a full stop, so that it can stand beside other sentences."""
    return capital(text) + ("." if text[-1:].isalnum() or text[-1:] == ")" else "")


def shared_permission(puzzles: Sequence[BookPuzzle]) -> str:
    """The permission that holds for all puzzles and so is printed once; "" where they differ."""
    permissions = {puzzle.permission for puzzle in puzzles}
    return permissions.pop() if len(permissions) == 1 else ""


def with_credits_of_their_own(puzzles: Sequence[BookPuzzle]) -> tuple[BookPuzzle, ...]:
    """The puzzles that were shown before, spell a word or have a permission that is not that of all."""
    shared = shared_permission(puzzles)
    return tuple(puzzle for puzzle in puzzles if puzzle.shown or puzzle.word or (puzzle.permission and not shared))


def edited_by(words: Catalogue, editor: str) -> str:
    """Who edited the book; nothing where nobody is named."""
    return words.say("edited-by", editor=editor) if editor else ""


def houses_said(words: Catalogue, grids: Iterable[Grid]) -> str:
    """What a house is on these grids."""
    return words.say("houses-explained", areas=divided(grids))


def divided(grids: Iterable[Grid]) -> str:
    """What the grids are divided into: “boxes” if any is, else “regions” if any is, or “none”."""
    found = {grid.divided for grid in grids}
    return next((name for name in ("boxes", "regions") if name in found), "none")


OFTEN = 16
"""Grids up to this size have no letter that anyone would miss."""


def word_said(words: Catalogue, word: HiddenWord, grid: Grid) -> str:
    """What a solution spells, and where: “row 5 spells QUAY”, “the cells from r1c1 to r3c3 spell TAR”."""
    for line, houses in (("row", grid.rows), ("column", grid.columns)):
        for number, house in enumerate(houses, start=1):
            if word.cells == house.cells:
                return words.say(f"{line}-spells", number=str(number), word=word.text)
    first, last = map(Phrasebook(grid, words.language, words.manner).cell, (word.cells[0], word.cells[-1]))
    return words.say("cells-spell", first=first, last=last, word=word.text)


def set_by(words: Catalogue, setters: Sequence[str]) -> str:
    """Who set the puzzles of a book."""
    return as_sentence(words.say("puzzles-by", setters=words.listed(setters)))


def kinds(words: Catalogue, puzzle: RuledPuzzle) -> tuple[str, ...]:
    """What a puzzle is: its grid, unless that is the usual one and rules say more, and its rules (“Thermometers”)."""
    grid = puzzle.grid
    titles = tuple(dict.fromkeys(smart_quotes(title_of(words, type(rule))) for rule in puzzle.rules))
    divided = "boxes" if grid.box else "regions" if grid.regions else "lines"
    special = "grids-overlap" if grid.overlaps else "" if grid.plain else "grid-holes"
    called = words.say(special or f"grid-{divided}")
    return titles if divided == "boxes" and titles and not special else (called, *titles)


def title_of_puzzle(words: Catalogue, puzzle: RuledPuzzle) -> str:
    """What an untitled puzzle goes by: “Cages, Arrows”, “Latin square with inequalities”."""
    if puzzle.grid.regions or not puzzle.rules or not puzzle.grid.plain:
        return ", ".join(kinds(words, puzzle))
    return words.say("latin-with", rules=words.listed(nouns_of(words, type(rule)) for rule in puzzle.rules))


def proved(words: Catalogue, draft: bool) -> str:
    """What is known of the puzzles of a book."""
    return words.say("guide-draft" if draft else "guide-proved")


def guide(
    words: Catalogue,
    manifest: Manifest,
    grids: Iterable[Grid],
    draft: bool,
    hinted: bool,
    credited: bool,
    pad: bool = False,
) -> tuple[str, ...]:
    """How to read the book with these grids, a paragraph each; `hinted` if it has hints, `credited` if it has a page of
    credits, and in a `pad` the key of each puzzle stands on the back of its sheet."""
    ends = {"first": manifest.band_names[0], "last": manifest.band_names[-1]}
    as_listed = any(chapter.listed for chapter in manifest.chapters)
    order = words.say(f"guide-order-{'listed' if as_listed else manifest.order}")
    where = "-in-pad" if pad else ""
    last = [proved(words, draft), *([words.say(f"guide-hints{where}")] if hinted else [])]
    last += [words.say(f"guide-keys{where}"), words.say("guide-profile")]
    last += [words.say(f"guide-credits{where}")] if credited else []
    grids = [*grids]
    named = [words.say("cell-names"), houses_said(words, grids)]
    if any(grid.size > OFTEN and not grid.lettered for grid in grids):
        named.append(words.say("guide-large"))
    return (
        f"{words.say('guide-ridge', **ends)} {order}",
        words.say("guide-rules"),
        " ".join(named),
        " ".join(last),
    )


def text_guide(words: Catalogue, band_names: Sequence[str], draft: bool, pictured: bool) -> tuple[str, ...]:
    """The same for an edition without pages, which tells marks in words; `pictured` if it has pictures as well."""
    where = words.say("guide-text-pictured" if pictured else "guide-text-below")
    return (
        proved(words, draft),
        f"{words.say('guide-text-marks')} {where}",
        words.say("guide-text-bands", first=band_names[0], last=band_names[-1]),
    )


def flaw(words: Catalogue, verdict: Verdict) -> str:
    """What a draft prints in place of a key; nothing for a proven puzzle."""
    match verdict:
        case Unique():
            return ""
        case NoSolution():
            return words.say("flaw-none")
        case Several():
            return words.say("flaw-several")
        case Undecided():
            return words.say("flaw-undecided")
        case _ as never:
            assert_never(never)
