"""`bookmaker proof`: does every puzzle have exactly one solution, and how hard is it?"""

from __future__ import annotations

import json
import sys
import textwrap
from dataclasses import replace
from pathlib import Path
from shutil import get_terminal_size

import click

from bookmaker.cli.dress import check_dress
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import (
    ask_again,
    book_argument,
    calibration_option,
    disguised,
    load_book,
    proofs_in_order,
    proving_options,
    say_alive,
)
from bookmaker.cli.paths import NEW_FILE_OR_STREAM, Whole
from bookmaker.cli.table import decided_by_learning, proof_table
from bookmaker.files import write_whole
from bookmaker.layout import load_layout
from bookmaker.layout.binding import cramped
from bookmaker.manifest.permission import unprintable
from bookmaker.proof.claims import wrong_claims
from bookmaker.proof.notes_text import editor_notes, notes_report
from bookmaker.proof.pulse import heard
from bookmaker.proof.remarks import remark
from bookmaker.proof.report import report
from bookmaker.proof.second_opinion import demand_auditor
from bookmaker.solve.verdict import Unique


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
@click.option("--count", type=Whole(1), metavar="N", help="Count the solutions of broken puzzles, up to N.")
@click.option("--notes", is_flag=True, help="Add notes for the editor: forced marks, redundant givens, mirrors …")
@click.option("--second-opinion", is_flag=True, help="Prove every puzzle again with OR-Tools (extra “audit”).")
@click.pass_context
def proof_command(
    ctx: click.Context, book: Path, json_file: str | None, count: int | None, notes: bool, second_opinion: bool
) -> None:
    """Check that every puzzle has exactly one solution, and grade it.

    Prints a line for each puzzle in book order: its number, title, setter, rules, verdict, band, difficulty and the
    hardest step a solver meets. Ends with exit code 1 if any puzzle is not proven unique, or if a second opinion
    differs.
    """
    if second_opinion:
        demand_auditor()
    manifest = load_book(book)
    if manifest.layout:
        print_diagnostics(tuple(cramped(load_layout(manifest.layout, manifest.layout_place, "book"))))
    check_dress(manifest)
    proofs = proofs_in_order(manifest, count or 0)
    noted = tuple(editor_notes(proof) for proof in proofs) if notes else ()
    alike = {id(each.second): each.words for each in disguised(proofs)} if notes else {}
    data = report(manifest, proofs)
    for part, proof, said in zip(data["puzzles"], proofs, noted, strict=False):
        part["notes"] = notes_report(proof, said) | {"look_alike": alike.get(id(proof))}
    text = json.dumps(data, ensure_ascii=False, indent=1) + "\n"
    if json_file == "-":
        click.echo(text, nl=False)
    else:
        if json_file:
            write_whole({Path(json_file): text.encode()})
        click.echo(proof_table(manifest, proofs, _terminal()))
        for proof, said in zip(proofs, noted, strict=False):
            click.echo(f"\n{proof.entry.title or proof.entry.id}")
            same = [f"This is {alike[id(proof)]}."] if id(proof) in alike else []
            for sentence in (*said.sentences, *same) or ("Nothing to note.",):
                click.echo(textwrap.fill(sentence, 96, initial_indent="  ", subsequent_indent="  "))
    with heard(say_alive):
        for proof in proofs:
            if wrong := remark(proof):
                click.echo(f"{proof.entry.place}: {wrong}", err=True)
    if hard := decided_by_learning(proofs):
        click.echo(hard, err=True)
    differing = tuple(wrong_claims(proofs))
    refused = (replace(diagnostic, warning=True) for diagnostic in unprintable(manifest.entries, press=False))
    print_diagnostics((*refused, *differing))
    if second_opinion:
        ask_again(proofs)
    if differing or not all(isinstance(proof.verdict, Unique) for proof in proofs):
        ctx.exit(1)


def _terminal() -> int | None:
    """The width of the terminal; None where the output goes elsewhere."""
    return get_terminal_size().columns if sys.stdout.isatty() else None
