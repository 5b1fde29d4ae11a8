"""A small book to begin with, written into a folder, and beside it the schema that lets an editor complete it.

In: a folder, and perhaps a rule kind. Out: the files written. Nothing that is already there is overwritten.
"""

from __future__ import annotations

import textwrap
from importlib import resources
from pathlib import Path

from bookmaker.files import write_whole
from bookmaker.language import catalogue
from bookmaker.manifest import MANIFEST_NAMES
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.schema import schema_text
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place, nearest
from bookmaker.starter.scaffold import first_puzzle

__all__ = ["write_starter"]

SCHEMA = "book.schema.json"

EDITORS = f"# yaml-language-server: $schema={SCHEMA}\n"
"""The line by which YAML language servers find a schema: its path as seen from the file."""


def write_starter(folder: Path, kind: str | None = None) -> tuple[Path, ...]:
    """Write a book that typesets at once: the small book of several kinds, or one puzzle of the rule kind named.

    Raises `BookErrors` if the kind is unknown or the folder already holds a book, OSError if it cannot be written.
    """
    file = folder / MANIFEST_NAMES[0]
    if kind is not None and kind not in kinds():
        said, hint = f"there is no rule kind “{kind}”", nearest(kind, kinds())
        raise BookErrors([Diagnostic(Place("--kind"), "unknown-rule", said, hint)])
    taken = next((path for name in MANIFEST_NAMES if (path := folder / name).exists() or path.is_symlink()), None)
    if taken is not None:
        hint = "choose another folder, or move that book away first; nothing was changed"
        raise BookErrors([Diagnostic(Place(str(taken)), "exists", "a book is already there", hint)])
    text = _small_book() if kind is None else _book_of(kinds()[kind])
    files = {file: (EDITORS + text).encode()}
    schema = folder / SCHEMA
    if not (schema.exists() or schema.is_symlink()):
        files[schema] = schema_text("manifest").encode()
    write_whole(files)
    return tuple(files)


def _small_book() -> str:
    return resources.files(__package__).joinpath(MANIFEST_NAMES[0]).read_text("utf-8")


def _book_of(kind: type[Rule]) -> str:
    """A book with one puzzle whose marks are the kind's example."""
    text = digits_text(first_puzzle(kind).givens)
    rows = [" ".join(text[at : at + 9]) for at in range(0, 81, 9)]
    spaced = ["  ".join((row[:5], row[6:11], row[12:])) for row in rows]
    givens = "\n".join("\n".join(spaced[at : at + 3]) + "\n" for at in (0, 3, 6))
    about = textwrap.fill(kind.primer(catalogue("en")), 110, initial_indent="  # ", subsequent_indent="  # ")
    return f"""\
# A book with one puzzle to start from. Print it as it stands:
#
#     bookmaker typeset . --out printed
#
# “bookmaker start FOLDER” without a kind makes a book that explains every line.

book:
  title: "{kind.title}"
  editor: Your name

puzzles:

{about}
  #
  # The givens below were made to fit the marks under “rules:”, so that there is exactly one solution. Once you move a
  # mark they may no longer fit: remove givens, and let “bookmaker proof .” tell you whether one solution is left, or
  # several.
  - id: {kind.kind}-1
    title: First Try
    setter: Your name
    permission: Made for this first book; copy it freely.
    givens: |
{textwrap.indent(givens, " " * 6).rstrip()}
    rules:
{textwrap.indent(kind.example.rstrip(), " " * 6)}
"""
