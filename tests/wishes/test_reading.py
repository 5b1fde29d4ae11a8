"""Wishes as they are typed: what is read, and what is told of slips, each at its place."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.puzzle.grid import boxed_grid
from bookmaker.rules import kinds
from bookmaker.rules.pointing import Pointing
from bookmaker.source.diagnostics import BookErrors
from bookmaker.wishes.reading import load_wishes
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Amount, Wish

DEMO = Path(__file__).resolve().parents[2] / "demo_book" / "wishes"


def read(text: str, folder: Path) -> tuple[Wish, ...]:
    file = folder / "wish.yaml"
    file.write_text(text, encoding="utf-8")
    return load_wishes(file)


def test_a_wish_with_much_in_it(tmp_path: Path) -> None:
    (wish,) = read(
        """\
wish:
  puzzles: 3
  size: 6
  rules: {thermometer: {shapes: 3 to 5, cells: 4 to 6}, knight: yes}
  arrangement: left-right
  givens: at most 9
  band: Ramble to Hike
  difficulty: 2 to 3.5
  refuse: [what-if]
  want: {X-wing: 1 to 2}
  bottlenecks: {how-many: 1 to 2, where: late}
  openings: at least 2
  idle-marks: yes
  title: Gull {number}
  tags: [harbour, storm]
  seed: 5
""",
        tmp_path,
    )
    assert (wish.puzzles, wish.grid, wish.arrangement, wish.seed) == (3, boxed_grid(6, 2, 3), "left-right", 5)
    assert [each.rule.kind for each in wish.rules] == ["thermometer", "knight"]
    assert wish.rules[0].amount == Amount(3, 5, 4, 6)
    assert (wish.givens, wish.bands, wish.difficulty) == (Span(0, 9), Span(2, 3), Span(2, 3.5))
    assert wish.refused == {"what-if"}
    assert wish.want == {("x-wing",): Span(1, 2)}
    assert (wish.bottlenecks, wish.where) == (Span(1, 2), "late")
    assert (wish.idle_marks, wish.tags, wish.texts) == (True, ("harbour", "storm"), {"title": "Gull {number}"})


@pytest.mark.parametrize("kind", kinds())
def test_a_kind_by_its_name_alone(kind: str, tmp_path: Path) -> None:
    (wish,) = read(f"wish:\n  rules: {kind}\n", tmp_path)
    assert [each.rule.kind for each in wish.rules] == [kind]


@pytest.mark.parametrize(("signs", "named"), [("", "9"), ("digits: from-zero", "8")])
def test_a_digit_is_named_by_its_sign(signs: str, named: str, tmp_path: Path) -> None:
    (wish,) = read(f"wish:\n  rules: {{pointing: {{marks: 2, digit: {named}}}}}\n  {signs}\n", tmp_path)
    assert wish.rules[0].rule == Pointing(digit=9, symbols=wish.grid.symbols)


def test_marks_drawn_as_in_a_manifest(tmp_path: Path) -> None:
    (wish,) = read("wish:\n  rules:\n    thermometer:\n      - r1c2-r1c4 r2c5\n", tmp_path)
    assert wish.rules[0].amount is None
    assert [part.cells for part in wish.rules[0].rule.parts(wish.grid)] == [(1, 2, 3, 13)]


@pytest.mark.parametrize("file", sorted(DEMO.glob("*.yaml")), ids=lambda file: file.stem)
def test_the_demo_book_s_wishes_read(file: Path) -> None:
    wishes = load_wishes(file)
    assert wishes
    assert all("id" in wish.texts for wish in wishes)


def test_there_is_a_wish_for_every_puzzle_of_the_demo_book() -> None:
    wished = {wish.texts["id"] for file in DEMO.glob("*.yaml") for wish in load_wishes(file)}
    assert {entry.id for entry in load(DEMO.parent).entries} <= wished


SLIPS = [
    ("wish:\n  band: Rumble\n", "unknown-band", 2, 9),
    ("wish:\n  band: Climb to Stroll\n", "bands", 2, 9),
    ("wish:\n  rules: {thermometre: {shapes: 3}}\n", "unknown-rule", 2, 11),
    ("wish:\n  rules: {thermometer: {shapes: 5 to 3}}\n", "span-backward", 2, 33),
    ("wish:\n  givens: many\n", "not-a-span", 2, 11),
    ("wish:\n  difficulty: 7\n", "out-of-range", 2, 15),
    ("wish:\n  arrangement: spiral\n", "unknown-word", 2, 16),
    ("wish:\n  refuse: [what-ifs]\n", "unknown-technique", 2, 12),
    ("wish:\n  bands: Climb\n", "unknown-key", 2, 3),
    ("wish:\n  singles-only: yes\n  want: {X-wing: 1}\n", "wish-clash", 2, 17),
    ("wish:\n  refuse: [X-wing]\n  want: {X-wing: 1}\n", "wish-clash", 2, 11),
    ("wish:\n  letters: SHIPWRECK\n  rules: [inequality]\n", "other-signs", 3, 11),
    ("wish:\n  rules: [thermometer, cage, thermometer]\n", "repeated-key", 2, 30),
    ("wish:\n  boxes: none\n  rules: [equal-part-line]\n", "no-regions", 3, 11),
    ("wish:\n  boxes: none\n  rules: {equal-part-line: r1c1-r1c5}\n", "no-regions", 3, 11),
    ("wishes: []\n", "no-wish", 1, 1),
    ("wishes:\n  - {id: a}\n  - {id: a}\n", "same-id", 3, 10),
]


@pytest.mark.parametrize(
    ("text", "code", "line", "column"), SLIPS, ids=[f"{slip[1]} {number}" for number, slip in enumerate(SLIPS)]
)
def test_slips_are_told_at_their_places(text: str, code: str, line: int, column: int, tmp_path: Path) -> None:
    with pytest.raises(BookErrors) as raised:
        read(text, tmp_path)
    (diagnostic,) = raised.value.diagnostics
    assert (diagnostic.code, diagnostic.place.line, diagnostic.place.column) == (code, line, column)


def test_all_slips_at_once(tmp_path: Path) -> None:
    with pytest.raises(BookErrors) as raised:
        read("wish:\n  band: Rumble\n  givens: many\n  seed: x\n", tmp_path)
    assert len(raised.value.diagnostics) == 3
