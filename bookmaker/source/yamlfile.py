"""YAML text → a tree in which every word remembers where it was typed.

In: the text of a file and the name to call it by. Out: a `placed` node, or None with the diagnostic in the collector.

The tree is built straight from the parser's events, so nothing is ever expanded, converted or run: `no`, `012` and
`2026-03-14` stay the text that was typed. Anchors, aliases and tags are refused, since a book needs none and a
few lines of them can swell to gigabytes.
"""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator
from contextlib import suppress

import yaml
from yaml.events import (
    AliasEvent,
    DocumentStartEvent,
    Event,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
)

from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place, quoted
from bookmaker.source.file_limits import NESTING
from bookmaker.source.placed import Node, Sequence, Table, Word
from bookmaker.source.yamllines import AS_ITEM, NO_SPACE_COLON, NO_SPACE_DASH, UNPARTED
from bookmaker.source.yamlwords import in_plain_words

_GAPS = {
    None: re.compile(r"\s*[\r\n\x85\u2028\u2029]\s*"),
    "'": re.compile(r"\s*[\r\n\x85\u2028\u2029]\s*|'(?=')"),
    '"': re.compile(r"\s*[\r\n\x85\u2028\u2029]\s*|\\(?:x..|u.{4}|U.{8}|\r\n|.)", re.DOTALL),
}
"""What lies in the source but not in the text it stands for, by the style of its quotation marks."""


_LOST = re.compile(r"[ \t]+(?P<sign>#[0-9]\S*)")
"""After a text without quotes: a number that its sign turns into a comment."""

_LOST_WHOLE = re.compile(r"[ \t]+(?P<sign>#(?:\S|[ \t]*[0-9])[^\r\n]*)")
"""After a name: a text that its sign turns into a comment. One that says something of the name has a space and a letter
after the sign."""

_SWALLOWED = re.compile(r"-\w.*[\r\n]+[ ]*- ")
"""A list of which each item after the first is taken for more of the first one's text."""

_NO_COLON = re.compile(r"[\w-]+:(?=\S)")

_COLON = re.compile(r"\s*:")

_NAME_AND_NUMBER = re.compile(r"([\w-]+) +(\d+)")
"""What stands between two commas if the colon was forgotten."""

LONGEST_PARTED = 1000
"""Characters up to which a text that commas have split is put together again."""


class _Refused(Exception):
    """Reading stops here; the diagnostic is in the collector."""


def parse_yaml(text: str, file: str, collector: Collector) -> Node | None:
    """The tree of a file's one document; None after a diagnostic that makes the rest unreadable.

    A key given twice is a diagnostic too, but the tree is returned, with the first of the two.
    """
    text = text.lstrip("\ufeff")
    reader = _Reader(text, file, collector)
    try:
        tree = reader.document()
    except _Refused:
        return None
    except (yaml.YAMLError, ValueError, OverflowError) as error:
        said = in_plain_words(error, text)
        collector.error(reader.place(min(said.at, len(text))), said.code, said.text, said.hint)
        return None
    if tree is None:
        collector.error(Place(file), "empty-file", "the file is empty", "perhaps it was not saved")
    return tree


class _Reader:
    def __init__(self, text: str, file: str, collector: Collector) -> None:
        self.text, self.file, self.collector = text, file, collector
        self.parted: Word | None = None
        """The name whose text was last found split by commas."""
        self.starts = [0, *(found.end() for found in LINE_BREAK.finditer(text))]

    def place(self, index: int) -> Place:
        """The place of a character of the file."""
        line = bisect_right(self.starts, index)
        return Place(self.file, line, index - self.starts[line - 1] + 1)

    def document(self) -> Node | None:
        events = _events(self.text)
        root: Node | None = None
        for event in events:
            if isinstance(event, DocumentStartEvent):
                if root is not None:
                    said, hint = "a second document begins here", "one file holds one book; remove the line “---”"
                    self.refuse(event, "second-document", said, hint)
                root = self.node(next(events), events, 0)
        return root

    def refuse(self, event: Event, code: str, text: str, hint: str = "") -> None:
        self.collector.error(self.place(_span(event)[0]), code, text, hint)
        raise _Refused

    def node(self, event: Event, events: Iterator[Event], depth: int, item: bool = False) -> Node:
        """The node that an event begins; `item` says that it is one of a list."""
        anchor = getattr(event, "anchor", None)
        if anchor is not None:
            name = quoted(("*" if isinstance(event, AliasEvent) else "&") + anchor)
            said = f"{name} is YAML's shorthand for repeating a part, which a book does not use"
            self.refuse(event, "alias", said, "to mean the text itself, put it in quotes: '* …'")
        if getattr(event, "tag", None) is not None:
            tag = self.text[_span(event)[0] :].split(maxsplit=1)[0]
            said = f"{quoted(tag)} is YAML's way to name a data type, which a book does not use"
            self.refuse(event, "tag", said, "to mean the text itself, put it in quotes: '!…'")
        if depth > NESTING:
            self.refuse(event, "too-deep", f"lists and tables are nested more than {NESTING} deep here")
        place = self.place(_span(event)[0])
        if isinstance(event, ScalarEvent):
            if not event.style:
                self.look_over(event)
            return Word(place, event.value, tuple(self.origins(event)))
        if isinstance(event, SequenceStartEvent):
            values: list[Node] = []
            while not isinstance(event := next(events), SequenceEndEvent):
                values.append(self.node(event, events, depth + 1, item=True))
            return Sequence(place, tuple(values))
        assert isinstance(event, MappingStartEvent)
        return Table(place, tuple(self.entries(events, depth + 1, item, bool(event.flow_style))))

    def look_over(self, event: ScalarEvent) -> None:
        """Slips in a text without quotes that leave it sound, but not what was meant."""
        start, end = _span(event)
        if _SWALLOWED.match(self.text, start, end):
            self.refuse(event, "dash", NO_SPACE_DASH, AS_ITEM)
        if lost := (_LOST if event.value else _LOST_WHOLE).match(self.text, end):
            said = f"{quoted(lost['sign'])} is taken as a comment and will not be printed"
            hint = "put the whole text in quotes: 'Tides #2'"
            self.collector.warn(self.place(lost.start("sign")), "lost-number", said, hint)

    def entries(self, events: Iterator[Event], depth: int, item: bool, flow: bool) -> list[tuple[Word, Node]]:
        """What a table holds; `item` says that it is one of a list, `flow` that it stands in braces."""
        seen: dict[str, Place] = {}
        found: list[tuple[Word, Node]] = []
        again = False
        while not isinstance(event := next(events), MappingEndEvent):
            key = self.node(event, events, depth)
            if not isinstance(key, Word):
                self.refuse(
                    event, "odd-key", "there is a list or table where a name was expected", "write “name: value”"
                )
                return found
            value = self.node(next(events), events, depth)
            empty = isinstance(value, Word) and not value.value
            if again:
                continue  # all that follows belongs to a new item
            if key.value in seen:
                self.say_twice(key, seen, item)
                again = item and key.value == next(iter(seen))
            elif (missed := _NO_COLON.match(key.value)) and empty:
                place, hint = key.at_offset(missed.end()), f"write “{missed[0]} {key.value[missed.end() :]}”"
                self.collector.error(place, "no-space", NO_SPACE_COLON, hint)
            elif flow and empty and not _COLON.match(self.text, _span(event)[1]) and self.mended(key, found):
                seen.setdefault(found[-1][0].value, key.place)
            else:
                seen[key.value] = key.place
                found.append((key, value))
        return found

    def mended(self, key: Word, found: list[tuple[Word, Node]]) -> bool:
        """Report a name in braces without a colon and put it where it is meant to be; False where that is not clear."""
        if lacking := _NAME_AND_NUMBER.fullmatch(key.value):
            said, hint = f"a colon is missing in {quoted(key.value)}", f"write “{lacking[1]}: {lacking[2]}”"
            self.collector.error(key.at_offset(lacking.end(1)), "no-colon", said, hint)
            found.append((Word(key.place, lacking[1]), Word(key.at_offset(lacking.start(2)), lacking[2])))
            return True
        if not found:
            return False
        name, before = found[-1]
        if name is not self.parted:  # said once, however many follow
            said = f"{quoted(key.value)} has been split off from “{name.value}”"
            self.collector.error(key.place, "comma", said, UNPARTED)
            self.parted = name
        if isinstance(before, Word) and len(before.value) < LONGEST_PARTED:
            at = len(before.value) + 1
            more = ((at + offset, place) for offset, place in key.origins or ((0, key.place),))
            origins = (*(before.origins or ((0, before.place),)), *more)
            found[-1] = name, Word(before.place, f"{before.value} {key.value}", origins)
        return True

    def say_twice(self, key: Word, seen: dict[str, Place], item: bool) -> None:
        said = f"“{key.value}” appears twice; the first is on line {seen[key.value].line}"
        hint = "keep one of the two"
        if item and key.value == next(iter(seen)):
            hint += f"; or, if a new item of the list begins here, put a dash before it: “- {key.value}: …”"
        self.collector.error(key.place, "repeated-key", said, hint)

    def origins(self, event: ScalarEvent) -> Iterator[tuple[int, Place]]:
        """Each unbroken stretch of the source, as its offset in the value and the place it begins at."""
        (start, end), value, style = _span(event), event.value, event.style or None  # the quick parser says ""
        if style is None and end - start == len(value):
            return
        at = 0
        for index, piece in self.pieces(style, start, end, value):
            found = value.find(piece, at)
            if found >= 0:
                yield found, self.place(index)
                at = found + len(piece)

    def pieces(self, style: str | None, start: int, end: int, value: str) -> Iterator[tuple[int, str]]:
        """The stretches of a scalar's source that the value repeats word for word, with the index of each."""
        if style in ("|", ">"):
            yield from self.block_lines(start, end, value)
            return
        if style is not None:
            start, end = start + 1, end - 1
        for gap in _GAPS[style].finditer(self.text, start, end):
            if gap.start() > start:
                yield start, self.text[start : gap.start()]
            start = gap.end()
        if end > start:
            yield start, self.text[start:end]

    def block_lines(self, start: int, end: int, value: str) -> Iterator[tuple[int, str]]:
        """The lines under a “|” or “>”, without their common indent."""
        first, last = bisect_right(self.starts, start), bisect_left(self.starts, end)
        lines = [(at, LINE_BREAK.split(self.text[at:end], maxsplit=1)[0]) for at in self.starts[first:last]]
        written = next((line for _, line in lines if line.strip()), "")
        kept = next((line for line in value.split("\n") if line.strip()), "")
        indent = _indent(written) - _indent(kept)
        yield from ((at + indent, line[indent:]) for at, line in lines if line[indent:].strip())


def _events(text: str) -> Iterator[Event]:
    """The parser's events: from the quick parser where there is one; from the plain one, whose complaints we know by
    heart, where the text is faulty or has tabs, of which the two think differently."""
    quick = getattr(yaml, "CSafeLoader", None)
    if quick is not None and "\t" not in text:
        with suppress(yaml.YAMLError, ValueError, OverflowError):
            return iter(list(yaml.parse(text, Loader=quick)))
    return iter(yaml.parse(text, Loader=yaml.SafeLoader))


def _span(event: Event) -> tuple[int, int]:
    """The first character of an event and the one after its last."""
    assert event.start_mark is not None and event.end_mark is not None
    return event.start_mark.index, event.end_mark.index


def _indent(line: str) -> int:
    return len(line) - len(line.lstrip(" "))
