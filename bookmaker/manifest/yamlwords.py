"""What a YAML parser complains of, in the words of somebody who has never heard of YAML.

In: the parser's exception. Out: place, code, text and hint of the one trouble to report.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import TypeAlias

from yaml import YAMLError
from yaml.error import MarkedYAMLError
from yaml.reader import ReaderError

from bookmaker.trouble import Place

Said: TypeAlias = tuple[Place, str, str, str]

_TAB = ("tab", "a tab stands here where spaces are wanted", "set lines in with spaces, two for each step")
_QUOTE = "text that holds “: ” or begins with a sign goes in quotes: 'like: this'"

# Part of what the parser says; whether the place is where the trouble began or where it was noticed; our words.
_SAYINGS: tuple[tuple[str, bool, str, str, str], ...] = (
    (
        "mapping values are not allowed",
        False,
        "colon",
        "this colon is one too many: it follows text that already belongs to a name, or its line is set in too far",
        _QUOTE + "; names that belong together start in the same column",
    ),
    (
        "could not find expected ':'",
        True,
        "no-colon",
        "this line is neither “name: value” nor an item after a dash",
        "if it goes on from the line above, set it in further; after a colon there must be a space",
    ),
    (
        "quoted scalar",
        True,
        "open-quote",
        "a quotation mark opens here and is never closed",
        "close it, or leave both away: most text needs no quotes",
    ),
    (
        "expected ',' or ']'",
        True,
        "open-bracket",
        "the list that opens here with “[” is not closed with “]”, or lacks a comma",
        "",
    ),
    (
        "expected ',' or '}'",
        True,
        "open-bracket",
        "the table that opens here with “{” is not closed with “}”, or lacks a comma",
        "",
    ),
    (
        "expected <block end>",
        False,
        "indent",
        "this line does not line up with the lines it belongs to",
        "lines of one list or table start in the same column",
    ),
    (
        "sequence entries are not allowed",
        False,
        "dash",
        "a list cannot begin in the middle of a line",
        "put the dash on a line of its own, or the text in quotes",
    ),
    ("block collection", False, "indent", "this line does not line up with the lines it belongs to", ""),
    ("scanning an alias", True, "alias", "text cannot begin with “*”", "put the text in quotes: '* …'"),
    ("scanning an anchor", True, "alias", "text cannot begin with “&”", "put the text in quotes: '& …'"),
    ("tag", True, "tag", "text cannot begin with “!”", "put the text in quotes: '! …'"),
    ("directive", True, "directive", "a line cannot begin with “%”", "put the text in quotes: '% …'"),
    (
        "block scalar",
        False,
        "block",
        "after “|” or “>” the line must end; the text begins on the next line, set in",
        _QUOTE,
    ),
)


def in_plain_words(error: YAMLError | ValueError, text: str, file: str, place_of: Callable[[int], Place]) -> Said:
    """The trouble that a parser's exception stands for."""
    if isinstance(error, ReaderError):
        number = error.character if isinstance(error.character, int) else ord(error.character)
        said = f"a character that cannot be printed (number {number}) stands here"
        return place_of(error.position), "stray-character", said, "delete it and type the line anew"
    if not isinstance(error, MarkedYAMLError) or error.problem_mark is None:
        return Place(file), "yaml", "the file cannot be read as YAML", ""
    noticed = error.problem_mark.index
    began = error.context_mark.index if error.context_mark is not None else noticed
    tab = _tab_at(text, noticed)
    if tab is not None:
        return place_of(tab), *_TAB
    said = f"{error.context or ''} {error.problem or ''}"
    if "unknown escape" in said:
        hint = "in single quotes a backslash is an ordinary character: 'like \\ this'"
        return place_of(max(noticed - 1, 0)), "escape", "a backslash in double quotes has a special meaning", hint
    if "cannot start any token" in said:
        return place_of(noticed), "odd-start", f"text cannot begin with “{text[noticed]}”", "put the text in quotes"
    for part, from_start, code, words, hint in _SAYINGS:
        if part in said:
            return place_of(min(began if from_start else noticed, len(text))), code, words, hint
    return (
        place_of(noticed),
        "yaml",
        "this cannot be read; something is missing or misplaced here or just above",
        _QUOTE,
    )


def _tab_at(text: str, index: int) -> int | None:
    """The index of a tab that a complaint at `index` is about: at the place itself or in that line's indent."""
    if text[index : index + 1] == "\t":
        return index
    start = max(text.rfind("\n", 0, index), text.rfind("\r", 0, index)) + 1
    indent = re.match(r"[ \t]*", text[start:])
    found = indent.group().find("\t") if indent else -1
    return start + found if found >= 0 else None
