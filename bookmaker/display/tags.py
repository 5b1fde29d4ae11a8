"""What things on a page are to a reader who does not see it: a heading, an entry of a list, a cell of a table.

Pages are painted in the order that suits paper. Tags say which element of the text the items inside them belong to; ink
makes a tree of them, in the order in which a person reads, and whatever has no tag is furniture of the page.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum, auto
from functools import lru_cache
from typing import TypeAlias


class Role(Enum):
    """The kinds of elements. A heading's level follows from the parts and sections around it."""

    PART = auto()
    SECTION = auto()
    HEADING = auto()
    PARAGRAPH = auto()
    LIST = auto()
    ENTRY = auto()
    LABEL = auto()
    BODY = auto()
    CONTENTS = auto()
    CONTENTS_ENTRY = auto()
    REFERENCE = auto()
    LINK = auto()
    FIGURE = auto()
    TABLE = auto()
    ROW = auto()
    COLUMN_HEAD = auto()
    ROW_HEAD = auto()
    CELL = auto()
    FIELD = auto()

    __hash__ = object.__hash__
    """Each is there once. Python would take the hash of its name, and more than twice as long."""


HOLDERS = frozenset(
    {Role.PART, Role.SECTION, Role.LIST, Role.ENTRY, Role.CONTENTS, Role.CONTENTS_ENTRY, Role.TABLE, Role.ROW}
)
"""Elements that hold nothing but other elements: what is painted in them without a tag of its own is furniture."""


@dataclass(frozen=True, slots=True)
class Tag:
    """An element: its role, and what is `said` in place of what is drawn, in words.

    Elements are read in the order of painting, but those of a lower `order` before their siblings of a higher one. What
    `goes_on` is part of the element read just before it, if that has the same role and order: the second line of a
    paragraph, the rest of a list on the next page. `language` is that of the words where it may differ from the
    publication's. `box` is where a figure or table lies: left, top, width, height, in the measure of the items.
    """

    role: Role
    said: str = ""
    order: int = 0
    goes_on: bool = False
    language: str = ""
    box: tuple[float, float, float, float] | None = None

    @property
    def further(self) -> Tag:
        """The same element, going on."""
        return self if self.goes_on else _further(self)


@lru_cache(maxsize=1000)  # nearly all are of a few kinds
def _further(tag: Tag) -> Tag:
    return replace(tag, goes_on=True)


Tags: TypeAlias = tuple[Tag, ...]
"""Elements inside each other, the outermost first."""

OUR_LANGUAGE = "ours"
"""The language of all words that bookmaker itself puts together: the publication's, if it speaks that one."""

HEADING, PARAGRAPH = Tag(Role.HEADING), Tag(Role.PARAGRAPH)
OURS = Tag(Role.PARAGRAPH, language=OUR_LANGUAGE)
"""A paragraph of bookmaker's own words."""

LIST, ENTRY, LABEL, BODY = Tag(Role.LIST, goes_on=True), Tag(Role.ENTRY), Tag(Role.LABEL), Tag(Role.BODY, order=1)
"""A list goes on as long as nothing stands between its entries."""

CONTENTS, CONTENTS_ENTRY = Tag(Role.CONTENTS, goes_on=True), Tag(Role.CONTENTS_ENTRY)
REFERENCE = Tag(Role.REFERENCE, order=4)
"""Where to look things up, read after all that is said of them."""

PART, SECTION, LINK, FIELD = Tag(Role.PART), Tag(Role.SECTION), Tag(Role.LINK), Tag(Role.FIELD)


def further(tags: Tags) -> Tags:
    """The same elements, going on."""
    return tuple(tag.further for tag in tags)
