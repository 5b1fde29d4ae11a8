"""The parts around the puzzles: what stands before them, and the index after them.

In: a manifest and its puzzles as they are printed. Out: parts. Those that the manifest does not ask for are left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import chain
from unicodedata import combining, normalize

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
from bookmaker.manifest.entries import Manifest
from bookmaker.manifest.publication import Imprint


def front_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle], draft: bool) -> Iterator[Part]:
    """From the half title to the primer."""
    said = manifest.publication
    if said.half_title:
        yield HalfTitle()
    yield TitlePage(smart_quotes(said.imprint.publisher) if said.imprint else "")
    if said.imprint:
        yield ImprintPage(tuple(_imprint(manifest, puzzles, said.imprint)))
    if said.contents:
        yield Contents(wording.CONTENTS)
    if said.foreword:
        yield Foreword(wording.FOREWORD, tuple(map(curled_runs, said.foreword)))
    hinted = any(puzzle.hints for puzzle in puzzles)
    grids = [puzzle.puzzle.grid for puzzle in puzzles]
    credited = any(credit_parts(manifest, puzzles))
    yield Guide(wording.GUIDE, wording.guide(manifest, grids, draft, hinted, credited))
    if said.primer and (taught := lessons(puzzle.puzzle for puzzle in puzzles)):
        yield Primer(wording.PRIMER, taught)


def credit_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle]) -> Iterator[Part]:
    """The credits, where there is more to say than the imprint does. Setters stand with their puzzles, and in the
    contents, so that they are named here together."""
    own = wording.with_credits_of_their_own(puzzles)
    if manifest.publication.credits and (own or not manifest.publication.imprint):
        said = tuple(_thanks(puzzles))
        if said or own:
            yield Credits(wording.CREDITS, said, own)


def _thanks(puzzles: Sequence[BookPuzzle]) -> Iterator[str]:
    """Who set the puzzles, and the permission that holds for all."""
    if setters := sorted({puzzle.setter for puzzle in puzzles if puzzle.setter}, key=_dictionary):
        yield wording.set_by(setters)
    if permission := wording.shared_permission(puzzles):
        yield permission


def index_parts(manifest: Manifest, puzzles: Sequence[BookPuzzle]) -> Iterator[Part]:
    """The index, by setter and by kind of rule."""
    if not manifest.publication.index:
        return
    setters = [(puzzle.setter, puzzle) for puzzle in puzzles if puzzle.setter]
    kinds = [(title, puzzle) for puzzle in puzzles for title in wording.kinds(puzzle.puzzle)]
    groups = ((wording.BY_SETTER, setters), (wording.BY_RULE, kinds))
    yield Index(
        wording.INDEX,
        wording.INDEX_NOTE,
        tuple(IndexGroup(heading, _entries(pairs)) for heading, pairs in groups if pairs),
    )


def _imprint(manifest: Manifest, puzzles: Sequence[BookPuzzle], imprint: Imprint) -> Iterator[str]:
    """The lines of the imprint page, each a paragraph."""
    yield smart_quotes(f"{manifest.title}. {manifest.subtitle}" if manifest.subtitle else manifest.title)
    when = wording.date_in_words(imprint.date) if imprint.date else ""
    issued = [smart_quotes(said) for said in (imprint.edition, imprint.publisher, when) if said]
    if issued:
        yield ", ".join(issued)
    yield from (smart_quotes(said) for said in (imprint.rights, imprint.note) if said)
    yield from _thanks(puzzles)
    both = bool(imprint.isbn and imprint.ebook_isbn)
    if imprint.isbn:
        yield f"ISBN {imprint.isbn}{' (printed)' * both}"
    if imprint.ebook_isbn:
        yield f"ISBN {imprint.ebook_isbn} (e-book)"


def _entries(pairs: Iterable[tuple[str, BookPuzzle]]) -> tuple[IndexEntry, ...]:
    """Puzzles by name, the names in the order of a dictionary."""
    found: dict[str, list[BookPuzzle]] = {}
    for name, puzzle in pairs:
        found.setdefault(name, []).append(puzzle)
    return tuple(IndexEntry(name, tuple(found[name])) for name in sorted(found, key=_dictionary))


def _dictionary(name: str) -> tuple[str, str]:
    """Accents and capitals count only between names that are otherwise the same."""
    bare = "".join(chain(c for c in normalize("NFKD", name) if not combining(c)))
    return bare.casefold(), name
