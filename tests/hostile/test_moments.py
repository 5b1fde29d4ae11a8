"""Commands disturbed while they write: a sample of the moments that `tests/benchmarks/moments.py` goes through."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from tests.hostile.writers import judged

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="no process is forked there")


@pytest.mark.parametrize(("name", "act"), [("handout", "kill"), ("typeset", "stop"), ("archive", "refuse")])
def test_disturbed_while_it_writes(tmp_path: Path, name: str, act: str) -> None:
    assert judged(name, tmp_path, act, 6).findings == []
