"""What fields are for, as the README tells it: editors show it while one types.

In: the README's tables, whose first column names fields. Out: a sentence or two for each, by the table's first heading.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache

from bookmaker.resources import readme

_NAME = re.compile(r"`([a-z-]+)(?:: [a-z]+)?`")


@cache
def told() -> Mapping[str, Mapping[str, str]]:
    """Descriptions by the heading of their table (“field”, “under `book:`”, “in a brief”), then by field. A row that
    begins with “its” tells of the fields of the one before: “imprint.publisher”."""
    found: dict[str, dict[str, str]] = {}
    heading, above = "", ""
    for line in readme().splitlines():
        if not line.startswith("|"):
            heading = ""
            continue
        cells = [cell.strip() for cell in line.strip("|").split(" | ")]
        if not heading:
            heading = cells[0]
            titles = cells
        elif not cells[0].startswith("-"):
            within = f"{above}." if cells[0].startswith("its ") else ""
            words = _sentence(titles, cells)
            for name in _NAME.findall(cells[0]):
                found.setdefault(heading, {})[within + name] = words
                above = above if within else name
    return found


def _sentence(titles: list[str], cells: list[str]) -> str:
    said = [cells[1][:1].upper() + cells[1][1:].replace("`", "")]
    if len(cells) > 2 and cells[2]:
        said.append(f"{titles[2][:1].upper()}{titles[2][1:]}: {cells[2].replace('`', '')}")
    return ". ".join(said) + "."
