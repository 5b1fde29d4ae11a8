"""Look-alikes among files: found, proven by their moves, and near ones told apart from them."""

from __future__ import annotations

from pathlib import Path
from random import Random

import pytest

import bookmaker.archive.lookalikes as room
from bookmaker.archive.lookalikes import members_of, near_among, same_among
from bookmaker.proof.cache import FileStore
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.source.diagnostics import Collector
from tests.archive.test_catalogue import COPY, EASY
from tests.digits import digits_from
from tests.grade.turns import turned
from tests.manifest.books import GIVENS, write

SOLUTION = "534678912672195348198342567859761423426853791713924856961537284287419635345286179"
MORE = digits_text(turned(digits_from(EASY[:2] + SOLUTION[2] + EASY[3:]), Random(8)))
OTHERS = digits_text(turned(digits_from(SOLUTION[:45] + "." * 36), Random(9)))

FILES: dict[str, str | bytes] = {
    "store/a.yaml": f"- id: one\n  givens: {EASY}\n- id: other\n  givens: {GIVENS}\n",
    "store/weekly.txt": f"{COPY}\n{MORE}\n",
    "store/m.yaml": (
        f"- id: lines\n  givens: {EASY}\n  rules: {{palindrome: r1c2 r2c3 r3c4}}\n"
        f"- id: lines-again\n  givens: {SOLUTION}\n  rules: {{palindrome: r9c2 r8c3 r7c4}}\n"
    ),
    "new.txt": f"{MORE}\n",
}


@pytest.fixture
def store(tmp_path: Path) -> FileStore:
    write(tmp_path, FILES)
    return FileStore(tmp_path / "cache" / "proofs.sqlite")


def test_groups_and_pairs(tmp_path: Path, store: FileStore) -> None:
    write(tmp_path, {"store/m.yaml": f"- id: plain\n  givens: {OTHERS}\n"})
    found = members_of([tmp_path / "store"], store, None, Collector())
    members = found.members
    assert found.unproven == ("plain" not in {member.id for member in members})
    (group,) = same_among(members)
    assert [member.id for member in group.members] == ["one", "weekly-1"]
    assert digits_text(group.moves[0].apply(digits_from(EASY))) == COPY
    near = [(pair.one.id, pair.other.id, pair.how, pair.apart) for pair in near_among(members)]
    assert ("one", "weekly-2", "givens", 1) in near


def test_only_with_the_old_ones(tmp_path: Path, store: FileStore) -> None:
    new = members_of([tmp_path / "new.txt"], store, None, Collector()).members
    old = members_of([tmp_path / "store"], store, None, Collector(), new)
    assert (old.read, {member.id for member in old.members}) == (
        6,
        {"one", "weekly-1", "weekly-2", "lines"},
    )
    (group,) = same_among([*new, *old.members], mixed=True)
    assert [(member.id, member.old) for member in group.members] == [("weekly-2", True), ("new-1", False)]


def test_the_same_marks_under_other_givens(tmp_path: Path, store: FileStore) -> None:
    """A thermometer along the top row, and one up the left column: the same lines on a square that is turned."""
    rows = (("1234341221434321", "r1c1-r1c4"), ("4213314224311324", "r4c1-r1c1"), ("1234341221434321", "r1c1-r1c3"))
    puzzles = (
        f"- id: p{number}\n  size: 4\n  givens: {givens[:12]}....\n  rules: {{thermometer: {line}}}\n"
        for number, (givens, line) in enumerate(rows)
    )
    write(tmp_path, {"lines.yaml": "".join(puzzles)})
    members = members_of([tmp_path / "lines.yaml"], store, None, Collector()).members
    assert not list(same_among(members))
    assert [(pair.one.id, pair.other.id, pair.how) for pair in near_among(members)] == [("p0", "p1", "marks")]


def test_the_keys_of_a_file_are_kept(tmp_path: Path, store: FileStore, monkeypatch: pytest.MonkeyPatch) -> None:
    first = members_of([tmp_path / "store"], store, None, Collector())
    monkeypatch.setattr(room, "likeness_each", None)
    assert members_of([tmp_path / "store"], store, None, Collector()) == first
