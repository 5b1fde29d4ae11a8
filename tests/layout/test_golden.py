"""Pages as text, item by item, beside those kept in `golden/`: any change on paper shows as a change of lines.

After a change that was meant: `RENEW_GOLDEN=1 python -m pytest tests/layout`, and read the difference.
"""

import os
from collections.abc import Iterator
from hashlib import sha256
from pathlib import Path

import pytest

from bookmaker.layout import compose_key, load_layout
from tests.dump import dump
from tests.layout.pinned import PINNED, pinned_book, pinned_document

GOLDEN = Path(__file__).parent / "golden"
SHORTENED = ("barcode ", "code ", "ornament", "page ")
"""Groups of which the dump gives only how many lines they have, and a hash: codes, art, and pages on larger sheets."""

GRIDS = ("grid ", "key ", "profile")
"""The same for grids, but where they are what the page is kept for."""

OF_GRIDS = ("puzzle", "puzzle-marks", "keys")


def shortened(drawn: str, names: tuple[str, ...]) -> Iterator[str]:
    """The lines of a dump, those inside groups whose names begin so in one."""
    waiting: list[str] = []
    deep = 0
    for line in [*drawn.splitlines(), ""]:
        inside = len(line) - len(line.lstrip())
        if waiting and inside > deep:
            waiting.append(line)
            continue
        if waiting:
            found = sha256("\n".join(waiting).encode()).hexdigest()[:16]
            yield f"{' ' * (deep + 2)}{len(waiting) - 1} lines, sha256 {found}"
            waiting = []
        yield line
        if line.lstrip().startswith(tuple(f"group “{name}" for name in names)):
            waiting, deep = [line.strip()], inside


@pytest.mark.parametrize("name", PINNED)
def test_pages_are_as_they_were(name: str) -> None:
    file = GOLDEN / f"{name}.txt"
    drawn = "\n".join(shortened(dump(PINNED[name]()), SHORTENED if name in OF_GRIDS else SHORTENED + GRIDS))
    if os.environ.get("RENEW_GOLDEN"):
        file.write_text(drawn, encoding="utf-8")
    assert drawn.splitlines() == file.read_text(encoding="utf-8").splitlines()


def test_the_whole_book_is_pinned_by_its_hash() -> None:
    """The same pages in one line: a difference in a file of a thousand lines can be read over, this can't."""
    key = compose_key(pinned_book(), load_layout("a5-book"))
    found = sha256((dump(pinned_document()) + dump(key)).encode()).hexdigest()
    file = GOLDEN / "small-book.sha256"
    if os.environ.get("RENEW_GOLDEN"):
        file.write_text(found + "\n", encoding="utf-8")
    assert found == file.read_text(encoding="utf-8").strip()


def test_no_kept_page_is_left_over() -> None:
    assert {file.stem for file in GOLDEN.glob("*.txt")} == set(PINNED)


def test_what_a_shortened_group_holds_is_still_pinned() -> None:
    drawn = "page\n  group “code x” at 1,2\n    rect 0,0 1 × 1\n    rect 2,0 1 × 1\n  text 0,0 “y”\n"
    moved = drawn.replace("rect 2,0", "rect 3,0")
    one, other = ([*shortened(text, SHORTENED)] for text in (drawn, moved))
    assert len(one) == 5 and one[2].startswith("    2 lines, sha256 ") and one[3] == "  text 0,0 “y”"
    assert one[2] != other[2] and one[:2] == other[:2]
