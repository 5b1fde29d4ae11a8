"""What a YAML parser complains of, in the words of somebody who has never heard of YAML.

In: the parser's exception and the text. Out: index, code, text and hint of the one trouble to report.

The parser's own phrases are matched by their telling part; `tests/manifest/test_yamlfile.py` pins each of them, so
that a parser which changes its phrases is noticed. What the text itself tells of a slip is seen in `yamllines.py`.
"""

from __future__ import annotations

import re

from yaml.error import MarkedYAMLError
from yaml.reader import ReaderError

from bookmaker.manifest.yamllines import (
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
from bookmaker.trouble import quoted

_BACKSLASH = "in single quotes a backslash is an ordinary character: 'like \\ this'"

# The telling part of the parser's phrase; whether to point where the trouble began or where it was noticed; our words.
_SAYINGS: tuple[tuple[str, bool, str, str, str], ...] = (
    (
        "expected ',' or ']'",
        True,
        "open-bracket",
        "the list that opens here with “[” is not closed",
        "close it with “]”; put a comma between two items, as in [one, two]",
    ),
    (
        "expected ',' or '}'",
        True,
        "open-bracket",
        "the table that opens here with “{” is not closed",
        "close it with “}”; put a comma between two items, as in {a: 1, b: 2}",
    ),
    ("content, but found '<stream end>'", False, "open-bracket", "the file ends before its last bracket is closed", ""),
    (
        "sequence entries are not",
        False,
        "dash",
        "a list cannot begin in the middle of a line",
        "give the dash a line of its own; text that begins with a dash goes in quotes: '- like this'",
    ),
    ("scanning an alias", True, "alias", "text cannot begin with “*”", IN_QUOTES),
    ("scanning an anchor", True, "alias", "text cannot begin with “&”", IN_QUOTES),
    ("a tag", True, "tag", "text cannot begin with “!”", IN_QUOTES),
    ("directive", True, "directive", "a line cannot begin with “%”", IN_QUOTES),
    (
        "scanning a block scalar",
        False,
        "block",
        "after “|” or “>” the line must end",
        "the text begins on the next line, indented further",
    ),
)


def in_plain_words(error: Exception, text: str) -> Said:
    """The trouble that the parser's exception stands for."""
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
    if "cannot start any token" in phrase or "but found" in phrase or "not allowed here" in phrase:
        said = f"text cannot begin with {quoted(text[noticed : noticed + 1])}"
        return Said(noticed, "odd-start", said, IN_QUOTES)
    return Said(noticed, "yaml", "this cannot be read; something is missing or misplaced here or just above", IN_QUOTES)


def _seen(phrase: str, text: str, began: int, noticed: int) -> Said | None:
    """Complaints whose meaning shows only in the lines that they are about."""
    if "unknown escape" in phrase or "escape sequence" in phrase:
        said = "a backslash in double quotes begins a code, and this one has no meaning"
        return Said(text.rfind("\\", 0, noticed + 1), "escape", said, _BACKSLASH)
    if "expected ',' or" in phrase:
        return no_comma(text, began, noticed)
    if "mapping values" in phrase:
        return odd_colon(text, noticed)
    if "could not find expected ':'" in phrase:
        return no_colon(text, began)
    if "a quoted scalar" in phrase:
        return open_quote(text, began)
    if "<document start>" in phrase and (percent := re.search(r"(?m)^%", text)):
        return Said(percent.start(), "directive", "a line cannot begin with “%”", IN_QUOTES)
    if "<block end>" in phrase:
        return after_end(text, noticed) or out_of_line(text, began, noticed)
    return out_of_line(text, began, noticed) if "<document start>" in phrase else None


def _unknown_letter(text: str) -> Said:
    """The parser stumbles without a word over `\\U` with a number that no letter has."""
    code = re.search(r"\\U[0-9A-Fa-f]{8}", text)
    said = "this code after a backslash stands for no letter"
    return Said(code.start() if code else 0, "escape", said, _BACKSLASH)
