"""Names of files and folders to write, as options take them."""

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


NEW_FILE = _New(dir_okay=False, path_type=Path)
NEW_FILE_OR_STREAM = _New(dir_okay=False, allow_dash=True)
"""As text; `-` is standard output."""

NEW_PATH = _New(path_type=Path)
"""A file or a folder, as another option has it."""

NEW_FOLDER = _New(file_okay=False, path_type=Path)
