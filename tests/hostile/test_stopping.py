"""SIGINT and SIGTERM at moments that are counted: while the program is read in, while it proves, while workers work."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.published import WORKED

ROOT = Path(__file__).resolve().parents[2]

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="there are other signals")

CODES = {signal.SIGINT: 130, signal.SIGTERM: 143}

AT_THE_NTH = """
import signal, sys
from bookmaker.__main__ import run
left = [{moment}]
def hook(event, args):
    if event in ("import", "open", "exec"):
        left[0] -= 1
        if left[0] == 0:
            signal.raise_signal({number})
sys.addaudithook(hook)
run()
"""
"""The command, met by a signal at the n-th audit event (PEP 578) after the way in."""

HEARD = "import signal; signal.signal(signal.SIGINT, signal.default_int_handler)\n"
"""In the background of a shell it may be off."""


def _begun(folder: Path, script: str, *words: str) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-c", HEARD + script, *words],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), "BOOKMAKER_CACHE": str(folder / "cache")},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
    )


@pytest.mark.parametrize("number", CODES, ids=lambda number: number.name)
@pytest.mark.parametrize("moment", [1, 30, 300, 900, 1500, 2100])
def test_stopped_while_it_is_read_in(tmp_path: Path, moment: int, number: signal.Signals) -> None:
    (tmp_path / "list.txt").write_text(f"{WORKED}\n")
    script = AT_THE_NTH.format(moment=moment, number=int(number))
    run = _begun(tmp_path, script, "proof", "list.txt", "--json", "report.json")
    out, err = run.communicate(timeout=60)
    assert run.returncode == CODES[number], err
    assert "Traceback" not in err and "Exception" not in err and "Aborted" not in err
    assert not out
    assert not (tmp_path / "report.json").exists()


def _gone(group: int) -> bool:
    """Is the whole group of processes gone within two seconds?"""
    for _ in range(40):
        try:
            os.killpg(group, 0)
        except ProcessLookupError:
            return True
        time.sleep(0.05)
    return False


@pytest.mark.parametrize(("number", "whom"), [(signal.SIGINT, "all"), (signal.SIGTERM, "one"), (signal.SIGKILL, "one")])
def test_workers_end_with_the_one_they_work_for(tmp_path: Path, number: signal.Signals, whom: str) -> None:
    """Ctrl-C in a terminal reaches every process, a signal of another program only the first."""
    (tmp_path / "list.txt").write_text(f"{WORKED}\n" * 3000)
    words = ["proof", "list.txt", "--fresh", "--workers", "2", "--json", "report.json"]
    run = _begun(tmp_path, "from bookmaker.__main__ import run; run()", *words)
    assert run.stderr is not None
    while "proved" not in run.stderr.readline():
        assert run.poll() is None
    (os.killpg if whom == "all" else os.kill)(run.pid, number)
    said = run.stderr.read()
    assert run.wait(timeout=20) == CODES.get(number, -number)
    assert "Traceback" not in said and "Exception" not in said and "Process" not in said
    assert _gone(run.pid)
    assert not (tmp_path / "report.json").exists()


def test_a_second_signal_does_not_wait(tmp_path: Path) -> None:
    """The first one is closing things in order, which here takes a minute."""
    script = """
import time
from bookmaker import stopping
stopping.in_order()
try:
    signal.raise_signal(signal.SIGINT)
finally:
    signal.raise_signal(signal.SIGTERM)
    time.sleep(60)
"""
    assert _begun(tmp_path, script).wait(timeout=30) == 143


def test_one_that_a_finalizer_has_swallowed_comes_again(tmp_path: Path) -> None:
    script = """
import time
from bookmaker import stopping
class Closing:
    def __del__(self):
        signal.raise_signal(signal.SIGTERM)
        len("")
stopping.in_order()
Closing()
time.sleep(60)
"""
    run = _begun(tmp_path, script)
    _, said = run.communicate(timeout=30)
    assert (run.returncode, said) == (143, "")


def test_what_a_shell_has_switched_off_stays_off(tmp_path: Path) -> None:
    script = """
signal.signal(signal.SIGINT, signal.SIG_IGN)
from bookmaker import stopping
stopping.in_order()
signal.raise_signal(signal.SIGINT)
"""
    assert _begun(tmp_path, script).wait(timeout=30) == 0
