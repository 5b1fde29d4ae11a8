"""A rule kind that no book has, in four files as any kind would have them. Importing this puts them in their rooms.

It stands for “adding a kind needs nothing else”, so nothing but these files may know of it. Only for a process of its
own (`test_made_up.py`): the kinds of a process that has looked for them are settled.
"""

from __future__ import annotations

from pathlib import Path

import bookmaker.crosscheck
import bookmaker.language
import bookmaker.rules
import tests.rules

HERE = Path(__file__).parent

bookmaker.language.FOLDERS.append(HERE / "language")
bookmaker.rules.__path__.append(str(HERE / "rules"))
bookmaker.crosscheck.__path__.append(str(HERE / "audit"))
tests.rules.__path__.append(str(HERE))
