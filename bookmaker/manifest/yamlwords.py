"""What a YAML parser complains of, in the words of somebody who has never heard of YAML.

In: the parser's exception and the text. Out: index, code, text and hint of the one trouble to report.

The parser's own phrases are matched by their telling part; `tests/manifest/test_yamlfile.py` pins each of them, so
that a parser which changes its phrases is noticed.
"""

from __future__ import annotations

import re
from contextlib import suppress
from typing import NamedTuple

import yaml
from yaml.error import MarkedYAMLError
from yaml.reader import ReaderError

from bookmaker.trouble import LINE_BREAK, quoted


class Said(NamedTuple):
    """A trouble before its place is worked out: `at` counts characters of the text from 0."""

    at: int
    code: str
    text: str
    hint: str


_QUOTE = "put text that begins with a sign, or holds “: ”, in quotes: 'like: this'"
_ITEM = re.compile(r"-[ ]+(?P<name>[\w-]+):")
_NAME = re.compile(r"(?P<name>[\w-]+):")
_TIGHT = re.compile(r"[\w-]+:(?=[\w|>])")
_BARE = re.compile(r"(?P<name>[a-z][\w-]*)[ \t]*[ ;=][ \t]*(?P<value>\S[^\r\n]*)?")
"""A line whose name has lost its colon."""
_ROW = re.compile(r"(?:[ \t|+_-]*[0-9.]){4,}[ \t|+_-]*(?=[\r\n]|\Z)")
"""A row of a picture of givens."""
_DRAWN = re.compile(r"[ ]*([0-9A-Za-z.|+_-]*[0-9.|][0-9A-Za-z.|+_-]*|(?:[0-9A-Za-z.|+_-] *){4,})[ ]*")
"""A row of any picture: signs without spaces, a dot or digit among them, or single signs."""
LONGEST_ROW = 120
"""Characters of a line that may be a row of a picture."""
_UNBRACED = re.compile(r"[ ]*(?:- +)?[\w-]+: [^{}]*, *[\w-]+$")
"""The beginning of a line with several names, up to the second or a later one."""
_MORE_NAMES = re.compile(r": [^{}\r\n]*, *[\w-]+:")
_TYPOGRAPHIC = re.compile(r"[^:]*:[ ]+[“”„‘’«»]")
_ODD_SPACE = re.compile(r"^[ ]*(?:- +)?(?:[\w-]+:)?[ ]*(?P<odd>[^\S \t\r\n\x85\u2028\u2029])", re.MULTILINE)
"""A space of another kind where YAML knows only those of the space bar."""

NO_SPACE_COLON = "a space is missing after the colon"
NO_SPACE = "a dash that begins an item has a space after it"
AS_ITEM = "such as “- id: estuary” or “- r1c1-r1c4”"
UNPARTED = "between braces a comma begins a new name: leave it out here, as in {cells: r1c1 r1c2, total: 5}"
_AFTER = {
    "'": "an apostrophe within single quotes is typed twice: 'it''s'; most text needs no quotes at all",
    '"': "to print the quotation marks too, put single quotes around the whole: '\"Low\" tide'",
    "]": "text that begins with a bracket stands in quotes: '[like] this'",
    "}": "text that begins with a brace stands in quotes: '{like} this'",
}
_INVISIBLE = "an invisible character stands here that is not a space of the space bar"
_ROWS_UNDER = "a picture begins with a line such as “givens: |”, and its rows are set in further than that"
_LINE_UP = "lines of one list or table start in the same column; what belongs to a line above is set in further"

# The telling part of the parser's phrase; whether to point where the trouble began or where it was noticed; our words.
_SAYINGS: tuple[tuple[str, bool, str, str, str], ...] = (
    (
        "expected ',' or ']'",
        True,
        "open-bracket",
        "the list that opens here with “[” is not closed",
        "close it with “]”; between two items stands a comma, as in [one, two]",
    ),
    (
        "expected ',' or '}'",
        True,
        "open-bracket",
        "the table that opens here with “{” is not closed",
        "close it with “}”; between two items stands a comma, as in {a: 1, b: 2}",
    ),
    ("content, but found '<stream end>'", False, "open-bracket", "the file ends before its last bracket is closed", ""),
    (
        "sequence entries are not",
        False,
        "dash",
        "a list cannot begin in the middle of a line",
        "give the dash a line of its own; a text that begins with a dash stands in quotes: '- like this'",
    ),
    ("scanning an alias", True, "alias", "text cannot begin with “*”", _QUOTE),
    ("scanning an anchor", True, "alias", "text cannot begin with “&”", _QUOTE),
    ("a tag", True, "tag", "text cannot begin with “!”", _QUOTE),
    ("directive", True, "directive", "a line cannot begin with “%”", _QUOTE),
    (
        "scanning a block scalar",
        False,
        "block",
        "after “|” or “>” the line must end",
        "the text begins on the next line, set in further",
    ),
)


def in_plain_words(error: Exception, text: str) -> Said:
    """The trouble that the parser's exception stands for."""
    if isinstance(error, ReaderError):
        number = error.character if isinstance(error.character, int) else ord(error.character)
        said = f"a character that cannot be printed (number {number}) stands here"
        return Said(error.position, "stray-character", said, "delete it and type the line anew")
    if not isinstance(error, MarkedYAMLError) or error.problem_mark is None:
        return _unknown_letter(text)
    noticed = error.problem_mark.index
    began = error.context_mark.index if error.context_mark is not None else noticed
    phrase = f"{error.context or ''} {error.problem or ''}"
    special = (
        _tab(text, noticed)
        or _odd_space(text, began, noticed)
        or _comma(phrase, text, began, noticed)
        or _by_the_line(phrase, text, began, noticed)
    )
    if special is not None:
        return special
    for part, from_start, code, words, hint in _SAYINGS:
        if part in phrase:
            return Said(began if from_start else noticed, code, words, hint)
    if "cannot start any token" in phrase or "but found" in phrase or "not allowed here" in phrase:
        said = f"text cannot begin with {quoted(text[noticed : noticed + 1])}"
        return Said(noticed, "odd-start", said, _QUOTE)
    return Said(noticed, "yaml", "this cannot be read; something is missing or misplaced here or just above", _QUOTE)


def _by_the_line(phrase: str, text: str, began: int, noticed: int) -> Said | None:
    """Troubles whose meaning shows only in the line they were noticed in."""
    start = _line_start(text, noticed)
    before = text[start:noticed]
    first = start + len(before) - len(before.lstrip(" "))
    if "unknown escape" in phrase or "escape sequence" in phrase:
        hint = "in single quotes a backslash is an ordinary character: 'like \\ this'"
        said = "a backslash in double quotes begins a code, and this one has no meaning"
        return Said(text.rfind("\\", 0, noticed + 1), "escape", said, hint)
    if "mapping values" in phrase and ": " not in before and (rows := _rows_above(text, start)) is not None:
        said = "this picture has no name of its own, and a line with a name follows it"
        return Said(rows, "lost-name", said, "above it write a line such as “givens: |” or “picture: |”")
    if "mapping values" in phrase and ": " not in before:
        said = "this line is set in further than its place, or lacks a name above it to belong to"
        return Said(first, "indent", said, f"{_LINE_UP}; text of several lines that holds “: ” stands in quotes")
    if "mapping values" in phrase:
        said = "a second colon stands in this line; what follows the first is already text"
        return Said(noticed, "colon", said, _how_to_quote(before, text[noticed:]))
    if "expected ':'" in phrase and (tight := _TIGHT.match(text, began)):
        value = "|" if text[tight.end()] in "|>" else "…"
        return Said(tight.end(), "no-space", NO_SPACE_COLON, f"write “{tight[0]} {value}”")
    if "could not find expected ':'" in phrase:
        said = "this line is neither “name: value” nor an item after a dash"
        return Said(began, "no-colon", said, _how_to_name(text, began))
    if "<document start>" in phrase and (percent := re.search(r"(?m)^%", text)):
        return Said(percent.start(), "directive", "a line cannot begin with “%”", _QUOTE)
    if "a quoted scalar" in phrase:
        return _open_quote(text, began)
    if "<block end>" in phrase and before.rstrip().endswith(("'", '"')):
        opened = _quote_before(text, noticed)
        if opened < start:  # it was closed by the quotation mark of another line
            return _open_quote(text, opened)
    if "<block end>" in phrase and before.rstrip().endswith(tuple(_AFTER)):
        said = "nothing more can follow in this line once its quotes or brackets are closed"
        return Said(noticed, "after-quote", said, _AFTER[before.rstrip()[-1]])
    if "<block end>" in phrase or "<document start>" in phrase:
        return _out_of_line(text, began, first)
    return None


def _rows_above(text: str, start: int) -> int | None:
    """Where the first row begins of a picture that ends right above a line; None where there is none."""
    first = None
    while start:
        above = _line_start(text, start - 2 if text.startswith("\r\n", start - 2) else start - 1)
        row = _DRAWN.fullmatch(text[above:start].rstrip("\r\n")) if start - above < LONGEST_ROW else None
        if row is None:
            break
        start, first = above, above + row.start(1)
    return first


def _open_quote(text: str, at: int) -> Said:
    """A quotation mark without its other half."""
    hint = "close it, or leave both away: most text needs no quotes"
    if re.match(r"'\w", text[at : at + 2]):
        hint += '; text that begins with an apostrophe stands in double quotes: "\'Tis so"'
    return Said(at, "open-quote", "a quotation mark opens here and is never closed", hint)


def _quote_before(text: str, noticed: int) -> int:
    """Where the last quoted text before a place begins."""
    opened = noticed
    with suppress(yaml.YAMLError):
        for token in yaml.scan(text, Loader=yaml.SafeLoader):
            if token.start_mark.index >= noticed:
                break
            if isinstance(token, yaml.ScalarToken) and token.style:
                opened = token.start_mark.index
    return opened


def _how_to_quote(before: str, after: str) -> str:
    """What to do about a second colon, by what stands before it in its line and after it."""
    if _UNBRACED.match(before) or _MORE_NAMES.match(after):
        return "several names in one line stand in braces: {cells: r1c1 r1c2, total: 5}"
    if _TYPOGRAPHIC.match(before):
        return "put straight quotes around the whole; curved ones are printed as they stand: '“like: this”'"
    return _QUOTE


def _how_to_name(text: str, first: int) -> str:
    """What to do about a line without a name."""
    if _ROW.match(text, first):
        return _ROWS_UNDER
    if text.startswith("//", first):
        return "a remark of your own begins with “#”"
    hint = "if it goes on from the line above, set it in further"
    if bare := _BARE.match(text, first):
        name, value = bare["name"], bare["value"] or "…"
        return f"{hint}; if “{name}” is a name, write {quoted(f'{name}: {value}')}"
    return f"{hint}; after the colon of a name comes a space"


def _out_of_line(text: str, began: int, first: int) -> Said:
    """A line that begins in no column where one could begin.

    `first` is where its text begins, `began` where the list or table begins that it was thought to belong to.
    """
    typed = text[first : first + 1]
    if typed and not typed.isprintable():
        return Said(
            first, "odd-space", _INVISIBLE, "delete what stands before the first letter and type the spaces anew"
        )
    if re.compile(r"-\w").match(text, first):
        return Said(first, "dash", NO_SPACE, AS_ITEM)
    if re.compile(r"[–—−•·*]\s").match(text, first):
        said = f"an item begins with the dash of the keyboard, not with “{typed}”"
        return Said(first, "dash", said, AS_ITEM)
    item, name, hint = _ITEM.match(text, began), _NAME.match(text, first), _LINE_UP
    if item and name and item["name"] == name["name"]:
        hint = f"if a new item of the list begins here, put a dash before it: “- {name['name']}: …”"
    elif _ROW.match(text, first):
        hint = _ROWS_UNDER
    elif text.startswith("- ", first) and not re.compile(r"^[ ]*- ", re.MULTILINE).search(
        text, _line_start(text, began), first
    ):
        hint = "a list stands under a name of its own; perhaps “puzzles:” is missing above it"
    return Said(first, "indent", "this line does not line up with the lines it belongs to", hint)


def _comma(phrase: str, text: str, began: int, noticed: int) -> Said | None:
    """Between brackets, what follows in the same line where a comma was wanted."""
    if "expected ',' or" not in phrase or re.search(r"[\r\n]", text[began:noticed]) or not text[noticed:].strip():
        return None
    if text[noticed] in "]}":
        opened = text[began]
        said = f"“{text[noticed]}” does not close what “{opened}” opens"
        return Said(noticed, "open-bracket", said, f"a “{opened}” is closed with “{'}' if opened == '{' else ']'}”")
    if text[noticed] == ":":  # noticed behind the name that should have been parted from what is before it
        noticed = re.compile(r"\S*$").search(text, began, noticed).start()  # type: ignore[union-attr]
    hint = "between two items stands a comma, as in [one, two] and {a: 1, b: 2}"
    return Said(noticed, "comma", "a comma is missing before this", hint)


def _odd_space(text: str, began: int, noticed: int) -> Said | None:
    """A space that does not come from the space bar, in the lines between where it began and was noticed, or above."""
    start = _line_start(text, len(text[: _line_start(text, began)].rstrip("\r\n")))
    end = LINE_BREAK.search(text, noticed)
    odd = _ODD_SPACE.search(text, start, end.start() if end else len(text))
    return Said(odd.start("odd"), "odd-space", _INVISIBLE, "delete it and type the spaces anew") if odd else None


def _tab(text: str, noticed: int) -> Said | None:
    """A tab at the place itself or in that line's indent."""
    start = _line_start(text, noticed)
    line = re.compile(r"[ \t]*").match(text, start)
    found = text.find("\t", start, line.end() if line else start)
    at = noticed if text[noticed : noticed + 1] == "\t" else found
    if at < 0:
        return None
    return Said(at, "tab", "a tab stands here where spaces are wanted", "set lines in with spaces, two for each step")


def _unknown_letter(text: str) -> Said:
    """The parser stumbles without a word over `\\U` with a number that no letter has."""
    code = re.search(r"\\U[0-9A-Fa-f]{8}", text)
    hint = "in single quotes a backslash is an ordinary character: 'like \\ this'"
    return Said(code.start() if code else 0, "escape", "this code after a backslash stands for no letter", hint)


def _line_start(text: str, index: int) -> int:
    return max(text.rfind("\n", 0, index), text.rfind("\r", 0, index)) + 1
