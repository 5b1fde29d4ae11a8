"""`bookmaker proof`: does every puzzle have exactly one solution, and how hard is it?"""

from __future__ import annotations

import json
import textwrap
from pathlib import Path

import click

from bookmaker.cli.group import main, say_troubles
from bookmaker.cli.loading import book_argument, calibration_option, load_book, proofs_in_order, proving_options, shared
from bookmaker.cli.paths import NEW_FILE_OR_STREAM
from bookmaker.cli.table import proof_table, remark
from bookmaker.files import write_whole
from bookmaker.proof import Proof
from bookmaker.proof.notes import editor_notes, notes_report
from bookmaker.proof.report import report
from bookmaker.proof.second import demand_auditor, doubts
from bookmaker.rules.common.wording import counted
from bookmaker.solve.verdict import Unique
from bookmaker.trouble import BookTroubles


@main.command("proof")
@book_argument
@proving_options
@calibration_option
@click.option(
    "--json",
    "json_file",
    type=NEW_FILE_OR_STREAM,
    metavar="FILE",
    help="Also write everything as JSON; “-” for standard output.",
)
@click.option("--count", type=click.IntRange(1), metavar="N", help="Count the solutions of broken puzzles, up to N.")
@click.option("--notes", is_flag=True, help="Say what an editor wants to know: disguises, needless marks, mirrors …")
@click.option("--second-opinion", is_flag=True, help="Prove every puzzle again by OR-Tools (extra “audit”).")
@click.pass_context
def proof_command(
    ctx: click.Context, book: Path, json_file: str | None, count: int | None, notes: bool, second_opinion: bool
) -> None:
    """Check that every puzzle has exactly one solution, and grade it.

    Prints a line for each puzzle in book order: its number, title, setter, rules, verdict, band, difficulty and
    the hardest step a solver meets. Ends with exit code 1 if any puzzle is not proven unique, or if a second opinion
    differs on any.
    """
    if second_opinion:
        demand_auditor()
    manifest = load_book(book)
    proofs = proofs_in_order(manifest, count or 0)
    noted = tuple(editor_notes(proof) for proof in proofs) if notes else ()
    data = report(manifest, proofs)
    for part, proof, said in zip(data["puzzles"], proofs, noted, strict=False):
        part["notes"] = notes_report(proof, said)
    text = json.dumps(data, ensure_ascii=False, indent=1) + "\n"
    if json_file == "-":
        click.echo(text, nl=False)
    else:
        if json_file:
            write_whole({Path(json_file): text.encode()})
        click.echo(proof_table(manifest, proofs))
        for proof, said in zip(proofs, noted, strict=False):
            click.echo(f"\n{proof.entry.title or proof.entry.id}")
            for sentence in said.sentences or ("Nothing to note.",):
                click.echo(textwrap.fill(sentence, 96, initial_indent="  ", subsequent_indent="  "))
    for proof in proofs:
        if wrong := remark(proof):
            click.echo(f"{proof.entry.place}: {wrong}", err=True)
    if second_opinion:
        ask_again(proofs)
    if not all(isinstance(proof.verdict, Unique) for proof in proofs):
        ctx.exit(1)


def ask_again(proofs: tuple[Proof, ...]) -> None:
    """Say what second opinions bring up. Raises BookTroubles where one disagrees."""
    with shared() as crew:
        found = tuple(doubts(proofs, crew))
    if not all(trouble.warning for trouble in found):
        raise BookTroubles(found)
    say_troubles(found)
    click.echo(f"second opinion: the same on {counted(len(proofs) - len(found), 'puzzle')}", err=True)
