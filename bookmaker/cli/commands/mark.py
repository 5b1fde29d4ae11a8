"""`bookmaker mark`: sheets that came back filled in, marked."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

import click

from bookmaker.cli.group import main
from bookmaker.cli.loading import load_book, proofs_of, proven, proving_options
from bookmaker.preflight.filled import FilledCells, Marked, mark, read_filled
from bookmaker.proof import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place

LISTED = 12
"""Cells that are named one by one; of more, how many there are."""


@main.command("mark")
@proving_options
@click.argument(
    "files", metavar="SHEET.pdf…", nargs=-1, required=True, type=click.Path(exists=True, dir_okay=False, path_type=Path)
)
@click.option(
    "--against",
    "book",
    required=True,
    type=click.Path(exists=True, path_type=Path),
    metavar="BOOK",
    help="The book that the puzzles come from.",
)
def mark_command(files: tuple[Path, ...], book: Path) -> None:
    """Mark sheets that were filled in on a screen.

    Says of each grid whether it is solved, or which cells are wrong and which are empty. A cell with several digits in
    it holds notes and counts as empty.
    """
    manifest = load_book(book)
    known = {entry.id for entry in manifest.entries}
    sheets, diagnostics = dict[Path, Mapping[str, FilledCells]](), list[Diagnostic]()
    for file in files:
        try:
            sheets[file] = read_filled(file)
        except BookErrors as found:
            diagnostics += found.diagnostics
    diagnostics += (
        Diagnostic(Place(str(file)), "stranger", f"its grid “{name}” belongs to no puzzle in the book")
        for file, grids in sheets.items()
        for name in grids
        if name not in known
    )
    if diagnostics:
        raise BookErrors(diagnostics)
    wanted = tuple(entry.id for entry in manifest.entries if any(entry.id in grids for grids in sheets.values()))
    proofs = {proof.entry.id: proof for proof in proven(proofs_of(manifest, wanted))}
    for file, grids in sheets.items():
        marked = {name: _marked(proofs[name], cells) for name, cells in grids.items()}
        solved = sum(one.solved for one in marked.values())
        click.echo(f"{file}: {solved} of {len(marked)} solved")
        for name, one in marked.items():
            entry = proofs[name].entry
            click.echo(f"  {entry.title or name} ({name}): {', '.join(_said(entry.puzzle.grid, one))}")


def _marked(proof: Proof, cells: FilledCells) -> Marked:
    assert proof.solution is not None
    return mark(proof.entry.puzzle.grid, proof.entry.puzzle.givens, proof.solution, cells)


def _said(grid: Grid, marked: Marked) -> Iterator[str]:
    if marked.solved:
        yield "solved"
    for what, cells in (("wrong", marked.wrong), ("empty", marked.empty)):
        if cells:
            yield f"{len(cells)} {what}" + _named(grid, cells)


def _named(grid: Grid, cells: Sequence[int]) -> str:
    return f" ({cells_listed(grid, cells)})" if len(cells) <= LISTED else ""
