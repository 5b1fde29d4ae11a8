"""What the lines around a trouble tell of it: the slips of a hand, each with its place and how to mend it.

In: the text, where the parser noticed a trouble, and where the thing began that it was reading. Out: what to say.
"""

from __future__ import annotations

import re
from contextlib import suppress
from typing import NamedTuple

import yaml

from bookmaker.trouble import LINE_BREAK, quoted


class Said(NamedTuple):
    """A trouble before its place is worked out: `at` counts characters of the text from 0."""

    at: int
    code: str
    text: str
    hint: str


IN_QUOTES = "put text that begins with a sign, or contains “: ”, in quotes: 'like: this'"
NO_SPACE_COLON = "a space is missing after the colon"
NO_SPACE_DASH = "a dash that begins an item has a space after it"
AS_ITEM = "such as “- id: estuary” or “- r1c1-r1c4”"
UNPARTED = "between braces a comma begins a new name: leave it out here, as in {cells: r1c1 r1c2, total: 5}"

LONGEST_ROW = 120
"""Characters of a line that may be a row of a picture."""

_LINE_UP = "lines of one list or table start in the same column; what belongs to the line above is indented further"
_INVISIBLE = "there is an invisible character here that is not an ordinary space"
_ROWS_UNDER = "a picture begins with a line such as “givens: |”, and its rows are indented further than that"
_AFTER = {
    "'": "an apostrophe within single quotes is typed twice: 'it''s'; most text needs no quotes at all",
    '"': "to print the quotation marks too, put single quotes around the whole: '\"Low\" tide'",
    "]": "text that begins with a bracket goes in quotes: '[like] this'",
    "}": "text that begins with a brace goes in quotes: '{like} this'",
}
"""What to do about more text after the sign that closes a text or a list."""

_ITEM = re.compile(r"-[ ]+(?P<name>[\w-]+):")
_NAME = re.compile(r"(?P<name>[\w-]+):")
_TIGHT = re.compile(r"[\w-]+:(?=[\w|>])")
_BARE = re.compile(r"(?P<name>[a-z][\w-]*)[ \t]*[ ;=][ \t]*(?P<value>\S[^\r\n]*)?")
"""A line whose name has lost its colon."""
_UNBRACED = re.compile(r"[ ]*(?:- +)?[\w-]+: [^{}]*, *[\w-]+$")
"""The beginning of a line with several names, up to the second or a later one."""
_MORE_NAMES = re.compile(r": [^{}\r\n]*, *[\w-]+:")
_TYPOGRAPHIC = re.compile(r"[^:]*:[ ]+[“”„‘’«»]")
_GIVENS = re.compile(r"(?:[ \t|+_-]*[0-9.]){4,}[ \t|+_-]*(?=[\r\n]|\Z)")
"""A row of a picture of givens."""
_DRAWN = re.compile(r"[ ]*([0-9A-Za-z.|+_-]*[0-9.|][0-9A-Za-z.|+_-]*|(?:[0-9A-Za-z.|+_-] *){4,})[ ]*")
"""A row of any picture: signs without spaces, a dot or digit among them, or single signs."""
_ODD_SPACE = re.compile(r"^[ ]*(?:- +)?(?:[\w-]+:)?[ ]*(?P<odd>[^\S \t\r\n\x85\u2028\u2029])", re.MULTILINE)
"""A space of another kind where YAML knows only those of the space bar."""
_INDENT = re.compile(r"[ \t]*")
_DASH = re.compile(r"^[ ]*- ", re.MULTILINE)
_TIGHT_DASH = re.compile(r"-\w")
_OTHER_DASH = re.compile(r"[–—−•·*]\s")
_LAST_WORD = re.compile(r"\S*$")


def line_start(text: str, index: int) -> int:
    """Where the line begins that a character stands in."""
    return max(text.rfind("\n", 0, index), text.rfind("\r", 0, index)) + 1


def first_letter(text: str, noticed: int) -> int:
    """Where the line's own text begins, no later than a place in it."""
    start = line_start(text, noticed)
    before = text[start:noticed]
    return start + len(before) - len(before.lstrip(" "))


def tab(text: str, noticed: int) -> Said | None:
    """A tab at the place itself or in that line's indent."""
    start = line_start(text, noticed)
    indent = _INDENT.match(text, start)
    found = text.find("\t", start, indent.end() if indent else start)
    at = noticed if text[noticed : noticed + 1] == "\t" else found
    if at < 0:
        return None
    return Said(at, "tab", "there is a tab here where spaces are needed", "indent lines with spaces, two for each step")


def odd_space(text: str, began: int, noticed: int) -> Said | None:
    """A space that does not come from the space bar, in the lines between the two places or the line above them."""
    start = line_start(text, len(text[: line_start(text, began)].rstrip("\r\n")))
    end = LINE_BREAK.search(text, noticed)
    odd = _ODD_SPACE.search(text, start, end.start() if end else len(text))
    return Said(odd.start("odd"), "odd-space", _INVISIBLE, "delete it and type the spaces again") if odd else None


def no_comma(text: str, began: int, noticed: int) -> Said | None:
    """Between brackets, what follows in the same line where a comma was wanted."""
    if re.search(r"[\r\n]", text[began:noticed]) or not text[noticed:].strip():
        return None
    if text[noticed] in "]}":
        opened = text[began]
        said = f"“{text[noticed]}” does not close what “{opened}” opens"
        return Said(noticed, "open-bracket", said, f"a “{opened}” is closed with “{'}' if opened == '{' else ']'}”")
    if text[noticed] == ":":  # noticed behind the name that should have been separated from what is before it
        noticed = _LAST_WORD.search(text, began, noticed).start()  # type: ignore[union-attr]
    hint = "put a comma between two items, as in [one, two] and {a: 1, b: 2}"
    return Said(noticed, "comma", "a comma is missing before this", hint)


def odd_colon(text: str, noticed: int) -> Said:
    """A colon where none can be: the second of its line, or that of a name set in too far."""
    start = line_start(text, noticed)
    before = text[start:noticed]
    if ": " in before:
        said = "there is a second colon in this line; everything after the first is taken as text"
        return Said(noticed, "colon", said, _how_to_quote(before, text[noticed:]))
    rows = _rows_above(text, start)
    if rows is not None:
        said = "this picture has no name of its own, and a line with a name follows it"
        return Said(rows, "lost-name", said, "write a line above it such as “givens: |” or “picture: |”")
    said = "this line is indented too far, or the name it belongs to is missing above it"
    hint = f"{_LINE_UP}; text of several lines that contains “: ” goes in quotes"
    return Said(first_letter(text, noticed), "indent", said, hint)


def _how_to_quote(before: str, after: str) -> str:
    """What to do about a second colon, by what stands before it in its line and after it."""
    if _UNBRACED.match(before) or _MORE_NAMES.match(after):
        return "several names in one line go in braces: {cells: r1c1 r1c2, total: 5}"
    if _TYPOGRAPHIC.match(before):
        return "put straight quotes around the whole; curved ones are printed as they stand: '“like: this”'"
    return IN_QUOTES


def _rows_above(text: str, start: int) -> int | None:
    """Where the first row begins of a picture that ends right above a line; None where there is none."""
    first = None
    while start:
        above = line_start(text, start - 2 if text.startswith("\r\n", start - 2) else start - 1)
        row = _DRAWN.fullmatch(text[above:start].rstrip("\r\n")) if start - above < LONGEST_ROW else None
        if row is None:
            break
        start, first = above, above + row.start(1)
    return first


def no_colon(text: str, began: int) -> Said:
    """A line that should have a name, and has none that can be read."""
    said = "this line is neither “name: value” nor an item after a dash"
    if tight := _TIGHT.match(text, began):
        value = "|" if text[tight.end()] in "|>" else "…"
        return Said(tight.end(), "no-space", NO_SPACE_COLON, f"write “{tight[0]} {value}”")
    if _GIVENS.match(text, began):
        return Said(began, "no-colon", said, _ROWS_UNDER)
    if text.startswith("//", began):
        return Said(began, "no-colon", said, "a comment begins with “#”")
    hint = "if it continues the line above, indent it further"
    if bare := _BARE.match(text, began):
        name, value = bare["name"], bare["value"] or "…"
        return Said(began, "no-colon", said, f"{hint}; if “{name}” is a name, write {quoted(f'{name}: {value}')}")
    return Said(began, "no-colon", said, f"{hint}; a space follows the colon after a name")


def open_quote(text: str, at: int) -> Said:
    """A quotation mark without its other half."""
    hint = "close it, or leave both out: most text needs no quotes"
    if re.match(r"'\w", text[at : at + 2]):
        hint += '; text that begins with an apostrophe goes in double quotes: "\'Tis so"'
    return Said(at, "open-quote", "a quotation mark opens here and is never closed", hint)


def after_end(text: str, noticed: int) -> Said | None:
    """More text in a line after the quotation mark or bracket that closed what stood before."""
    start = line_start(text, noticed)
    closing = text[start:noticed].rstrip()[-1:]
    if closing not in _AFTER:
        return None
    if closing in "'\"" and (opened := _quote_before(text, noticed)) < start:
        return open_quote(text, opened)  # it was closed by the quotation mark of another line
    said = "nothing more can follow in this line once its quotes or brackets are closed"
    return Said(noticed, "after-quote", said, _AFTER[closing])


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


def out_of_line(text: str, began: int, noticed: int) -> Said:
    """A line that begins in no column where one could; `began` is the list or table it was thought to belong to."""
    first = first_letter(text, noticed)
    typed = text[first : first + 1]
    if typed and not typed.isprintable():
        hint = "delete what comes before the first letter and type the spaces again"
        return Said(first, "odd-space", _INVISIBLE, hint)
    if _TIGHT_DASH.match(text, first):
        return Said(first, "dash", NO_SPACE_DASH, AS_ITEM)
    if _OTHER_DASH.match(text, first):
        said = f"an item begins with the dash of the keyboard, not with “{typed}”"
        return Said(first, "dash", said, AS_ITEM)
    item, name, hint = _ITEM.match(text, began), _NAME.match(text, first), _LINE_UP
    if item and name and item["name"] == name["name"]:
        hint = f"if a new item of the list begins here, put a dash before it: “- {name['name']}: …”"
    elif _GIVENS.match(text, first):
        hint = _ROWS_UNDER
    elif text.startswith("- ", first) and not _DASH.search(text, line_start(text, began), first):
        hint = "a list needs a name above it; perhaps “puzzles:” is missing"
    return Said(first, "indent", "this line does not line up with the lines it belongs to", hint)
