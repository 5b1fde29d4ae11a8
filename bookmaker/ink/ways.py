"""The ways through a PDF for whoever clicks: names that lead to places, and the outline (ISO 32000-1, 12.3).

In: links and anchors of pages, in order; bookmarks. Out: objects of the file, and their entries in the catalogue. Where
links lead is known when all pages have passed, and then whether each leads somewhere.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.display.items import Bookmark
from bookmaker.ink.pdffile import PdfFile, text_string

_LEAF = 500
"""Names in one leaf of their tree."""


class Ways:
    """The names and the outline of one file."""

    def __init__(self, file: PdfFile) -> None:
        self._file = file
        self._wanted: set[str] = set()
        self._places: dict[str, bytes] = {}
        self._twice: set[str] = set()

    def want(self, names: Iterable[str]) -> None:
        """Note that something leads to these names."""
        self._wanted.update(names)

    def lead(self, name: str, page: int, left: str, top: str) -> None:
        """Let a name lead to a place, in points as PDF writes them, on the page of that number."""
        if name in self._places:
            self._twice.add(name)
        self._places[name] = f"[{page} 0 R /XYZ {left} {top} null]".encode("ascii")

    def finish(self, bookmarks: Sequence[Bookmark]) -> None:
        """Write the names and the outline. Raises ValueError unless all that leads somewhere arrives, and at one
        place, and for a bookmark more than one level deeper than the one before it."""
        nowhere = sorted(self._wanted.union(bookmark.target for bookmark in bookmarks) - self._places.keys())
        if nowhere:
            raise ValueError(f"links or bookmarks that lead nowhere: {', '.join(nowhere)}")
        if self._twice:
            raise ValueError(f"anchors that stand twice: {', '.join(sorted(self._twice))}")
        if bookmarks:
            self._file.catalogue("Outlines", f"{self._put_outline(bookmarks)} 0 R")
            self._file.catalogue("PageMode", "/UseOutlines")
        if self._places:
            self._file.catalogue("Names", f"<< /Dests {self._put_names()} 0 R >>")

    def _put_names(self) -> int:
        """Let links in this and other files lead to the names (12.3.2.3; “book.pdf#key-12”), as a tree (7.9.6) whose
        leaves are looked up by the first and the last name in each; the number of its root."""
        names = sorted(self._places, key=_as_read)
        leaves = []
        for start in range(0, len(names), _LEAF):
            held = names[start : start + _LEAF]
            listed = b" ".join(b"%s %s" % (text_string(name), self._places[name]) for name in held)
            limits = b"%s %s" % (text_string(held[0]), text_string(held[-1]))
            leaves.append(self._file.put_way(b"<< /Limits [%s] /Names [%s] >>" % (limits, listed)))
        return self._file.put_way(b"<< /Kids [%s] >>" % b" ".join(b"%d 0 R" % leaf for leaf in leaves))

    def _put_outline(self, bookmarks: Sequence[Bookmark]) -> int:
        """The entries of the outline (12.3.3), all of them open; the number of its root."""
        parents, branch = [0], [0]
        kids: list[list[int]] = [[] for _ in range(len(bookmarks) + 1)]
        for at, bookmark in enumerate(bookmarks, start=1):
            if bookmark.level >= len(branch):
                raise ValueError(f"a bookmark of level {bookmark.level} in one of level {len(branch) - 2}")
            del branch[bookmark.level + 1 :]
            parents.append(branch[-1])
            kids[branch[-1]].append(at)
            branch.append(at)
        below = [len(some) for some in kids]
        for at in range(len(bookmarks), 0, -1):
            below[parents[at]] += below[at]
        numbers = [self._file.reserve() for _ in kids]

        def leads(name: bytes, at: int) -> bytes:
            return b"/%s %d 0 R" % (name, numbers[at])

        def around(at: int) -> bytes:
            return b"%s%s/Count %d" % (leads(b"First", kids[at][0]), leads(b"Last", kids[at][-1]), below[at])

        self._file.put_way(b"<</Type/Outlines%s>>" % around(0), numbers[0])
        for some in kids:
            for before, at, after in zip([0, *some], some, [*some[1:], 0], strict=False):
                bookmark = bookmarks[at - 1]
                said = b"/Title%s/Dest%s" % (text_string(bookmark.title), self._places[bookmark.target])
                said += leads(b"Parent", parents[at])
                said += leads(b"Prev", before) if before else b""
                said += leads(b"Next", after) if after else b""
                said += around(at) if kids[at] else b""
                self._file.put_way(b"<<%s>>" % said, numbers[at])
        return numbers[0]


def _as_read(name: str) -> bytes:
    """The bytes of a text as PDF keeps it, by which names are put in order."""
    return name.encode("ascii") if name.isascii() else ("\ufeff" + name).encode("utf-16-be")
