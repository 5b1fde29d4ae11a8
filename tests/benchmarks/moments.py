"""Every command that writes, killed, stopped and refused the disk at every one of its file operations.

    python tests/benchmarks/moments.py [COMMAND ...]

After a kill, every file must be the old one or the new one, and after the next run all of them the old ones or all the
new ones; after Ctrl-C or on a full disk they must be so at once, and what is said true. “mixed” counts the kills that
left new files beside old ones for the next run. Exit code 1 if anything was otherwise.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.hostile.writers import WRITERS, judged


def main() -> int:
    failed = False
    for name in sys.argv[1:] or WRITERS:
        for act in ("kill", "stop", "refuse"):
            with tempfile.TemporaryDirectory() as folder:
                found = judged(name, Path(folder), act)
            failed |= bool(found.findings)
            print(f"{name}, {act}: {found.moments} moments, {len(found.findings)} findings, {found.mixed} mixed")
            for finding in found.findings[:3]:
                print(f"    {finding[:1500]}", flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
