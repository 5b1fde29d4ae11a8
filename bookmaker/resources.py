"""Where the files that come with bookmaker lie: its layouts, its fonts and its README.

In a checkout they stand beside the package, where people read and change them; an installed wheel carries them
inside the package (`pyproject.toml` puts them there).
"""

from __future__ import annotations

from pathlib import Path
from typing import Literal

_PACKAGE = Path(__file__).resolve().parent


def shipped(folder: Literal["layouts", "fonts"]) -> Path:
    """The folder of that name. Raises FileNotFoundError, naming both places, if the installation is damaged."""
    return _found(folder)


def readme() -> str:
    """The text of the README, whose tables are also what editors show of a field. Raises FileNotFoundError likewise."""
    return _found("README.md").read_text("utf-8")


def _found(name: str) -> Path:
    places = (_PACKAGE / "_shipped" / name, _PACKAGE.parent / name)
    for place in places:
        if place.exists():
            return place
    named = " or ".join(str(place) for place in places)
    raise FileNotFoundError(f"“{name}” is missing ({named}): install bookmaker again")
