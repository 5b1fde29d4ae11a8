"""Files with damage: what a bad disk, a broken transfer or ill will makes of them."""

from __future__ import annotations

import re
from functools import cache

from hypothesis import strategies as st

_TOKEN = re.compile(rb"-?\d+(?:\.\d+)?|/[A-Za-z]\w*|[A-Za-z_]\w*")


@st.composite
def damaged(draw: st.DrawFn, whole: bytes) -> bytes:
    """A file with some bytes changed, cut out, put in or doubled, or its end lost."""
    data = bytearray(whole)
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(data)))
        length = draw(st.sampled_from([1, 1, 2, 7, 64, 1000]))
        match draw(st.sampled_from(["change", "cut", "put", "double", "end"])):
            case "change":
                data[at : at + length] = draw(st.binary(min_size=1, max_size=4))
            case "cut":
                del data[at : at + length]
            case "put":
                data[at:at] = draw(st.binary(min_size=1, max_size=8))
            case "double":
                data[at:at] = data[at : at + length]
            case "end":
                del data[at:]
    return bytes(data)


@st.composite
def swapped(draw: st.DrawFn, whole: bytes) -> bytes:
    """A file in which some numbers and names have the place of others: sound in its letters, not in what it says."""
    spans, values = _tokens(whole)
    data = whole
    for start, end in sorted(draw(st.sets(st.sampled_from(spans), min_size=1, max_size=4)), reverse=True):
        data = data[:start] + draw(st.sampled_from(values)) + data[end:]
    return data


@cache
def _tokens(whole: bytes) -> tuple[tuple[tuple[int, int], ...], tuple[bytes, ...]]:
    """Where numbers and names stand in a file, and what to put in their places."""
    found = list(_TOKEN.finditer(whole))
    odd = (b"0", b"-1", b"1e9", b"99999999999", b"/X", b"null")
    return tuple(token.span() for token in found), (*odd, *dict.fromkeys(token.group() for token in found))
