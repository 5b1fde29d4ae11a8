"""Files are read bit by bit, one at a time, and none stays open."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight import inspect, reading
from bookmaker.proof.executors import Shared
from tests.ink.specimen import document


@pytest.fixture
def files(tmp_path: Path) -> tuple[Path, Path]:
    one, other = tmp_path / "one.pdf", tmp_path / "other.pdf"
    for file in (one, other):
        file.write_bytes(pdf_bytes(document()))
    return one, other


def test_a_file_is_let_go_before_the_next_is_opened(files: tuple[Path, Path]) -> None:
    streams = []
    for file in (*files, files[0]):
        assert reading.read_stretch(file, range(1), Shared({})).printed
        ((held, opened),) = reading._opened.items()
        assert held == file and not opened.stream.closed
        streams.append(opened.stream)
    reading.close()
    assert all(stream.closed for stream in streams)


def test_no_file_stays_open(files: tuple[Path, Path]) -> None:
    assert inspect(files[0], "one.pdf").pages == inspect(files[0].read_bytes(), "one.pdf").pages > 0
    files[1].write_bytes(b"no PDF")
    assert not inspect(files[1], "other.pdf").sound
    assert not reading._opened
