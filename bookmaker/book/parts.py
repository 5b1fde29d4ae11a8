"""The parts around the puzzles: what stands before them, and the index after them.

In: a manifest and its puzzles as they are printed. Out: parts. Those that the manifest does not ask for are left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from bookmaker.book import wording
from bookmaker.book.contents import (
    BookPuzzle,
    Contents,
    Credits,
    Foreword,
    Guide,
    HalfTitle,
    ImprintPage,
    Index,
    IndexEntry,
    IndexGroup,
    Part,
    Primer,
    TitlePage,
)
from bookmaker.book.primer import lessons
from bookmaker.book.smart_quotes import curled_runs, smart_quotes
from bookmaker.language import Catalogue, catalogue
from bookmaker.manifest.entries import Manifest
from bookmaker.manifest.publication import Imprint


def front_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle], draft: bool) -> Iterator[Part]:
    """From the half title to the primer."""
    said, words = manifest.publication, catalogue(manifest.publication.language)
    if said.half_title:
        yield HalfTitle()
    yield TitlePage(smart_quotes(said.imprint.publisher, words.quotation_marks) if said.imprint else "")
    if said.imprint:
        yield ImprintPage(tuple(_imprint(words, manifest, puzzles, said.imprint)))
    if said.contents:
        yield Contents(words.say("heading-contents"))
    if said.foreword:
        yield Foreword(
            words.say("heading-foreword"), tuple(curled_runs(runs, words.quotation_marks) for runs in said.foreword)
        )
    hinted = any(puzzle.hints for puzzle in puzzles)
    credited = any(credit_parts(manifest, puzzles))
    grids = [puzzle.puzzle.grid for puzzle in puzzles]
    bound, in_a_pad = (wording.guide(words, manifest, grids, draft, hinted, credited, pad) for pad in (False, True))
    yield Guide(words.say("heading-guide"), bound, in_a_pad, words.say("guide-rules-shared"))
    if said.primer and (taught := lessons(words, (puzzle.puzzle for puzzle in puzzles))):
        yield Primer(words.say("heading-primer"), taught)


def credit_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle]) -> Iterator[Part]:
    """The credits, where there is more to say than the imprint does. Setters stand with their puzzles, and in the
    contents, so that they are named here together."""
    own = wording.with_credits_of_their_own(puzzles)
    if manifest.publication.credits and (own or not manifest.publication.imprint):
        words = catalogue(manifest.publication.language)
        said = tuple(_thanks(words, puzzles))
        if said or own:
            yield Credits(words.say("heading-credits"), said, own)


def _thanks(words: Catalogue, puzzles: Sequence[BookPuzzle]) -> Iterator[str]:
    """Who set the puzzles, and the permission that holds for all."""
    if setters := sorted({puzzle.setter for puzzle in puzzles if puzzle.setter}, key=words.dictionary):
        yield wording.set_by(words, setters)
    if permission := wording.shared_permission(puzzles):
        yield permission


def index_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle]) -> Iterator[Part]:
    """The index, by setter and by kind of rule."""
    if not manifest.publication.index:
        return
    words = catalogue(manifest.publication.language)
    setters = [(puzzle.setter, puzzle) for puzzle in puzzles if puzzle.setter]
    kinds = [(title, puzzle) for puzzle in puzzles for title in wording.kinds(words, puzzle.puzzle)]
    groups = (("heading-by-setter", setters), ("heading-by-rule", kinds))
    yield Index(
        words.say("heading-index"),
        words.say("index-note"),
        tuple(IndexGroup(words.say(heading), _entries(words, pairs)) for heading, pairs in groups if pairs),
    )


def _imprint(words: Catalogue, manifest: Manifest, puzzles: Sequence[BookPuzzle], imprint: Imprint) -> Iterator[str]:
    """The lines of the imprint page, each a paragraph."""
    marks = words.quotation_marks
    yield smart_quotes(f"{manifest.title}. {manifest.subtitle}" if manifest.subtitle else manifest.title, marks)
    when = wording.date_in_words(words, imprint.date) if imprint.date else ""
    issued = [smart_quotes(said, marks) for said in (imprint.edition, imprint.publisher, when) if said]
    if issued:
        yield ", ".join(issued)
    yield from (smart_quotes(said, marks) for said in (imprint.rights, imprint.note) if said)
    yield from _thanks(words, puzzles)
    both = bool(imprint.isbn and imprint.ebook_isbn)
    if imprint.isbn:
        yield words.say("isbn-printed" if both else "isbn", number=imprint.isbn)
    if imprint.ebook_isbn:
        yield words.say("isbn-ebook", number=imprint.ebook_isbn)


def _entries(words: Catalogue, pairs: Iterable[tuple[str, BookPuzzle]]) -> tuple[IndexEntry, ...]:
    """Puzzles by name, the names in the order of a dictionary."""
    found: dict[str, list[BookPuzzle]] = {}
    for name, puzzle in pairs:
        found.setdefault(name, []).append(puzzle)
    return tuple(IndexEntry(name, tuple(found[name])) for name in sorted(found, key=words.dictionary))
