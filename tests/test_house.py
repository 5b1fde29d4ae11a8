"""The house rules that tools can check: style, types, and the direction of the arrows between rooms."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
import yaml

from bookmaker.source.diagnostics import FORMER

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


def test_hooks_before_a_commit_look_at_the_same() -> None:
    """And they name no host to fetch them from."""
    config = yaml.safe_load((ROOT / ".pre-commit-config.yaml").read_text(encoding="utf-8"))
    assert [repo["repo"] for repo in config["repos"]] == ["local"]
    entries = [hook["entry"].split()[:2] for repo in config["repos"] for hook in repo["hooks"]]
    assert [entry[: 1 + (entry[0] == "ruff")] for entry in entries] == [
        ["ruff", "check"], ["ruff", "format"], ["mypy"], ["lint-imports"]
    ]  # fmt: skip


def test_the_newest_version_has_its_changes_written_down() -> None:
    version = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
    developers = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert re.search(r"^### (\S+)", developers.partition("## Changes\n")[2], re.MULTILINE)[1] == version
    for former, now in FORMER.items():
        assert f"| `{former}` | `{now}` |" in developers


FOUND_BY_FOLDER = ("rules", "audit", "cli", "techniques")
"""Rooms whose members are found by the folder that they lie in."""


def test_nothing_is_there_for_the_tests_alone() -> None:
    """What is written at the head of a module is named somewhere else in the program."""
    trees = {file: ast.parse(file.read_text(encoding="utf-8")) for file in (ROOT / "bookmaker").rglob("*.py")}
    named = {
        node.id if isinstance(node, ast.Name) else node.attr
        for tree in trees.values()
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute) or (isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load))
    }
    written = {
        (file.relative_to(ROOT).as_posix(), node.name)
        for file, tree in trees.items()
        for node in tree.body
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not set(FOUND_BY_FOLDER) & set(file.parts)
    }
    assert {place for place in written if place[1] not in named} == set()


def test_nothing_else_at_the_top() -> None:
    agreed = {"README.md", "DEVELOPERS.md", "pyproject.toml", "bookmaker", "layouts", "fonts", "tests", "demo_book"}
    if not (ROOT / ".git").exists():
        pytest.skip("not a checkout")
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    top = {line.split("/")[0] for line in listed.splitlines()}
    assert {name for name in top if not name.startswith(".")} <= agreed
