"""Which edition a file is, so that two of them can be told apart.

In: a PDF. Out: “an edition for the press (PDF/X-1a:2003) dated 2026-03-14, fingerprint 1a2b3c4d5e6f”. The fingerprint
is the first half of its first identifier (ISO 32000-1, 14.4), which the maker draws from what is in the file.
"""

from __future__ import annotations

import re
from typing import Any

import pikepdf

from bookmaker.preflight.pdfx import information, promised

_DATE = re.compile(r"D:([0-9]{4})([0-9]{2})([0-9]{2})")


def edition_of(pdf: pikepdf.Pdf) -> str:
    """The edition in words."""
    version = promised(pdf)
    kind = f"an edition for the press ({version})" if version else "an edition for the screen"
    date = _DATE.match(str(information(pdf).get("/CreationDate", "")))
    return f"{kind} {f'dated {date[1]}-{date[2]}-{date[3]}' if date else 'without a date'}{_fingerprint(pdf.trailer)}"


def _fingerprint(trailer: Any) -> str:
    names = trailer.get("/ID")
    if not isinstance(names, pikepdf.Array) or not len(names) or not isinstance(names[0], pikepdf.String):
        return ""
    return f", fingerprint {bytes(names[0])[:6].hex()}"
