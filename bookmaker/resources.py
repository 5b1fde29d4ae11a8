"""Where the files that come with bookmaker lie: its layouts and its fonts.

In a checkout they stand beside the package, where people read and change them; an installed wheel carries them
inside the package (`pyproject.toml` puts them there).
"""

from __future__ import annotations

from pathlib import Path
from typing import Literal

_PACKAGE = Path(__file__).resolve().parent


def shipped(folder: Literal["layouts", "fonts"]) -> Path:
    """The folder of that name. Raises FileNotFoundError, naming both places, if the installation is damaged."""
    places = (_PACKAGE / "_shipped" / folder, _PACKAGE.parent / folder)
    for place in places:
        if place.is_dir():
            return place
    named = " or ".join(str(place) for place in places)
    raise FileNotFoundError(f"the folder “{folder}” is missing ({named}): install bookmaker again")
