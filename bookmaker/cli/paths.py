"""Values of options: names of files and folders to write, whole numbers within bounds."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click


class _New(click.Path):
    """A path to write to. A name that begins like an option is one: `--json --fresh` wants a file before `--fresh`."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        if str(value).startswith("--"):
            text = f"“{value}” is an option, so a name is missing before it; a file of this name is written “./{value}”"
            self.fail(text, param, ctx)
        return super().convert(value, param, ctx)


class _NewPdf(_New):
    """A PDF file to write to; a name without an ending gets one."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        file = Path(super().convert(value, param, ctx))
        if not file.suffix:
            file = Path(super().convert(f"{file}.pdf", param, ctx))
        if file.suffix.lower() != ".pdf":
            self.fail(f"“{file.name}” will be a PDF file: its name should end in .pdf", param, ctx)
        return file


NEW_FILE = _New(dir_okay=False, path_type=Path)
NEW_PDF = _NewPdf(dir_okay=False, path_type=Path)
NEW_FILE_OR_STREAM = _New(dir_okay=False, allow_dash=True)
"""As text; `-` is standard output."""

NEW_FOLDER = _New(file_okay=False, path_type=Path)


class Whole(click.IntRange):
    """A whole number from `min` to `max`; the help says so in words."""

    def _describe_range(self) -> str:
        return f"{self.min} or more" if self.max is None else f"{self.min} to {self.max}"
