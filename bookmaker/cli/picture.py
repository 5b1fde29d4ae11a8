"""`bookmaker picture`: one grid as SVG, PNG or PDF."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.completion import ids
from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, find_entries, load_book, proofs_of, proven, proving_options
from bookmaker.cli.paths import NEW_FILE, Whole
from bookmaker.display.items import Page
from bookmaker.files import write_whole
from bookmaker.grade.replay import position_after
from bookmaker.ink.picture import KINDS, picture_bytes
from bookmaker.layout.art.gridart import painted
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.layout.sheets.picture import CELL, grid_picture
from bookmaker.proof import Proof
from bookmaker.trouble import BookTroubles


@main.command("picture")
@book_argument
@proving_options
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option("--out", "file", required=True, type=NEW_FILE, metavar="FILE", help="Write this picture.")
@click.option("--solved", is_flag=True, help="Show the solution.")
@click.option("--at", "step", type=Whole(0), metavar="STEP", help="Show the grid after this many steps.")
@click.option(
    "--dpi", type=Whole(20, 2400), default=300, show_default=True, metavar="N", help="Pixels per inch of a PNG."
)
def picture_command(book: Path, puzzle_id: str, file: Path, solved: bool, step: int | None, dpi: int) -> None:
    """Draw puzzle ID as a picture.

    FILE ends in .svg, .png or .pdf. With --at 12, the cells are filled as they are after the twelfth step of the
    solving path, with pencil marks in the empty ones; the cells of the next step are shaded. --at 0 shows the pencil
    marks before the first step.
    """
    if file.suffix.lower() not in KINDS:
        raise click.BadParameter(f"the name should end in {', '.join(KINDS)}", param_hint="--out")
    if solved and step is not None:
        raise click.UsageError("--solved and --at show different things: choose one")
    manifest = load_book(book)
    (entry,) = find_entries(manifest, (puzzle_id,))
    if solved or step is not None:
        (proof,) = proven(proofs_of(manifest, (puzzle_id,)))
        page = grid_picture(entry.puzzle, f"key {entry.id}", proof.solution) if step is None else _at(proof, step)
    else:
        rules = [*zip(entry.puzzle.rules, entry.rule_places, strict=True)]
        lost = out_of_sight(painted(entry.puzzle, CELL), entry.title or entry.id, entry.place, rules)
        if lost:
            raise BookTroubles(lost)
        page = grid_picture(entry.puzzle, f"grid {entry.id}")
    write_whole({file: picture_bytes(page, file, entry.title or entry.id, dpi)})
    click.echo(f"wrote {file}")


def _at(proof: Proof, step: int) -> Page:
    assert proof.grade is not None
    puzzle, steps = proof.entry.puzzle, proof.grade.path.steps
    if step > len(steps):
        raise click.BadParameter(f"“{proof.entry.id}” is solved in {len(steps)} steps", param_hint="--at")
    digits, position = position_after(puzzle, proof.grade.path, step)
    shaded = steps[step].cells if step < len(steps) else ()
    return grid_picture(puzzle, f"step {step} of {proof.entry.id}", digits, position, shaded)
