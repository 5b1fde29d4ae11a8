"""Fluent files (projectfluent.org, syntax 1.0), each message parsed when it is asked for.

In: the texts of files. Out: messages, and patterns of them filled in. Raises PhraseFault where a message is missing or
can't be filled in.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from fluent.runtime import FluentBundle, FluentResource

_START = re.compile(r"^(?=-?[A-Za-z])", re.MULTILINE)
_REFERENCE = re.compile(r"-?[A-Za-z][\w-]*")
"""Whatever may be a name: taken for one, a word of the text does no harm."""


class PhraseFault(Exception):
    """A message that is missing, or can't be filled in."""


class Messages:
    """The messages of one language. A run wants few of them; to parse them all takes a sixth of a second."""

    def __init__(self, locale: str, functions: Mapping[str, Callable[..., Any]]) -> None:
        self._bundle = FluentBundle([locale], functions=dict(functions), use_isolating=False)
        self._entries: dict[str, str] = {}
        self._parsed: set[str] = set()

    def add(self, text: str) -> None:
        """Take in those of a file, each in the place of one of its name."""
        self._entries |= entries_in(text)

    def __contains__(self, name: str) -> bool:
        return name in self._entries

    @property
    def names(self) -> tuple[str, ...]:
        """The names of all messages; terms are none."""
        return tuple(name for name in self._entries if not name.startswith("-"))

    def message(self, name: str):  # type: ignore[no-untyped-def] # fluent.runtime is untyped here
        """A message as its value and its attributes, whose patterns can be filled in."""
        self._parse(name)
        try:
            return self._bundle.get_message(name)
        except LookupError:
            raise PhraseFault(f"there is no message “{name}”") from None

    def filled(self, name: str, pattern: Any, arguments: Mapping[str, Any]) -> str:
        """A pattern of the message of that name, filled in."""
        text, faults = self._bundle.format_pattern(pattern, dict(arguments))
        if faults:
            raise PhraseFault(f"{name}: {'; '.join(map(str, faults))}")
        return str(text)

    def _parse(self, name: str) -> None:
        """Parse a message or a term, and all that it may refer to."""
        if name in self._entries and name not in self._parsed:
            self._parsed.add(name)
            self._bundle.add_resource(FluentResource(self._entries[name]))
            for other in _REFERENCE.findall(self._entries[name]):
                self._parse(other)


def entries_in(text: str) -> dict[str, str]:
    """The entries of a file as written, each with what follows it up to the next, by their names: those of messages,
    and those of terms with their “-”. An entry begins with a line that begins with its name."""
    return {entry.partition("=")[0].strip(): entry for entry in _START.split(text)[1:]}
