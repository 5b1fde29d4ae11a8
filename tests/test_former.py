"""Words of earlier versions: whoever still writes one is told, where it stands, what it is called now."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.rules import kinds
from bookmaker.source.diagnostics import FORMER, nearest
from tests.cli.running import run
from tests.manifest.books import GIVENS, HEAD, troubles_of

FORMER_KINDS = [former for former, now in FORMER.items() if now in kinds()]


@pytest.mark.parametrize("former", FORMER_KINDS)
def test_a_book_with_a_former_kind_is_told_the_new_name(former: str, tmp_path: Path) -> None:
    assert former not in kinds()
    rules = f"  rules:\n    {former}:\n    - r1c1-r1c4\n"
    (found,) = troubles_of(tmp_path, {"book.yaml": HEAD + f"- id: a\n  givens: {GIVENS}\n{rules}"})
    assert (found.code, found.place.line, found.place.column) == ("unknown-rule", 8, 5)
    assert found.hint == f"it is called “{FORMER[former]}” now"


@pytest.mark.parametrize("command", [("rules",), ("start", "new", "--kind")])
def test_so_do_the_commands(command: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    for former in FORMER_KINDS:
        result = run(*command, former)
        assert result.exit_code > 0
        assert f"it is called “{FORMER[former]}” now" in result.stderr
    assert not list(tmp_path.iterdir())


def test_a_former_order_is_told_the_new_name(tmp_path: Path) -> None:
    (found,) = troubles_of(
        tmp_path, {"book.yaml": f"book: {{title: T, order: effort}}\npuzzles: [{{id: a, givens: '{GIVENS}'}}]\n"}
    )
    assert (found.code, found.place.line, found.place.column) == ("unknown-word", 1, 25)
    assert found.hint == "it is called “difficulty” now"


def test_a_word_that_never_was_is_only_likened() -> None:
    assert "is called" not in nearest("zipper", kinds())
