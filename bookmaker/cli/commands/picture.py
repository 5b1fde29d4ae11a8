"""`bookmaker picture`: one grid as SVG, PNG or PDF, or its key moments, a picture each."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.completion import ids
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    book_argument,
    find_entries,
    language_option,
    load_book,
    proofs_of,
    proven,
    proving_options,
)
from bookmaker.cli.paths import NEW_PATH, Whole
from bookmaker.display.items import Page
from bookmaker.files import write_whole
from bookmaker.ink.rendering import KINDS, picture_bytes
from bookmaker.layout.art.gridart import painted
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.layout.sheets.single_picture import CELL, grid_picture, scene_picture
from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.proof import Proof
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors
from bookmaker.tell import tell
from bookmaker.tell.scenes import board_after, ends_of, scenes_of


@main.command("picture")
@book_argument
@proving_options
@language_option
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option("--out", "path", required=True, type=NEW_PATH, metavar="FILE", help="Write this picture.")
@click.option("--solved", is_flag=True, help="Show the solution.")
@click.option("--at", "step", type=Whole(0), metavar="STEP", help="Show the grid after this many steps.")
@click.option("--moments", is_flag=True, help="Write a picture of each key moment into the folder FILE.")
@click.option(
    "--format", "form", type=click.Choice([kind[1:] for kind in KINDS]), help="What --moments writes; svg if not given."
)
@click.option("--coordinates", is_flag=True, help="Number the rows and columns.")
@click.option(
    "--dpi", type=Whole(20, 2400), default=300, show_default=True, metavar="N", help="Pixels per inch of a PNG."
)
def picture_command(
    book: Path,
    puzzle_id: str,
    path: Path,
    solved: bool,
    step: int | None,
    moments: bool,
    form: str | None,
    coordinates: bool,
    dpi: int,
) -> None:
    """Draw puzzle ID as a picture.

    FILE ends in .svg, .png or .pdf. With --at 12, the cells are filled as they are after step 12 of `explain --steps`,
    with pencil marks in the empty ones; the cells of the next step are shaded. --at 0 shows the pencil marks before the
    first step.

    With --moments, --out names a folder for the pictures of a crib: the start, every lettered moment with its steps in
    the name, and the solution.
    """
    if sum((solved, step is not None, moments)) > 1:
        raise click.UsageError("--solved, --at and --moments show different things: choose one")
    if form and not moments:
        raise click.UsageError("--format is for --moments; the name of one picture says what it is")
    if not moments and (path.suffix.lower() not in KINDS or path.is_dir()):
        raise click.BadParameter(f"the name should end in {', '.join(KINDS)}", param_hint="--out")
    if moments and path.is_file():
        raise click.BadParameter(f"“{path}” is a file: --moments needs a folder", param_hint="--out")
    manifest = load_book(book)
    (entry,) = find_entries(manifest, (puzzle_id,))
    if not (solved or moments or step is not None):
        _check(entry)
        pages = {path: grid_picture(entry.puzzle, f"grid {entry.id}", with_coordinates=coordinates)}
    else:
        (proof,) = proven(proofs_of(manifest, (puzzle_id,)))
        if moments:
            pages = {path / f"{name}.{form or 'svg'}": page for name, page in _moments(manifest, proof).items()}
        elif step is not None:
            pages = {path: _at(manifest, proof, step, coordinates)}
        else:
            pages = {path: grid_picture(entry.puzzle, f"key {entry.id}", proof.solution, with_coordinates=coordinates)}
    write_whole({file: picture_bytes(page, file, entry.title or entry.id, dpi) for file, page in pages.items()})
    click.echo(f"wrote {path}" + (f": {counted(len(pages), 'picture')}" if moments else ""))


def _check(entry: Entry) -> None:
    """Raises BookErrors for marks that would not be seen."""
    rules = [*zip(entry.puzzle.rules, entry.rule_places, strict=True)]
    if lost := out_of_sight(painted(entry.puzzle, CELL), entry.title or entry.id, entry.place, rules):
        raise BookErrors(lost)


def _at(manifest: Manifest, proof: Proof, step: int, coordinates: bool) -> Page:
    puzzle, story = proof.entry.puzzle, tell(proof, manifest.band_names)
    if step > len(story.steps):
        raise click.BadParameter(f"“{proof.entry.id}” is solved in {len(story.steps)} steps", param_hint="--at")
    digits, position = board_after(puzzle, story, step)
    shaded = story.steps[step].cells if step < len(story.steps) else ()
    return grid_picture(puzzle, f"step {step} of {proof.entry.id}", digits, position, shaded, coordinates)


def _moments(manifest: Manifest, proof: Proof) -> dict[str, Page]:
    """The pictures of a crib, each with the name of its file, in their order."""
    story = tell(proof, manifest.band_names, rules=False, full=True, language=manifest.publication.language)
    start, end = ends_of(proof, story)
    scenes = scenes_of(proof, story).values()
    named = [("start", start), *((f"{scene.label}-step-{scene.steps[0]}", scene) for scene in scenes)]
    return {
        f"{number:02}-{name}": scene_picture(proof.entry.puzzle, scene, f"{name} of {proof.entry.id}")
        for number, (name, scene) in enumerate((*named, ("solution", end)))
    }
