"""A rule's marks as the setter typed them, a line a mark: what the text edition reads aloud.

In: the body of a rule in the manifest. Out: its lines, lists and names told apart by signs. A body of “yes” says
nothing that the rule's sentence does not say.
"""

from __future__ import annotations

from bookmaker.placed import Node, Sequence, Word


def typed_marks(body: Node) -> tuple[str, ...]:
    """A line for each mark or group of marks."""
    match body:
        case Word(value=value):
            return () if value in ("yes", "true") else tuple(line.strip() for line in value.splitlines())
        case Sequence(values=values):
            return tuple(_line(value) for value in values)
        case _:
            return tuple(f"{word.value}: {_line(value)}" for word, value in body.entries)


def _line(node: Node) -> str:
    match node:
        case Word(value=value):
            return " ".join(value.split())
        case Sequence(values=values):
            return ", ".join(map(_line, values))
        case _:
            return "; ".join(f"{word.value}: {_line(value)}" for word, value in node.entries)
