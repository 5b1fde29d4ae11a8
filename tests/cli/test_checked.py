"""Files are drawn by several processes, but those of a long book by one; either way they are the same."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future
from functools import partial
from pathlib import Path
from typing import Any

import pytest

from bookmaker.cli import checked
from bookmaker.cli.checked import Printing, print_checked
from bookmaker.files import replacing
from bookmaker.layout import compose, load_layout
from bookmaker.proof.executors import InProcess
from tests.layout.sample_book import sample_book, sample_proofs


class Asked(InProcess):
    """Notes what it is asked to do."""

    def __init__(self) -> None:
        self.work: list[str] = []

    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        self.work.append(fn.__name__)
        return super().submit(fn, *args, **kwargs)


def test_a_long_book_is_drawn_by_one_process(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    layout, proofs = load_layout("a5-book"), sample_proofs()
    printings = [Printing(tmp_path / name, partial(compose, sample_book(), layout)) for name in ("a.pdf", "b.pdf")]
    met = []
    for many, handed_over in ((len(proofs) + 1, 1), (len(proofs), 0)):
        monkeypatch.setattr(checked, "MANY", many)
        executor = Asked()
        with replacing() as beside:
            pages = print_checked(printings, proofs, beside, executor)
        assert executor.work.count("_printed") == handed_over
        met.append((pages, [printing.path.read_bytes() for printing in printings]))
    assert met[0] == met[1]
