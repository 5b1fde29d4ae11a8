"""A Chromium to look at pages with: one that is there already, driven by Playwright. Without it tests are skipped."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.web.seeing import Pages

PLACES = ("chromium", "chromium-browser", "google-chrome")


@pytest.fixture(scope="session")
def chromium() -> Iterator[Any]:
    """The browser."""
    playing = pytest.importorskip("playwright.sync_api", reason="Playwright is not installed")
    program = os.environ.get("CHROMIUM") or next(filter(None, map(shutil.which, PLACES)), None)
    if program is None:
        pytest.skip("there is no Chromium on this machine")
    with playing.sync_playwright() as player:
        browser = player.chromium.launch(executable_path=program, args=["--no-sandbox"])
        yield browser
        browser.close()


@pytest.fixture
def pages(chromium: Any) -> Iterator[Pages]:
    """Pages that must not complain, and must not ask anything of another place."""
    opened = Pages(chromium)
    yield opened
    opened.close()
    assert opened.complaints == []
    assert opened.strangers == []


@pytest.fixture(scope="session")
def review_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The review page of the small book, as the command writes it."""
    from tests.cli.running import run
    from tests.web.books import BOOK

    folder = tmp_path_factory.mktemp("review")
    (folder / "book.yaml").write_text(BOOK, encoding="utf-8")
    done = run("review", folder, "--out", folder / "review.html", "--notes")
    assert done.exit_code == 0, done.output
    return folder / "review.html"
