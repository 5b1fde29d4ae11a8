"""Does an installed bookmaker work? Wheel and sdist are built, installed and tried outside the checkout.

    python tests/benchmarks/packaging.py [--tests] [PYTHON ...]

For each Python named (else for the oldest and the newest that are found here) the wheel goes into an empty environment
with the newest versions of what it depends on; for the oldest Python that `pyproject.toml` declares also into one with
the oldest versions declared (for later Pythons those were never built). In each, the commands that a newcomer types are
run in an empty folder; with `--tests` the whole suite of the sdist is run as well, with the newest versions. The wheel
made from the sdist must hold the same files as the wheel made from the checkout. Needs `build` here, and a package
index for pip. Exit code 1 if anything fails.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import tarfile
import tempfile
import tomllib
import venv
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]

JOURNEY = (
    "--version",
    "start mybook",
    "start lines --kind thermometer",
    "rules",
    "layouts",
    "proof mybook --json proof.json --workers 2",
    "typeset mybook --out printed --contact --booklet",
    "typeset mybook --out printed --edition press --date 2026-03-14",
    "preflight printed/book.pdf --against mybook",
    "preflight printed/book-press.pdf",
    "picture lines thermometer-1 --out grid.svg",
    "picture lines thermometer-1 --out grid.png --solved",
    "handout lines --pick thermometer-1 --out handout.pdf",
    "explain lines thermometer-1",
    "screen lines --out report.jsonl",
)
"""What is typed, one command after the other."""

LATEST = 30
"""Pythons are looked for up to this minor version."""


def build(folder: Path) -> tuple[Path, Path]:
    """The wheel and the sdist of the checkout."""
    _run([sys.executable, "-m", "build", "--no-isolation", "--sdist", "--wheel", "--outdir", folder, ROOT], folder)
    (wheel,), (sdist,) = folder.glob("*.whl"), folder.glob("*.tar.gz")
    return wheel, sdist


def rebuilt(sdist: Path, folder: Path) -> Path:
    """The wheel that the sdist makes."""
    with tarfile.open(sdist) as archive:
        archive.extractall(folder, filter="data")
    (source,) = (path for path in folder.iterdir() if path.is_dir())
    _run([sys.executable, "-m", "build", "--no-isolation", "--wheel", "--outdir", folder, source], folder)
    (wheel,) = folder.glob("*.whl")
    return wheel


def found() -> list[str]:
    """The oldest and the newest Python here that the project runs on: this one and those on the path, by version."""
    by_version = {sys.version_info[1]: sys.executable}
    for minor in range(int(_project()["requires-python"].removeprefix(">=3.")), LATEST):
        path = shutil.which(f"python3.{minor}")
        if path and _runs(path):
            by_version.setdefault(minor, path)
    return list(dict.fromkeys((by_version[min(by_version)], by_version[max(by_version)])))


def _runs(python: str) -> bool:
    """Does it start? A version manager may leave a command of this name that only says which version is missing."""
    return subprocess.run([python, "--version"], capture_output=True, check=False).returncode == 0


def is_oldest(python: str) -> bool:
    """Is it the oldest Python that is declared?"""
    ask = "import sys; print('>=%d.%d' % sys.version_info[:2])"
    said = subprocess.run([python, "-c", ask], capture_output=True, text=True, check=True).stdout.strip()
    return bool(said == _project()["requires-python"])


def oldest() -> Iterator[str]:
    """Each declared dependency at its lowest version, as a line of constraints."""
    for line in _project()["dependencies"]:
        name, version = re.match(r"([\w-]+)>=([\d.]+)", line).groups()
        yield f"{name}=={version}"


def _project() -> dict[str, Any]:
    found: dict[str, Any] = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return found


def installed(python: str, wheel: Path, folder: Path, constraints: list[str]) -> Path:
    """The folder of commands of a new environment with the wheel in it."""
    if python == sys.executable:
        venv.create(folder, with_pip=True)
    else:
        _run([python, "-m", "venv", folder], folder.parent)
    limits = folder / "constraints.txt"
    limits.write_text("\n".join(constraints) + "\n", encoding="utf-8")
    commands = folder / ("Scripts" if sys.platform == "win32" else "bin")
    pip = [commands / "python", "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    _run([*pip, "--constraint", limits, wheel], folder)
    return commands


def travel(commands: Path, folder: Path) -> None:
    """Type the commands in an empty folder; all must end well."""
    folder.mkdir()
    for typed in JOURNEY:
        _run([commands / "bookmaker", *typed.split()], folder)
    printed = sorted(path.name for path in (folder / "printed").iterdir())
    assert printed == ["book-press.pdf", "book.pdf", "booklet.pdf", "contact.png", "key-press.pdf", "key.pdf"], printed


def suite(commands: Path, wheel: Path, source: Path) -> None:
    """The tests of an unpacked sdist, against the installed wheel's dependencies."""
    _run([commands / "python", "-m", "pip", "install", "--quiet", f"{wheel}[test]"], source)
    _run([commands / "python", "-m", "pytest"], source)


def _run(command: list[object], folder: Path) -> None:
    environment = {key: value for key, value in os.environ.items() if not key.startswith(("PYTHON", "VIRTUAL_ENV"))}
    environment["BOOKMAKER_CACHE"] = str(folder / "cache")
    done = subprocess.run(
        [str(part) for part in command], cwd=folder, env=environment, capture_output=True, text=True, check=False
    )
    if done.returncode:
        raise SystemExit(f"failed: {' '.join(map(str, command))}\n{done.stdout[-2000:]}{done.stderr[-4000:]}")


def main() -> int:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        wheel, sdist = build(folder)
        (folder / "again").mkdir()
        again = rebuilt(sdist, folder / "again")
        with zipfile.ZipFile(wheel) as one, zipfile.ZipFile(again) as other:
            assert sorted(one.namelist()) == sorted(other.namelist()), "wheel of the sdist differs"
            print(f"{wheel.name}: {len(one.namelist())} files; the sdist makes the same", flush=True)
        named = [argument for argument in sys.argv[1:] if argument != "--tests"]
        for number, python in enumerate(named or found()):
            ages = {"newest": list[str](), **({"oldest": list(oldest())} if is_oldest(python) else {})}
            for age, constraints in ages.items():
                commands = installed(python, wheel, folder / f"{number}-{age}", constraints)
                travel(commands, folder / f"{number}-{age}-trial")
                print(f"{python}, {age} dependencies: {len(JOURNEY)} commands end well", flush=True)
                if "--tests" in sys.argv and age == "newest":
                    suite(commands, wheel, next(path for path in (folder / "again").iterdir() if path.is_dir()))
                    print(f"{python}: the tests of the sdist pass", flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
