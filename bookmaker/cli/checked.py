"""Finished PDF files on their way to disk: preflight looks at each before any is put in place."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import click

from bookmaker.cli.group import say_troubles
from bookmaker.files import write_whole
from bookmaker.preflight import inspect
from bookmaker.proof import Proof
from bookmaker.trouble import BookTroubles


def write_checked(
    files: Mapping[Path, bytes],
    proofs: Sequence[Proof],
    folded: frozenset[Path] = frozenset(),
    unchecked: Mapping[Path, bytes] | None = None,
    gridless: frozenset[Path] = frozenset(),
) -> None:
    """Write the files, and the unchecked ones beside them, if preflight finds nothing wrong in any PDF.

    Their grids are read back and compared with the proofs, but for `gridless` ones such as a cover. Warnings are said.
    Raises BookTroubles, and writes nothing, if there is more than warnings; raises OSError as `write_whole` does.
    """
    reports = [
        inspect(content, str(path), None if path in gridless else proofs, path in folded)
        for path, content in files.items()
    ]
    troubles = tuple(trouble for report in reports for trouble in report.troubles)
    if not all(report.sound for report in reports):
        click.echo("preflight found faults, so nothing was written:", err=True)
        raise BookTroubles(troubles)
    say_troubles(troubles)
    write_whole({**files, **(unchecked or {})})
