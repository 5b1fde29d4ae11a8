"""Runs a program in an environment as the README's first command makes it: bookmaker and what it depends on, no extras.

The program runs in the environment of the tests, where modules of all other distributions are hidden from it. Which
those are is worked out from the metadata that pip goes by.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Sequence
from functools import cache
from importlib.metadata import PackageNotFoundError, packages_distributions, requires
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

_HIDING = """
import json, sys
hidden = frozenset(json.loads(sys.argv.pop(1)))
class Hidden:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in hidden:
            raise ModuleNotFoundError(f"No module named {name!r}", name=name)
sys.meta_path.insert(0, Hidden())
"""

_CLI = _HIDING + "from bookmaker.cli import main\nmain(prog_name='bookmaker')\n"


@cache
def plain_distributions() -> frozenset[str]:
    """The distributions that “pip install .” brings."""
    found: set[str] = set()
    left = ["bookmaker"]
    while left:
        name = canonicalize_name(left.pop())
        if name in found:
            continue
        try:
            asked = [Requirement(text) for text in requires(name) or ()]
        except PackageNotFoundError:
            continue
        found.add(name)
        left += [one.name for one in asked if one.marker is None or one.marker.evaluate({"extra": ""})]
    return frozenset(found)


@cache
def hidden_modules() -> frozenset[str]:
    """The modules that it does not bring, though they are there for the tests."""
    plain = plain_distributions()
    return frozenset(
        module
        for module, homes in packages_distributions().items()
        if module != "bookmaker" and not any(canonicalize_name(home) in plain for home in homes)
    )


def run_plainly(arguments: Sequence[str | Path], folder: Path) -> subprocess.CompletedProcess[str]:
    """`bookmaker` with these arguments, in this folder."""
    command = [sys.executable, "-c", _CLI, json.dumps(sorted(hidden_modules())), *map(str, arguments)]
    return subprocess.run(command, cwd=folder, capture_output=True, text=True, encoding="utf-8", check=False)
