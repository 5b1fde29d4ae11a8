"""Two small puzzles told in full, beside the text kept in `golden/`: any change of wording shows as a change of lines.

After a change that was meant: `RENEW_GOLDEN=1 python -m pytest tests/tell/test_golden.py`, and read the difference.
"""

import os
from pathlib import Path

import pytest

from bookmaker.tell import tell
from bookmaker.tell.formats import as_text
from tests.tell.stories import on_six

GOLDEN = Path(__file__).parent / "golden"


# Grown by this project's makers.
@pytest.mark.parametrize(
    ("name", "givens", "chains"),
    [
        ("classic", "3..25........1...2.4.1..1..3.......6", ()),
        (
            "thermometers",
            ".............24.1...........4.......",
            ("r2c1 r1c1 r1c2 r2c3", "r4c4 r5c4 r5c3 r4c2", "r1c3 r2c4 r1c5 r1c6"),
        ),
    ],
)
def test_a_story_reads_as_it_did(name: str, givens: str, chains: tuple[str, ...]) -> None:
    file = GOLDEN / f"{name}.txt"
    told = as_text(tell(on_six(givens, *chains)))
    if os.environ.get("RENEW_GOLDEN"):
        file.write_text(told, encoding="utf-8")
    assert told == file.read_text(encoding="utf-8")
