"""Layouts that say only what differs from another: `based-on: a5-book`.

In: the tree of a layout's file. Out: the whole tree, each value with the place where it was typed, in whichever file.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from bookmaker.resources import shipped
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Table, Word
from bookmaker.source.yamlfile import parse_yaml

BASED_ON = "based-on"

STAND_IN = "a4-book"

HERE_AS_WELL = "give this value here as well"


def on_basis(own: Node, collector: Collector, names: Sequence[str]) -> Node:
    """The tree with what its basis adds, which may have one itself.

    If it names another than the `names`, it stands on some basis all the same: whoever reads the tree finds that word
    wrong, and should find nothing lacking for it.
    """
    named = own.get(BASED_ON) if isinstance(own, Table) else None
    if named is None:
        return own
    known = isinstance(named, Word) and named.value in names
    name = named.value if isinstance(named, Word) and known else STAND_IN
    path = shipped("layouts") / f"{name}.yaml"
    tree = parse_yaml(path.read_text(encoding="utf-8"), f"layouts/{path.name}", collector)
    assert tree is not None
    return _merged(own, on_basis(tree, collector, names))


def _merged(own: Node, basis: Node) -> Node:
    """All that is typed in the one, and what the other adds."""
    if not isinstance(own, Table) or not isinstance(basis, Table):
        return own
    entries = [(key, _merged(value, basis.get(key.value) or value)) for key, value in own.entries]
    typed = {key.value for key, _ in own.entries}
    return Table(own.place, (*entries, *(entry for entry in basis.entries if entry[0].value not in typed)))


def seen_from(own: Node, collector: Collector) -> None:
    """Let diagnostics with a value of the basis point to the line that names it: what is wrong is that it does not go
    with what the layout itself says, for the basis by itself is sound. Where much is lacking, a basis is what is
    lacking."""
    named = own.get(BASED_ON) if isinstance(own, Table) else None
    if named is None:
        lacking = [each for each in collector.found if each.code == "missing-key" and each.place == own.place]
        if len(lacking) > 2:
            collector.found = [diagnostic for diagnostic in collector.found if diagnostic not in lacking]
            text = "a layout says everything from paper to keys, or on which it is based"
            hint = "add a line such as “based-on: a5-book”; then only what differs need be said"
            collector.error(own.place, "no-basis", text, hint)
        return
    if not isinstance(named, Word):
        return
    for at, diagnostic in enumerate(collector.found):
        if diagnostic.place.file != own.place.file:
            line = diagnostic.place.line
            said = f"with what differs here, {named.value} does not fit (its line {line}): {diagnostic.text}"
            collector.found[at] = replace(
                diagnostic, place=named.place, text=said, hint=diagnostic.hint or HERE_AS_WELL
            )


def places_in(own: Node) -> Mapping[str, Place]:
    """Where the values of a file stand, by “section.field”, and its sections by name."""
    found: dict[str, Place] = {}
    for key, value in own.entries if isinstance(own, Table) else ():
        found[key.value] = key.place
        for inner, _ in value.entries if isinstance(value, Table) else ():
            found[f"{key.value}.{inner.value}"] = inner.place
    return found
