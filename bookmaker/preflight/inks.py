"""Which colours a file may use: what its output intent says that they mean, and whether the ink laid down will dry.

In: a PDF's catalogue; what is chosen and painted on its pages. Out: findings in words.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from typing import Any

import pikepdf

from bookmaker.preflight.painted import Colour, Picture

HEAVIEST = 300
"""Most of all inks together, of which each is 100 (common practice for coated sheets, no source)."""


class Inks(Enum):
    """What a file is made for, with the colour spaces it may use besides greys and how to say so."""

    BLACK = (frozenset[str](), "a press that prints black only needs DeviceGray")
    SCREEN = (frozenset({"DeviceRGB", "RGB"}), "this file is for screens: its colours are those of sRGB")
    PRESS = (frozenset({"DeviceCMYK", "CMYK"}), "the press that this file is for mixes DeviceCMYK")

    def __init__(self, spaces: frozenset[str], hint: str) -> None:
        self.spaces = spaces
        self.hint = hint


_OF = {3: Inks.SCREEN, 4: Inks.PRESS}

_SPACES = {"rg": "DeviceRGB", "k": "DeviceCMYK"}

_GREYS = {"DeviceGray", "G", "CalGray"}


def inks_of(pdf: pikepdf.Pdf) -> Inks:
    """By the profile of the file's output intent, or by the registry that its printing condition stands in."""
    for intent in pdf.Root.get("/OutputIntents", ()):
        profile = intent.get("/DestOutputProfile")
        if profile is not None:
            return _OF.get(int(profile.get("/N", 1)), Inks.BLACK)
        if "/RegistryName" in intent:  # what prints in black only is in no registry
            return Inks.PRESS
    return Inks.BLACK


def faults_of_colour(chosen: Colour, inks: Inks) -> Iterator[tuple[str, str, str]]:
    """What is wrong with a colour that is chosen: a code, words and a hint."""
    space = _SPACES.get(chosen.operator.lower())
    if space in inks.spaces:
        yield from _heavy(chosen.values)
    elif space:
        yield "colour", f"a colour is set in {space}", inks.hint
    elif chosen.operator.lower() == "cs" and chosen.values != ("/DeviceGray",):
        named = str(chosen.values[0])[1:] if chosen.values else "unnamed"
        yield "colour", f"a colour is set in the colour space {named}", inks.hint
    elif chosen.operator == "sh":
        yield "colour", "a shading is used", inks.hint


def faults_of_picture(picture: Picture, inks: Inks) -> Iterator[tuple[str, str, str]]:
    """What is wrong with the colour space of a picture: a code, words and a hint."""
    space = picture.space[1:]
    if space not in _GREYS | inks.spaces:
        hint = "convert it to greyscale" if inks is Inks.BLACK else inks.hint
        yield "colour", f"a picture is in {space}", hint


def _heavy(values: tuple[Any, ...]) -> Iterator[tuple[str, str, str]]:
    if len(values) == 4 and all(isinstance(value, float | int) for value in values):
        laid = round(100 * sum(values))
        if laid > HEAVIEST:
            hint = "take back the inks that black covers anyway"
            yield "much-ink", f"{laid} % of ink are laid on each other, more than the {HEAVIEST} % that dry", hint
