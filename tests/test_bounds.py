"""Libraries that are leaned on beyond what their handbooks promise: their versions are bounded, and what is used of
them is still there."""

from __future__ import annotations

import ast
import tomllib
from importlib import import_module
from importlib.metadata import version
from pathlib import Path

import pytest
from packaging.requirements import Requirement

from bookmaker.ink.pdffile import RELIED_ON

ROOT = Path(__file__).resolve().parent.parent

BOUNDED = {"reportlab": "bookmaker/ink/pdffile.py", "pyyaml": "bookmaker/source/yamlwords.py"}
"""Each with the file that says what is used."""


def declared() -> dict[str, Requirement]:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return {needed.name: needed for needed in map(Requirement, project["dependencies"])}


@pytest.mark.parametrize("name", BOUNDED)
def test_no_newer_version_than_was_tried(name: str) -> None:
    bounds = declared()[name].specifier
    assert any(bound.operator == "<" for bound in bounds)
    assert version(name) in bounds, (
        f"{name} {version(name)} is installed, and pyproject.toml allows {bounds}: "
        f"see whether what {BOUNDED[name]} lists is still so, then raise the bound"
    )


@pytest.mark.parametrize("place", RELIED_ON)
def test_what_is_used_of_reportlab_is_there(place: str) -> None:
    module, _, name = place.partition(":")
    holder = import_module(module)
    if name == "PDFDocument":
        holder = holder.PDFDocument()  # most of its parts are made with it
    elif name:
        holder = getattr(holder, name)
    lacking = [part for part in RELIED_ON[place] if not hasattr(holder, part)]
    assert not lacking, f"reportlab {version('reportlab')} has no {', '.join(lacking)} in {place}"


def test_reportlab_is_used_in_two_files_alone() -> None:
    users = {
        file.name
        for file in (ROOT / "bookmaker").rglob("*.py")
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom | ast.Import)
        for name in ([node.module or ""] if isinstance(node, ast.ImportFrom) else [alias.name for alias in node.names])
        if name.split(".")[0] == "reportlab"
    }
    assert users == {"pdffile.py", "pdffonts.py"}
