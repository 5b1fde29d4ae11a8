"""The number of a book: thirteen digits of which the last checks the others.

In: the node under `isbn:`. Out: the number as typed, its groups separated by dashes, or "" with a trouble on the desk.
Structure and check digit: ISO 2108; ISBN Users' Manual (International ISBN Agency).
"""

from __future__ import annotations

import re

from bookmaker.placed import Node, read_text
from bookmaker.trouble import Desk, quoted


def read_isbn(node: Node, desk: Desk) -> str:
    """The ISBN, if its check digit is right."""
    typed = read_text(node, "“isbn”", desk)
    if not typed:
        return ""
    text = re.sub(r"[-‐–\s]+", "-", typed.strip())
    digits = text.replace("-", "")
    if re.fullmatch(r"\d{9}[\dXx]", digits):
        hint = "books since 2007 have thirteen; the agency that gave the number can tell the longer form"
        desk.error(node.place, "bad-isbn", f"{quoted(typed)} is a ten-digit ISBN", hint)
        return ""
    if not re.fullmatch(r"97[89]\d{10}", digits):
        hint = "thirteen digits that begin with 978 or 979, such as 978-0-11-000222-4"
        desk.error(node.place, "bad-isbn", f"{quoted(typed)} is not an ISBN", hint)
        return ""
    right = check_digit(digits[:12])
    if digits[12] != right:
        said = f"a digit of the ISBN {quoted(typed)} is wrong: its check digit would be {right}, not {digits[12]}"
        desk.error(node.place, "isbn-check", said, "compare it digit by digit with the number you were given")
        return ""
    return text


def check_digit(twelve: str) -> str:
    """The thirteenth digit: it makes the sum of all, every second one tripled, a multiple of ten."""
    return str(-sum(int(digit) * (3 if at % 2 else 1) for at, digit in enumerate(twelve)) % 10)
