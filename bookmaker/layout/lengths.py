"""Lengths and papers as a designer types them: “25 mm”, “0.75 in”, “12 pt”, “A4”, “6 x 9 in”.

In: a node of a layout file. Out: points (1/72 inch), or a diagnostic at its place. Paper sizes: ISO 216; US Letter
ANSI/ASME Y14.1; the others are common trade trims.
"""

from __future__ import annotations

import re

from bookmaker.source.diagnostics import Collector, nearest
from bookmaker.source.placed import Node, read_text

POINTS = {"mm": 72 / 25.4, "cm": 72 / 2.54, "in": 72.0, "pt": 1.0}
"""Points in one of each unit."""

PAPERS = {
    "A4": (210 * POINTS["mm"], 297 * POINTS["mm"]),
    "A5": (148 * POINTS["mm"], 210 * POINTS["mm"]),
    "B5": (176 * POINTS["mm"], 250 * POINTS["mm"]),
    "Letter": (612.0, 792.0),
}
"""Width and height of papers with a name, in points."""

LANDSCAPE = " landscape"
"""What turns a paper on its side."""

PAPERS |= {f"{name}{LANDSCAPE}": (height, width) for name, (width, height) in PAPERS.items()}

LENGTH = re.compile(r"(\d+(?:\.\d+)?)\s*(mm|cm|in|pt)")
SIZE = re.compile(r"(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm|cm|in|pt)")


def mm(length: float) -> float:
    """Millimetres in points."""
    return length * POINTS["mm"]


def read_length(node: Node, what: str, collector: Collector, least: float, most: float) -> float | None:
    """A length in points between `least` and `most` points, or a diagnostic."""
    text = read_text(node, what, collector)
    if text is None:
        return None
    match = LENGTH.fullmatch(text.strip())
    if match is None:
        collector.error(
            node.place, "not-a-length", f"{what} should be a length such as 12 mm, 0.5 in or 36 pt, not “{text}”"
        )
        return None
    length = float(match[1]) * POINTS[match[2]]
    if least <= length <= most:
        return length
    unit = POINTS[match[2]]
    allowed = f"{least / unit:.3g} to {most / unit:.3g} {match[2]}"
    collector.error(node.place, "out-of-range", f"{what} should be from {allowed}, not {text}")
    return None


def read_number(node: Node, what: str, collector: Collector, least: float, most: float) -> float | None:
    """A number such as 1.5, or a diagnostic."""
    text = read_text(node, what, collector)
    if text is None:
        return None
    if re.fullmatch(r"\d{1,4}(\.\d{1,4})?", text.strip()) is None:
        collector.error(node.place, "not-a-number", f"{what} should be a number such as 1.5, not “{text}”")
        return None
    if least <= float(text) <= most:
        return float(text)
    collector.error(node.place, "out-of-range", f"{what} should be from {least:g} to {most:g}, not {text}")
    return None


def read_paper(node: Node, collector: Collector) -> tuple[float, float] | None:
    """Width and height of a paper in points, or a diagnostic."""
    text = read_text(node, "paper", collector)
    if text is None:
        return None
    if text in PAPERS:
        return PAPERS[text]
    match = SIZE.fullmatch(text.strip())
    if match is None:
        hint = f"{nearest(text, PAPERS)} or give width x height, such as 6 x 9 in"
        collector.error(node.place, "unknown-paper", f"there is no paper “{text}”", hint)
        return None
    width, height = (float(match[i]) * POINTS[match[3]] for i in (1, 2))
    if min(width, height) < mm(90) or max(width, height) > mm(600):
        collector.error(
            node.place, "out-of-range", f"paper of {text} can't hold a page: its sides should be 90 to 600 mm"
        )
        return None
    return width, height
