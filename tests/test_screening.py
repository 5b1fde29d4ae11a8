"""Long lists screened as a stream: whole, in order, taken up after a kill, by one worker, two or a cluster."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from random import Random
from typing import Any

import pytest
from click.testing import CliRunner, Result

from bookmaker.cli import main
from bookmaker.puzzle.puzzle import digits_text
from tests.digits import digits_from
from tests.grade.turns import turned
from tests.proof.test_cache import NONE, SEVERAL, UNIQUE

ROOT = Path(__file__).resolve().parents[2]
VERDICTS = ["unique", "several", "none"]


def run(*words: str | Path) -> Result:
    return CliRunner().invoke(main, ["screen", *map(str, words)])


def lines(report: Path) -> list[dict[str, Any]]:
    return [{**json.loads(line), "seconds": 0} for line in report.read_text().splitlines()]


@pytest.fixture
def listed(tmp_path: Path) -> Path:
    path = tmp_path / "list.txt"
    path.write_text("# a comment\n" + "".join(f"{g} no. {i}\n" for i, g in enumerate([UNIQUE, SEVERAL, NONE] * 4)))
    return path


def test_every_puzzle_has_its_line_in_order(listed: Path, tmp_path: Path) -> None:
    result = run(listed, "--out", tmp_path / "report.jsonl")
    assert result.exit_code == 1
    found = lines(tmp_path / "report.jsonl")
    assert [line["verdict"] for line in found] == VERDICTS * 4
    assert [line["source"] for line in found] == [f"{listed}:{number}" for number in range(2, 14)]
    assert run(listed, "--out", tmp_path / "two.jsonl", "--workers", "2").exit_code == 1
    assert lines(tmp_path / "two.jsonl") == found


def test_look_alikes_are_told_of_also_after_a_stop(tmp_path: Path) -> None:
    copy = digits_text(turned(digits_from(UNIQUE), Random(2)))
    listed, report = tmp_path / "list.txt", tmp_path / "report.jsonl"
    listed.write_text(f"{UNIQUE}\n{SEVERAL}\n{copy}\n{UNIQUE}\n")
    run(listed, "--out", report)
    whole = lines(report)
    assert [line.get("look_alike_of") for line in whole] == [None, None, f"{listed}:1", f"{listed}:1"]
    report.write_bytes(b"".join(report.read_bytes().splitlines(keepends=True)[:2]))
    run(listed, "--out", report)
    assert lines(report) == whole


@pytest.mark.parametrize("cut", [0, 1, 400, 3_000, -1])
def test_a_report_cut_anywhere_is_taken_up(listed: Path, tmp_path: Path, cut: int) -> None:
    report = tmp_path / "report.jsonl"
    run(listed, "--out", report)
    whole = lines(report)
    report.write_bytes(report.read_bytes()[:cut])
    kept = report.read_bytes().rpartition(b"\n")[0]
    run(listed, "--out", report)
    assert lines(report) == whole
    assert report.read_bytes().startswith(kept)


def test_a_faulty_line_is_a_line_of_the_report(tmp_path: Path) -> None:
    (tmp_path / "list.txt").write_text(f"{UNIQUE}\n{UNIQUE[:-3]}\n5{UNIQUE[1:]}\n{UNIQUE}\n")
    assert run(tmp_path / "list.txt", "--out", tmp_path / "r.jsonl").exit_code == 1
    found = lines(tmp_path / "r.jsonl")
    assert [line.get("verdict") for line in found] == ["unique", None, None, "unique"]
    assert "78 characters" in found[1]["troubles"][0]
    assert "5 twice" in found[2]["troubles"][0]


def test_a_report_of_other_lists_is_left_alone(listed: Path, tmp_path: Path) -> None:
    report = tmp_path / "report.jsonl"
    run(listed, "--out", report)
    before = report.read_bytes()
    (tmp_path / "other.txt").write_text(f"{UNIQUE}\n" * 20)
    result = run(tmp_path / "other.txt", "--out", report)
    assert result.exit_code == 1
    assert "started from other lists" in result.stderr
    assert report.read_bytes() == before


def test_manifests_are_screened_too(tmp_path: Path) -> None:
    assert CliRunner().invoke(main, ["start", str(tmp_path / "book")]).exit_code == 0
    assert run(tmp_path / "book", "--out", tmp_path / "r.jsonl").exit_code == 0
    assert {line["verdict"] for line in lines(tmp_path / "r.jsonl")} == {"unique"}


@pytest.mark.slow
def test_a_killed_run_is_taken_up_without_loss_or_repeat(tmp_path: Path) -> None:
    (tmp_path / "list.txt").write_text(f"{UNIQUE}\n" * 70)
    words = [sys.executable, "-c", "from bookmaker.cli import main; main()", "screen", "list.txt", "--out", "r.jsonl"]
    report = tmp_path / "r.jsonl"
    run_env = {**os.environ, "PYTHONPATH": str(ROOT)}
    killed = subprocess.Popen([*words, "--workers", "2"], cwd=tmp_path, env=run_env, start_new_session=True)
    while not report.exists() or report.read_bytes().count(b"\n") < 12:
        assert killed.poll() is None
        time.sleep(0.01)
    os.killpg(killed.pid, signal.SIGKILL)
    killed.wait()
    assert report.read_bytes().count(b"\n") < 70
    assert subprocess.run(words, cwd=tmp_path, env=run_env, check=False, capture_output=True).returncode == 0
    assert [line["source"] for line in lines(report)] == [f"list.txt:{number}" for number in range(1, 71)]


def test_nobody_at_the_address_is_said(listed: Path, tmp_path: Path) -> None:
    result = run(listed, "--out", tmp_path / "r.jsonl", "--on", "nonsense://here")
    assert result.exit_code == 1
    assert "no scheduler answers" in result.stderr
    assert "Traceback" not in result.output


@pytest.mark.slow
def test_a_worker_of_a_cluster_that_dies_loses_nothing(tmp_path: Path) -> None:
    distributed = pytest.importorskip("distributed")
    (tmp_path / "list.txt").write_text(f"{UNIQUE}\n" * 60)
    report = tmp_path / "r.jsonl"
    env = {**os.environ, "PYTHONPATH": str(ROOT), "DASK_DISTRIBUTED__LOGGING__DISTRIBUTED": "critical"}
    with distributed.LocalCluster(
        n_workers=2, threads_per_worker=1, host="127.0.0.1", dashboard_address=None, silence_logs=50
    ) as cluster:
        words = [sys.executable, "-c", "from bookmaker.cli import main; main()", "screen", "list.txt"]
        screening = subprocess.Popen(
            [*words, "--out", "r.jsonl", "--on", cluster.scheduler_address], cwd=tmp_path, env=env
        )
        while not report.exists() or report.read_bytes().count(b"\n") < 10:
            assert screening.poll() is None
            time.sleep(0.01)
        os.kill(next(iter(cluster.workers.values())).pid, signal.SIGKILL)
        assert screening.wait(timeout=90) == 0
    assert [line["source"] for line in lines(report)] == [f"list.txt:{number}" for number in range(1, 61)]


def test_workers_with_another_bookmaker_are_refused(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """They would neither understand the puzzles nor be understood: the command would wait for ever."""
    distributed = pytest.importorskip("distributed")
    monkeypatch.setattr("bookmaker.proof.executors.code_version", lambda *_: "another")  # here, not in the worker
    with distributed.LocalCluster(
        n_workers=1, threads_per_worker=1, host="127.0.0.1", dashboard_address=None, silence_logs=50
    ) as cluster:
        (tmp_path / "list.txt").write_text(f"{UNIQUE}\n")
        told = run(tmp_path / "list.txt", "--out", tmp_path / "r.jsonl", "--on", cluster.scheduler_address)
    assert told.exit_code == 1 and "another version of bookmaker" in told.stderr
