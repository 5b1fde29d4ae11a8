"""What a YAML parser complains of, in the words of somebody who has never heard of YAML.

In: the parser's exception and the text. Out: index, code, text and hint of the one diagnostic to report.

The parser's own phrases are matched by their telling part: `Phrase` has all of them, `tests/manifest/test_yamlwords.py`
a text for each that makes the parser say it, and `pyproject.toml` a bound on the parser's version. What the text itself
tells of a slip is seen in `yamllines.py`.
"""

from __future__ import annotations

import re
from enum import StrEnum

from yaml.error import MarkedYAMLError
from yaml.reader import ReaderError

from bookmaker.source.diagnostics import quoted
from bookmaker.source.yamllines import (
    IN_QUOTES,
    Said,
    after_end,
    no_colon,
    no_comma,
    odd_colon,
    odd_space,
    open_quote,
    out_of_line,
    tab,
)


class Phrase(StrEnum):
    """The telling parts of what the parser says."""

    LIST = "expected ',' or ']'"
    TABLE = "expected ',' or '}'"
    COMMA = "expected ',' or"
    FILE_END = "content, but found '<stream end>'"
    DASH = "sequence entries are not"
    ALIAS = "scanning an alias"
    ANCHOR = "scanning an anchor"
    TAG = "a tag"
    DIRECTIVE = "directive"
    BLOCK = "scanning a block scalar"
    NO_TOKEN = "cannot start any token"
    BUT_FOUND = "but found"
    NOT_HERE = "not allowed here"
    UNKNOWN_ESCAPE = "unknown escape"
    ESCAPE = "escape sequence"
    COLON = "mapping values"
    NO_COLON = "could not find expected ':'"
    QUOTES = "a quoted scalar"
    DOCUMENT_START = "<document start>"
    BLOCK_END = "<block end>"


_BACKSLASH = "in single quotes a backslash is an ordinary character: 'like \\ this'"

# The telling part of the parser's phrase; whether to point where the diagnostic began or where it was noticed; our
# words.
_SAYINGS: tuple[tuple[Phrase, bool, str, str, str], ...] = (
    (
        Phrase.LIST,
        True,
        "open-bracket",
        "the list that opens here with “[” is not closed",
        "close it with “]”; put a comma between two items, as in [one, two]",
    ),
    (
        Phrase.TABLE,
        True,
        "open-bracket",
        "the table that opens here with “{” is not closed",
        "close it with “}”; put a comma between two items, as in {a: 1, b: 2}",
    ),
    (Phrase.FILE_END, False, "open-bracket", "the file ends before its last bracket is closed", ""),
    (
        Phrase.DASH,
        False,
        "dash",
        "a list cannot begin in the middle of a line",
        "give the dash a line of its own; text that begins with a dash goes in quotes: '- like this'",
    ),
    (Phrase.ALIAS, True, "alias", "text cannot begin with “*”", IN_QUOTES),
    (Phrase.ANCHOR, True, "alias", "text cannot begin with “&”", IN_QUOTES),
    (Phrase.TAG, True, "tag", "text cannot begin with “!”", IN_QUOTES),
    (Phrase.DIRECTIVE, True, "directive", "a line cannot begin with “%”", IN_QUOTES),
    (
        Phrase.BLOCK,
        False,
        "block",
        "after “|” or “>” the line must end",
        "the text begins on the next line, indented further",
    ),
)


def in_plain_words(error: Exception, text: str) -> Said:
    """The diagnostic that the parser's exception stands for."""
    if isinstance(error, ReaderError):
        number = error.character if isinstance(error.character, int) else ord(error.character)
        said = f"a character that cannot be printed (number {number}) stands here"
        return Said(error.position, "stray-character", said, "delete it and type the line again")
    if not isinstance(error, MarkedYAMLError) or error.problem_mark is None:
        return _unknown_letter(text)
    noticed = error.problem_mark.index
    began = error.context_mark.index if error.context_mark is not None else noticed
    phrase = f"{error.context or ''} {error.problem or ''}"
    seen = tab(text, noticed) or odd_space(text, began, noticed) or _seen(phrase, text, began, noticed)
    if seen is not None:
        return seen
    for part, from_start, code, words, hint in _SAYINGS:
        if part in phrase:
            return Said(began if from_start else noticed, code, words, hint)
    if any(part in phrase for part in (Phrase.NO_TOKEN, Phrase.BUT_FOUND, Phrase.NOT_HERE)):
        said = f"text cannot begin with {quoted(text[noticed : noticed + 1])}"
        return Said(noticed, "odd-start", said, IN_QUOTES)
    return Said(noticed, "yaml", "this cannot be read; something is missing or misplaced here or just above", IN_QUOTES)


def _seen(phrase: str, text: str, began: int, noticed: int) -> Said | None:
    """Complaints whose meaning shows only in the lines that they are about."""
    if Phrase.UNKNOWN_ESCAPE in phrase or Phrase.ESCAPE in phrase:
        said = "a backslash in double quotes begins a code, and this one has no meaning"
        return Said(text.rfind("\\", 0, noticed + 1), "escape", said, _BACKSLASH)
    if Phrase.COMMA in phrase:
        return no_comma(text, began, noticed)
    if Phrase.COLON in phrase:
        return odd_colon(text, noticed)
    if Phrase.NO_COLON in phrase:
        return no_colon(text, began)
    if Phrase.QUOTES in phrase:
        return open_quote(text, began)
    if Phrase.DOCUMENT_START in phrase and (percent := re.search(r"(?m)^%", text)):
        return Said(percent.start(), "directive", "a line cannot begin with “%”", IN_QUOTES)
    if Phrase.BLOCK_END in phrase:
        return after_end(text, noticed) or out_of_line(text, began, noticed)
    return out_of_line(text, began, noticed) if Phrase.DOCUMENT_START in phrase else None


def _unknown_letter(text: str) -> Said:
    """The parser stumbles without a word over `\\U` with a number that no letter has."""
    code = re.search(r"\\U[0-9A-Fa-f]{8}", text)
    said = "this code after a backslash stands for no letter"
    return Said(code.start() if code else 0, "escape", said, _BACKSLASH)
