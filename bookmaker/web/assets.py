"""The parts that pages are made of: styles, the fonts of the book as far as a page needs them, and the scripts.

In: names of files in `static/`. Out: texts to put into a page, and the words of a content security policy that allow
these and nothing else.
"""

from __future__ import annotations

import re
from base64 import b64encode
from collections.abc import Iterable
from functools import cache
from hashlib import sha256
from importlib import resources
from io import BytesIO

from fontTools import subset

from bookmaker.typeface import typeface

FONTS = (
    ("serif", "Book Serif", "normal", 400),
    ("serif-italic", "Book Serif", "italic", 400),
    ("serif-bold", "Book Serif", "normal", 700),
    ("sans", "Book Sans", "normal", 400),
    ("sans-bold", "Book Sans", "normal", 700),
)
"""The faces that pages are set in: the name of the font, and what the styles call it."""

ALWAYS = "".join(map(chr, range(0x20, 0x7F))) + "“”‘’–—…·×→←↑↓≥≤≠½⅓¼©\u00a0"
"""Characters that every page may show."""

_IMPORT = re.compile(r"^import [^;]*;\n", re.MULTILINE)
_EXPORT = re.compile(r"^export ", re.MULTILINE)


def static(name: str) -> str:
    """The text of a file in `static/`."""
    return resources.files("bookmaker.web").joinpath("static", name).read_text("utf-8")


def bundle(names: Iterable[str]) -> str:
    """Modules in the order in which they need each other, as one script: names at their top levels are all different,
    so that nothing but the lines between them has to go."""
    return "".join(_EXPORT.sub("", _IMPORT.sub("", static(name))) for name in names)


def font_faces(text: str = "") -> str:
    """Styles that carry the fonts of the book, with the letters of a text."""
    letters = frozenset(ALWAYS) | {char for char in text if char.isprintable()}
    return "".join(_face(name, family, style, weight, letters) for name, family, style, weight in FONTS)


@cache
def _face(name: str, family: str, style: str, weight: int, letters: frozenset[str]) -> str:
    data = b64encode(_subset(name, letters)).decode("ascii")
    return (
        f'@font-face{{font-family:"{family}";font-style:{style};font-weight:{weight};'
        f"src:url(data:font/woff;base64,{data})}}\n"
    )


def _subset(name: str, letters: frozenset[str]) -> bytes:
    """The font with only these letters, as WOFF (W3C WOFF 1.0)."""
    options = subset.Options(flavor="woff", layout_features=["kern"], notdef_outline=True, recalc_timestamp=False)
    font = subset.load_font(str(typeface(name).file), options)
    chooser = subset.Subsetter(options)
    chooser.populate(text="".join(sorted(letters)))
    chooser.subset(font)
    file = BytesIO()
    subset.save_font(font, file, options)
    return file.getvalue()


def allowed(text: str) -> str:
    """The source expression that allows exactly this script or style (W3C CSP3, hash-source)."""
    return f"'sha256-{b64encode(sha256(text.encode()).digest()).decode('ascii')}'"


def policy(scripts: Iterable[str], styles: Iterable[str], more: str = "") -> str:
    """A content security policy: nothing from anywhere but these scripts, these styles and the fonts within them."""
    return (
        f"default-src 'none'; script-src {' '.join(map(allowed, scripts))}; "
        f"style-src {' '.join(map(allowed, styles))}; font-src data:; {more}base-uri 'none'; form-action 'none'"
    )
