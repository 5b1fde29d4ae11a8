"""`bookmaker assemble`: a collection chosen from an archive."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from tempfile import TemporaryDirectory

import click

from bookmaker.archive import Catalogue
from bookmaker.archive.history import printed_before
from bookmaker.assemble import Assembled, Clash, NoFurther, assemble
from bookmaker.assemble.brief import make_plan, open_brief
from bookmaker.assemble.optimiser import GaveUp
from bookmaker.assemble.plan import Choice, Plan
from bookmaker.assemble.reasons import misses, reasons
from bookmaker.assemble.writing import curve_picture, manifest_text
from bookmaker.book import make_book
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import (
    archive_options,
    calibration_option,
    catalogue_of,
    executor,
    from_archives,
    known,
    proofs_in_order,
)
from bookmaker.cli.paths import NEW_FOLDER
from bookmaker.files import write_whole
from bookmaker.layout import compose, load_layout
from bookmaker.manifest import load
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place
from bookmaker.visible import visible


@main.command("assemble")
@click.argument("brief", metavar="BRIEF.yaml", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@archive_options
@calibration_option
@click.option(
    "--out", "folder", required=True, type=NEW_FOLDER, metavar="FOLDER", help="Where the new book is written."
)
@from_archives("What to choose from, besides the archives that the brief names.")
@click.option(
    "--another",
    is_flag=False,
    flag_value=1,
    default=0,
    type=click.IntRange(0, 50),
    metavar="[N]",
    help="Not the best collection but the next best one, or the N-th after it.",
)
@click.option("--replace", is_flag=True, help="Write over a book that is in FOLDER already.")
@click.pass_context
def assemble_command(
    ctx: click.Context, brief: Path, folder: Path, archives: tuple[Path, ...], another: int, replace: bool
) -> None:
    """Choose and order a collection from an archive, as a brief asks.

    Written into FOLDER are book.yaml, which “bookmaker typeset” prints as it is, and reasons.md, which tells what was
    wanted and got, and why each puzzle is there. Where the brief cannot be met nothing is written: what clashes is
    told, what the archive lacks, and what the nearest collection would give up; the exit code is then 1.
    """
    if (folder / "book.yaml").exists() and not replace:
        hint = "name another folder, or add --replace"
        raise BookErrors([Diagnostic(Place(str(folder / "book.yaml")), "exists", "a book is already there", hint)])
    plan, catalogue = plan_for(brief, archives)
    if plan is None:
        ctx.exit(1)
    try:
        found = assemble(plan, lambda choice: _pages(plan, choice, catalogue), another)
    except NoFurther:
        click.echo(f"there are not {another + 1} different collections that the brief allows", err=True)
        ctx.exit(1)
    except GaveUp as gave_up:
        click.echo(str(gave_up), err=True)
        ctx.exit(1)
    if isinstance(found, Clash):
        _say_clash(plan, found, brief)
        ctx.exit(1)
    _write(found, catalogue, folder)


def plan_for(
    path: Path, archives: tuple[Path, ...], filled: Callable[[Catalogue, Plan], Catalogue] | None = None
) -> tuple[Plan | None, Catalogue]:
    """The plan for the archives' catalogue; what is wrong in brief and archive is said. None after mistakes.

    With `filled`, the plan is made again for the catalogue as this fills it up.
    """
    collector = Collector()
    opened = open_brief(path, collector)
    roots = [*archives]
    for folder, place in opened.archives if opened else ():
        if folder.is_dir():
            roots.append(folder)
        else:
            collector.error(place, "no-archive", f"there is no folder “{folder}”")
    if opened and not roots and not any(collector.errors()):
        hint = "add a line “archive: ../archive” beside “brief:”, or name it with --archive"
        collector.error(Place(str(path)), "no-archive", "neither the brief nor --archive names an archive", hint)
    collector.raise_errors()
    assert opened is not None
    catalogue = catalogue_of(tuple(roots))

    def keys_of(books: Sequence[tuple[Path, Place]]) -> frozenset[str]:
        with executor() as workers:
            return frozenset(printed_before(books, known(), workers, collector))

    plan = make_plan(opened, catalogue, keys_of, collector)
    if plan is not None and filled is not None:
        catalogue = filled(catalogue, plan)
        plan = make_plan(opened, catalogue, keys_of, Collector())
    print_diagnostics(catalogue.diagnostics)
    if faulty := sum(not diagnostic.warning for diagnostic in catalogue.diagnostics):
        click.echo(f"{counted(faulty, 'mistake')} in the archive: puzzles with mistakes cannot be chosen", err=True)
    collector.raise_errors()
    print_diagnostics(tuple(collector.found))
    return plan, catalogue


def _pages(plan: Plan, choice: Choice, catalogue: Catalogue) -> int:
    """How many pages the book has as it would be printed."""
    with TemporaryDirectory() as place:
        file = Path(place) / "book.yaml"
        roots = Catalogue(catalogue.cards, tuple(root.resolve() for root in catalogue.roots))
        file.write_text(manifest_text(plan, choice, roots, Path(place).resolve()), encoding="utf-8")
        manifest = load(file)
        layout = load_layout(manifest.layout or "a4-book", manifest.layout_place, "book")
    contents = make_book(manifest, proofs_in_order(manifest), store=known())
    return len(compose(contents, layout).pages)


def _write(found: Assembled, catalogue: Catalogue, folder: Path) -> None:
    plan, choice = found.plan, found.choice
    files = {
        folder / "book.yaml": manifest_text(plan, choice, catalogue, folder),
        folder / "curve.svg": curve_picture(plan, choice, catalogue),
        folder / "reasons.md": visible(reasons(plan, choice, catalogue, found.pages, "curve.svg", str(folder))),
    }
    write_whole({path: text.encode() for path, text in files.items()})
    parts = f" in {counted(len(plan.parts), 'chapter')}" if len(plan.parts) > 1 else ""
    proven = "proven best" if not choice.slack else f"within {choice.slack:.0f} of the best"
    click.echo(f"{folder / 'book.yaml'}: {counted(len(choice.chosen), 'puzzle')}{parts}, {proven}")
    click.echo(f"{folder / 'reasons.md'}: what was wanted and got, and why each puzzle is there")


def _say_clash(plan: Plan, clash: Clash, brief: Path) -> None:
    """Why there is no collection, and what the nearest one gives up."""
    lines = {(demand.place, demand.quoted): demand for demand in clash.demands}
    one = len(lines) == 1
    which = ":" if one else "; these demands clash, and if any one of them goes the others can be met:"
    click.echo(f"the brief cannot be met{which}", err=True)
    for demand in lines.values():
        parts = sum((each.place, each.quoted) == (demand.place, demand.quoted) for each in clash.demands)
        where = f", in each of {parts} chapters" if parts > 1 else demand.where
        click.echo(f"  {demand.place}: {demand.quoted}{where}", err=True)
    for lack in clash.lacks:
        name = f" {lack.label}" if lack.label else ""
        there = f"{lack.there} of {lack.wanted}"
        click.echo(f"the archive has for “{lack.demand.quoted}”{name}: {there}", err=True)
    if clash.lacks:
        click.echo(f"“bookmaker draft --for {brief} --out drafted.yaml” drafts what is lacking", err=True)
    if clash.nearest:
        size = counted(len(clash.nearest.chosen), "puzzle")
        click.echo(f"the nearest collection, of {size}, gives up:", err=True)
        for line in misses(plan, clash.nearest, clash.given_up):
            click.echo(f"  {line}", err=True)
