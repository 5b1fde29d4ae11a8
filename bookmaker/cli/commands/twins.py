"""`bookmaker twins`: puzzles that are the same in disguise."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import click

from bookmaker.archive.lookalikes import Member, Near, Same, members_of, move_words, near_among, same_among
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import counting, executor, known, sharing_options
from bookmaker.cli.paths import NEW_FILE
from bookmaker.files import write_whole
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import Collector, in_file_order
from bookmaker.symmetry.moves import words_of

PLACES = click.Path(exists=True, path_type=Path)


@main.command("twins")
@click.argument("archives", nargs=-1, required=True, type=PLACES, metavar="ARCHIVE…")
@sharing_options
@click.option("--against", multiple=True, type=PLACES, metavar="BOOK", help="Compare with these, not among themselves.")
@click.option("--exact", is_flag=True, help="Leave out those that are only near to each other.")
@click.option("--json", "json_file", type=NEW_FILE, metavar="FILE", help="Write what is found, for other programs.")
@click.pass_context
def twins_command(
    ctx: click.Context, archives: tuple[Path, ...], against: tuple[Path, ...], exact: bool, json_file: Path | None
) -> None:
    """Find puzzles that are the same but for moves that their rules allow, and prove it.

    ARCHIVE is a folder, a book or a list of classics. Two classics are the same if one becomes the other when digits
    are renamed, rows and columns change places within and with their boxes, or the grid is turned; puzzles with marks,
    if their marks go along. The move is told. Puzzles that share their solution grid or their marks are told of as
    near.

    Ends with exit code 1 if two puzzles are the same.
    """
    collector = Collector()
    with executor() as workers:
        new = members_of(archives, known(), workers, collector, watch=counting())
        old = members_of(against, known(), workers, collector, new.members) if against else None
    members = [*new.members, *(old.members if old else ())]
    same = tuple(same_among(members, mixed=bool(old)))
    near = () if exact else tuple(near_among(members, mixed=bool(old)))
    for group in same:
        _say(group)
    for pair in near:
        click.echo(f"near: {pair.words()}")
    if json_file:
        data = {"same": [_same_data(group) for group in same], "near": [_near_data(pair) for pair in near]}
        write_whole({json_file: (json.dumps(data, ensure_ascii=False, indent=1) + "\n").encode()})
    twice = sum(len(group.members) - 1 for group in same)
    compared = f"{counted(new.read, 'puzzle')} compared" + (f" with {old.read}" if old else "")
    click.echo(f"{compared}: {twice or 'none'} the same as another, {counted(len(near), 'pair')} near", err=True)
    if unproven := new.unproven + (old.unproven if old else 0):
        click.echo(f"{counted(unproven, 'puzzle')} without exactly one solution left out", err=True)
    print_diagnostics(in_file_order(collector.found))
    if same or any(collector.errors()):
        ctx.exit(1)


def _say(group: Same) -> None:
    first, *others = group.members
    for other, move in zip(others, group.moves, strict=True):
        click.echo(f"the same: {first} becomes {other}")
        for line in words_of(move):
            click.echo(f"    {line}")


def _member_data(member: Member) -> dict[str, Any]:
    return {"id": member.id, "title": member.title, "place": str(member.place)}


def _same_data(group: Same) -> dict[str, Any]:
    first, *others = group.members
    moves = [
        {**_member_data(other), "cells": list(move.cells), "digits": list(move.digits), "words": move_words(move)}
        for other, move in zip(others, group.moves, strict=True)
    ]
    return {"puzzle": _member_data(first), "becomes": moves}


def _near_data(pair: Near) -> dict[str, Any]:
    return {"one": _member_data(pair.one), "other": _member_data(pair.other), "share": pair.how, "apart": pair.apart}
