"""The small values of a manifest: lines of text, notes, ids, dates.

In: a node. Out: the typed value, or None with the diagnostic in the collector. A field left empty counts as left out.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date
from unicodedata import combining, normalize

from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import Collector, quoted
from bookmaker.source.placed import Node, read_text

ID = re.compile(r"[A-Za-z0-9]+(-+[A-Za-z0-9]+)*")
DATE = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")


def read_line(fields: Mapping[str, Node], name: str, collector: Collector, most: int = limits.LINE) -> str:
    """One line of text under a name; "" where it is missing, empty or faulty."""
    node = fields.get(name)
    return " ".join(_sound_text(node, name, collector, most).split()) if node is not None else ""


def read_note(fields: Mapping[str, Node], name: str, collector: Collector) -> str:
    """Text that may have several lines; "" where it is missing, empty or faulty."""
    node = fields.get(name)
    if node is None:
        return ""
    text = _sound_text(node, name, collector, limits.NOTE)
    return "\n".join(" ".join(line.split()) for line in text.strip().splitlines())


def _sound_text(node: Node, name: str, collector: Collector, most: int) -> str:
    text = read_text(node, f"“{name}”", collector)
    if text is None:
        return ""
    if len(text.strip()) > most:
        said = f"“{name}” has {len(text.strip())} characters; there is room for {most}"
        collector.error(node.place, "text-long", said)
        return ""
    return text


def read_id(node: Node, collector: Collector) -> str | None:
    """An id, as it is typed on the command line and used in links."""
    text = read_text(node, "“id”", collector)
    if text is None:
        return None
    if not text:
        collector.error(
            node.place, "no-value", "“id” is left empty", "each puzzle has an id of its own, such as “estuary-2”"
        )
        return None
    if not ID.fullmatch(text) or len(text) > limits.ID:
        said = f"{quoted(text)} cannot be an id"
        letters = "".join(char for char in normalize("NFKD", text) if not combining(char))
        near = "-".join(re.findall("[A-Za-z0-9]+", letters))[: limits.ID].rstrip("-") or "estuary-2"
        hint = f"an id is made of letters a–z, digits and dashes, up to {limits.ID} of them, such as “{near}”"
        collector.error(node.place, "bad-id", said, hint)
        return None
    return text


def read_date(node: Node, name: str, collector: Collector) -> date | None:
    """A day, written year-month-day."""
    text = read_text(node, f"“{name}”", collector)
    if not text:
        return None
    parts = DATE.fullmatch(text)
    if parts is None:
        hint = "write year-month-day, such as 2026-03-14"
        collector.error(node.place, "bad-date", f"{quoted(text)} is not a date", hint)
        return None
    try:
        return date(*map(int, parts.groups()))
    except ValueError:
        collector.error(node.place, "bad-date", f"there is no such day as {text}", "write year-month-day")
        return None
