"""Words and lists in a text that change where they stand.

In: a text, the node that was read from it, and what stands there as it was and as it is to be. Out: `Edit`s, as few
characters as will do and no comment lost; None where that is not plain.
"""

from __future__ import annotations

from collections.abc import Callable

from bookmaker.manifest.written import scalar
from bookmaker.rules.common.parts import Written
from bookmaker.source.diagnostics import Place
from bookmaker.source.placed import Node, Sequence, Table, Word

Edit = tuple[int, int, str]
"""Where characters go, from and to as offsets in the text, and what comes in their place."""

WIDE = 110
"""An item that would make its line longer than this begins another."""


def offsets(text: str) -> Callable[[Place], int]:
    """How many characters stand before a place in a text."""
    starts = [0]
    for line in text.split("\n"):
        starts.append(starts[-1] + len(line) + 1)
    return lambda place: starts[place.line - 1] + place.column - 1


def leaf_edits(text: str, node: Node, old: Written, new: Written) -> list[Edit] | None:
    """The words to change in a node that reads as `old`, so that it reads as `new`; None where that is not plain."""
    if old == new:
        return []
    match node, old, new:
        case Word(), [str(_)], [str(only)]:
            return _word_edit(text, node, only)
        case Word(), str(_), str(one):
            return _word_edit(text, node, one)
        case Sequence(values=values), str(before), str(after) if len(before.split()) == len(values):
            return leaf_edits(text, node, list(before.split()), list(after.split()))
        case Sequence(values=values), list(before), list(after) if len(before) == len(values):
            return _list_edits(text, values, before, after)
        case Table(entries=entries), dict(before), dict(after) if list(before) == list(after):
            typed = {word.value: value for word, value in entries}
            edits: list[Edit] = []
            for name in before:
                found = leaf_edits(text, typed[name], before[name], after[name]) if name in typed else None
                if found is None:
                    return None
                edits += found
            return edits
    return None


def _list_edits(text: str, nodes: tuple[Node, ...], old: list[Written], new: list[Written]) -> list[Edit] | None:
    """Items that change in place; or one that goes with its line, or comes on a line of its own."""
    if len(old) == len(new):
        edits: list[Edit] = []
        for node, before, after in zip(nodes, old, new, strict=True):
            found = leaf_edits(text, node, before, after)
            if found is None:
                return None
            edits += found
        return edits
    offset = offsets(text)
    lines = [(text.rfind("\n", 0, offset(node.place)) + 1, offset(node.place)) for node in nodes]
    if any(text[start:at].strip() != "-" for start, at in lines):
        return _flow_edits(text, nodes, old, new)
    if len(new) == len(old) - 1:
        at = next((i for i, item in enumerate(new) if item != old[i]), len(new))
        if new != old[:at] + old[at + 1 :]:
            return None
        start = lines[at][0]
        end = text.find("\n", start) + 1 or len(text)
        return [(start, end, "")]
    if new[:-1] == old and isinstance(new[-1], str):
        start, at = lines[-1]
        end = text.find("\n", start) + 1 or len(text)
        return [(end, end, f"{text[start:at]}{scalar(new[-1])}\n")]
    return None


def _flow_edits(text: str, nodes: tuple[Node, ...], old: list[Written], new: list[Written]) -> list[Edit] | None:
    """An item that goes from a list in brackets, or comes to its end; what is said behind it stays."""
    offset = offsets(text)
    words = [(offset(node.place), node.value) for node in nodes if isinstance(node, Word)]
    ends = [at + len(value) for at, value in words]
    if len(words) < max(len(nodes), 2) or any(text[at : at + len(value)] != value for at, value in words):
        return None
    if not all("," in text[end:at] for end, (at, _) in zip(ends, words[1:], strict=False)):
        return None  # words in a line, without brackets
    if new[:-1] == old and isinstance(new[-1], str):
        fits = ends[-1] - text.rfind("\n", 0, ends[-1]) + len(new[-1]) < WIDE
        indent = " " * (words[-1][0] - text.rfind("\n", 0, words[-1][0]) - 1 if not fits else 0)
        return [(ends[-1], ends[-1], f", {new[-1]}" if fits else f",\n{indent}{new[-1]}")]
    gone = next((at for at, item in enumerate(new) if item != old[at]), len(new))
    if new != old[:gone] + old[gone + 1 :]:
        return None
    start, end = words[gone][0], ends[gone]
    if gone == len(new):
        comma = text.index(",", ends[gone - 1])
        return [(comma, comma + 1, ""), (start, end, "")]
    comma = text.index(",", end)
    after = comma + 1 + (text[comma + 1 : comma + 2] == " " != text[comma + 2 : comma + 3])
    return [(start, after, "")]


def _word_edit(text: str, word: Word, new: str) -> list[Edit] | None:
    """A word in one line without quotes for another."""
    at = offsets(text)(word.place)
    if "\n" in word.value or text[at : at + len(word.value)] != word.value or "\n" in new:
        return None
    return [(at, at + len(word.value), new)]
