"""How much a manifest may hold. Generous for any real book, small enough that no file can stall the program."""

from __future__ import annotations

FILE_BYTES = 2_000_000
"""Size of one file."""

FILES = 500
"""Files that one book may be made of, the manifest among them."""

INCLUDE_DEPTH = 4
"""How deep files may include files."""

PUZZLES = 20_000
"""Puzzles in one book."""

NESTING = 20
"""Lists and tables within each other in one file."""

LINE = 200
"""Characters of a title, a name or a permission line."""

NOTE = 4_000
"""Characters of a note."""

BAND_NAME = 20
"""Characters of the name of a band."""

ID = 40
"""Characters of an id."""

ARCHIVE_FILES = 200_000
"""Files and folders that an archive may hold."""

LIST_BYTES = 50_000_000
"""Size of a list of classics in an archive."""
