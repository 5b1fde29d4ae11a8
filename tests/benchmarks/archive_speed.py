"""How long an archive takes to open: `python tests/benchmarks/archive_speed.py [PUZZLES]`.

An archive of drawn classics (10,000 unless said), a hundred to a file and the last tenth in a list, is opened twice:
the first time everything is proved and graded, the second time nothing has changed. Then one file is changed. All
seconds are processor time, with the start of Python; the ratio of cold to warm is printed. Wanted: warm in under 3 s.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path
from random import Random

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.puzzle.puzzle import digits_text
from tests.benchmarks.twins_speed import drawn
from tests.grade.turns import turned

CODE = "import sys; from bookmaker.cli import main; main(sys.argv[1:], standalone_mode=False)"
A_FILE = 100


def opened(archive: Path, cache: Path) -> float:
    """Seconds of the command."""
    before = os.times()
    subprocess.run(
        [sys.executable, "-c", CODE, "archive", str(archive), "--band", "Summit"],
        env={**os.environ, "BOOKMAKER_CACHE": str(cache), "PYTHONPATH": str(ROOT)},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        check=True,
    )
    after = os.times()
    return after.children_user + after.children_system - before.children_user - before.children_system


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    rng = Random(3)
    seeds = [drawn(rng) for _ in range(max(count // 20, 1))]
    lines = [digits_text(turned(seeds[number % len(seeds)], rng)) for number in range(count)]
    with tempfile.TemporaryDirectory() as folder:
        archive, cache = Path(folder) / "archive", Path(folder) / "cache"
        archive.mkdir()
        listed = count // 10
        for start in range(0, count - listed, A_FILE):
            items = [
                f"- id: p{start + at}\n  title: Puzzle {start + at}\n  setter: Setter {at % 7}\n  givens: {line}\n"
                for at, line in enumerate(lines[start : min(start + A_FILE, count - listed)])
            ]
            (archive / f"part-{start:06}.yaml").write_text("\n".join(items), encoding="utf-8")
        (archive / "list.txt").write_text("\n".join(lines[count - listed :]) + "\n", encoding="utf-8")
        cold, warm = opened(archive, cache), opened(archive, cache)
        first = archive / "part-000000.yaml"
        first.write_text(first.read_text(encoding="utf-8") + "\n", encoding="utf-8")
        changed = opened(archive, cache)
    told = f"cold {cold:.1f} s, warm {warm:.2f} s ({cold / warm:.0f} times as fast), one file changed {changed:.2f} s"
    print(f"{count} puzzles: {told}")


if __name__ == "__main__":
    main()
