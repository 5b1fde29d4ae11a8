"""Pens and colours as PDF operators (ISO 32000-1, 8.4.4 and 8.6.8).

In: strokes and colours. Out: operators, one a line. Greys are DeviceGray; inks are DeviceCMYK for a press, DeviceRGB
for a screen.
"""

from __future__ import annotations

from bookmaker.display.colour import Colour, Ink, rgb
from bookmaker.display.items import Stroke
from bookmaker.ink.operators import number

_CAPS = {"butt": 0, "round": 1, "square": 2}
_JOINS = {"miter": 0, "round": 1, "bevel": 2}


def filled_with(colour: Colour, press: bool) -> str:
    """The operator that chooses a colour for what is filled; in capitals, for strokes."""
    if not isinstance(colour, Ink):
        return f"{number(colour)} g"
    values, operator = (colour, "k") if press else (rgb(colour), "rg")
    return f"{' '.join(map(number, values))} {operator}"


def changed_to(stroke: Stroke, before: Stroke, press: bool) -> str:
    """The operators that make a pen of the one before it: what differs."""
    changes = []
    if stroke.width != before.width:
        changes.append(f"{number(stroke.width)} w")
    if stroke.colour != before.colour:
        changes.append(filled_with(stroke.colour, press).upper())
    if stroke.dash != before.dash:
        changes.append(f"[{' '.join(map(number, stroke.dash))}] 0 d")
    if stroke.cap != before.cap:
        changes.append(f"{_CAPS[stroke.cap]} J")
    if stroke.join != before.join:
        changes.append(f"{_JOINS[stroke.join]} j")
    return "\n".join(changes)
