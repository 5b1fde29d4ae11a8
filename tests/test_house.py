"""The house rules that tools can check: style, types, and the direction of the arrows between rooms."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
BIN = Path(sys.executable).parent


@pytest.mark.parametrize(
    "command",
    [
        ("ruff", "check", "."),
        ("ruff", "format", "--check", "."),
        ("mypy",),
        ("lint-imports", "--no-cache"),
    ],
    ids=lambda command: " ".join(command),
)
def test_tool_is_content(command: tuple[str, ...]) -> None:
    run = subprocess.run([BIN / command[0], *command[1:]], cwd=ROOT, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout + run.stderr


def test_nothing_else_at_the_top() -> None:
    agreed = {"README.md", "DEVELOPERS.md", "pyproject.toml", "bookmaker", "layouts", "fonts", "tests", "demo_book"}
    if not (ROOT / ".git").exists():
        pytest.skip("not a checkout")
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    top = {line.split("/")[0] for line in listed.splitlines()}
    assert {name for name in top if not name.startswith(".")} <= agreed
