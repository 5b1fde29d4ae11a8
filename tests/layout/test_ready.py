"""What is read before the first page, while puzzles are proved."""

from __future__ import annotations

import subprocess
import sys

import pytest

READ = """
import sys
from bookmaker import hyphenation
from bookmaker.layout import load_layout, make_ready
from bookmaker.typeface import typeface

layout = load_layout(sys.argv[1]).speaking("nl")
make_ready(layout)
faces, patterns = typeface.cache_info().currsize, hyphenation._patterns.cache_info().currsize
for type in (layout.type.text, layout.type.note, layout.type.label, layout.type.number):
    assert typeface(type.font).__dict__["_kerning"], "read and kept"
print(faces, typeface.cache_info().currsize, patterns)
"""


@pytest.mark.parametrize("layout", ("a4-book", "6x9-book"))
def test_fonts_with_their_kerning_and_hyphenation_are_read(layout: str) -> None:
    """In a process of its own, where nothing has been read before."""
    ran = subprocess.run([sys.executable, "-c", READ, layout], capture_output=True, text=True, check=True)
    assert ran.stdout == "4 4 1\n"
