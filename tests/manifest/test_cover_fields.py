"""What a manifest says of its cover besides the picture, and the message for each misuse at its place."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.manifest.books import GIVENS, read, troubles_of

PUZZLE = f"puzzles:\n- id: a\n  givens: {GIVENS}\n"
HEAD = "book:\n  title: Tides\n  permission: by permission\n  theme: eelgrass\n  cover:\n"
"""What is under test begins on line 6."""


def profile(device: bytes = b"prtr", space: bytes = b"CMYK", version: int = 2) -> bytes:
    """The header of an ICC profile (ICC.1, 7.2), and nothing after it."""
    head = bytearray(128)
    head[8], head[12:16], head[16:20], head[36:40] = version, device, space, b"acsp"
    return bytes(head)


def test_all_of_it(tmp_path: Path) -> None:
    lines = ("focus: 60% 30%", "price: £ 9.50", "category: Puzzles and games", "sample: a", "condition: FOGRA52")
    said = "".join(f"    {line}\n" for line in lines)
    publication = read(tmp_path, {"book.yaml": HEAD + said + PUZZLE}).publication
    cover = publication.cover
    assert publication.theme == "eelgrass"
    assert (cover.focus, cover.price, cover.category) == ((0.6, 0.3), "£ 9.50", "Puzzles and games")
    assert (cover.sample, cover.condition, cover.profile) == ("a", "FOGRA52", b"")
    assert cover.places["sample"].line == 9


@pytest.mark.parametrize(
    ("line", "code", "said"),
    [
        ("focus: left", "bad-focus", "“left” is not a point of the picture"),
        ("focus: 60% 130%", "bad-focus", "is not a point"),
        ("profile: no.icc", "no-file", "there is no profile “no.icc”"),
        ("profile: ../press.icc", "profile-outside", "is not inside the book's folder"),
        ("profile: words.icc", "not-a-profile", "is not an ICC profile"),
        ("profile: screen.icc", "wrong-profile", "is not the profile of a press that prints in four colours"),
        ("profile: new.icc", "wrong-profile", "is of version 4 of ICC"),
        ("profile: cut.icc", "not-a-profile", "is damaged or incomplete"),
    ],
)
def test_misuses(tmp_path: Path, line: str, code: str, said: str) -> None:
    files: dict[str, str | bytes] = {
        "book.yaml": HEAD + f"    {line}\n" + PUZZLE,
        "words.icc": b"a profile of the press",
        "screen.icc": profile(b"mntr", b"RGB "),
        "new.icc": profile(version=4),
        "cut.icc": profile(),
    }
    (diagnostic,) = troubles_of(tmp_path, files)
    assert diagnostic.code == code and said in diagnostic.text and diagnostic.hint
    assert (diagnostic.place.line, diagnostic.place.column) == (6, 5 + line.index(" ") + 1)
