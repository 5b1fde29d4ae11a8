"""How much a manifest may hold. Generous for any real book, small enough that no file can stall the program."""

from __future__ import annotations

FILE_BYTES = 2_000_000
"""Size of one file."""

FILES = 500
"""Files that one book may be made of, the manifest among them."""

INCLUDE_DEPTH = 4
"""How deep files may include files."""

PUZZLES = 2_000
"""Puzzles in one book."""

NESTING = 20
"""Lists and tables within each other in one file."""

TEXT = 2_000
"""Characters of a title, a name or a note."""

CHAIN_CELLS = 256
"""Cells that one word of a manifest may name."""
