"""What a text may show: nothing that moves a cursor, gives a terminal orders or turns the order of letters about.

In: any text. Out: the same text with a replacement character for each such character. Everything that is printed on a
screen goes through `VisibleStream`, so that no command has to think of it.

The characters are the control codes C0 and C1 (ECMA-48), those that embed, override or isolate a direction (Unicode
Standard Annex #9, section 2), the separators of lines and paragraphs, marks of byte order and annotation, deprecated
tags, and halves of surrogate pairs.
"""

from __future__ import annotations

import re
from typing import Any, TextIO

_CONTROLS = "\\x00-\\x08\\x0b-\\x1f\\x7f-\\x9f"
_DIRECTIONS = "\\u061c\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069"
_OTHERS = "\\u2028\\u2029\\ufeff\\ufff9-\\ufffb\\U000e0000-\\U000e007f\\ud800-\\udfff"

HIDDEN = re.compile(f"[{_CONTROLS}{_DIRECTIONS}{_OTHERS}]")
"""A character that is never shown; tab and line feed are shown."""

STRAY = re.compile(f"(?![\r\x85\u2028\u2029]){HIDDEN.pattern}")
"""One that a manifest may not hold: all of these but the ones that end a line."""


def visible(text: str) -> str:
    """The text with a replacement character for each that is hidden."""
    return HIDDEN.sub("\N{REPLACEMENT CHARACTER}", text)


class VisibleStream:
    """A stream of text that writes only what is visible; in all else it is the stream it was made of."""

    def __init__(self, stream: TextIO) -> None:
        self._stream = stream

    def write(self, text: str) -> int:
        if not isinstance(text, str):
            raise TypeError("this stream takes text")  # as any stream of text does: click finds out by trying
        return self._stream.write(visible(text.replace("\r\n", "\n")))

    def writelines(self, lines: list[str]) -> None:
        for line in lines:
            self.write(line)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._stream, name)
