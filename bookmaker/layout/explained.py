"""What each line of a layout is for, and what a layout says in it.

The words are the comments of the layout `a4-book`, which explains all lines, those that it does not need commented out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache

from bookmaker.layout.specfile import tree_of
from bookmaker.resources import shipped
from bookmaker.source.placed import Table, Word

_LINE = re.compile(r"(?:# )?( *)([a-z -]+):(?: ([^#]*))?(?:#\s*(.*))?")

USUAL = {
    "margins.spine": "0 mm",
    "puzzles.coordinates": "no",
    "puzzles.weight": "1",
    "puzzles.least figure": "6 pt",
    "puzzles.least grid": "0 mm",
    "puzzles.clues in margin": "0 mm",
    "keys.order": "number",
    "press.bleed": "3 mm",
    "press.marks": "yes",
    "press.slug": "yes",
}
"""What holds where a layout says nothing; of `shows`, everything."""


@dataclass(frozen=True, slots=True)
class Value:
    """A line of a layout: its section (empty for those without one), its name, what is typed, and what that is for. A
    section itself has nothing typed. `own` says whether it is typed in the layout's own file and not in its basis."""

    section: str
    name: str
    typed: str
    meaning: str
    own: bool = False


@cache
def explained(file: str = "a4-book.yaml") -> Mapping[str, str]:
    """What each line of a layout is for, or of another file that explains all of its kind, by “section.field”, in the
    order in which they are written."""
    found: dict[str, str] = {}
    above = ""
    for line in (shipped("layouts") / file).read_text("utf-8").splitlines():
        if match := _LINE.fullmatch(line):
            indent, name, _, words = match.groups()
            above = above if indent else name
            if words:
                found[f"{above}.{name}" if indent else name] = words[:1].upper() + words[1:]
    return found


def values_of(name: str) -> Iterator[Value]:
    """All that a layout says, named as on the command line, and what it leaves unsaid that has a usual value. Raises
    BookErrors as `load_layout` does."""
    file, tree = tree_of(name)
    assert isinstance(tree, Table)
    for path, meaning in explained().items():
        section, _, field = path.rpartition(".")
        node = tree.get(section) if section else tree
        value = node.get(field) if isinstance(node, Table) else None
        if isinstance(value, Word):
            yield Value(section, field, value.value, meaning, value.place.file == file)
        elif isinstance(value, Table):
            yield Value("", field, "", meaning)
        elif section == "shows" or path in USUAL:
            yield Value(section, field, USUAL.get(path, "yes"), meaning)
        elif path == "shows":
            yield Value("", field, "", meaning)
