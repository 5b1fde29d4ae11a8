"""Pages in a browser, watched: what they complain of, and whom they ask."""

from __future__ import annotations

from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest


class Pages:
    """Opens pages; `complaints` are errors and warnings of their consoles, `strangers` requests to other places."""

    def __init__(self, browser: Any) -> None:
        self.browser = browser
        self.contexts: list[Any] = []
        self.complaints: list[str] = []
        self.strangers: list[str] = []

    def open(self, address: str, width: int = 1200, height: int = 900, **options: Any) -> Any:
        """A page in a window of that size, once it says that it is ready."""
        context = self.browser.new_context(viewport={"width": width, "height": height}, **options)
        self.contexts.append(context)
        page = context.new_page()
        home = urlsplit(address)
        page.on("console", self.hear)
        page.on("pageerror", lambda error: self.complaints.append(str(error)))
        page.on("request", lambda request: self.note(request.url, home))
        page.goto(address)
        page.wait_for_selector("html[data-ready=yes]", timeout=30_000)
        return page

    def hear(self, said: Any) -> None:
        if said.type in ("error", "warning"):
            self.complaints.append(said.text)

    def note(self, url: str, home: Any) -> None:
        asked = urlsplit(url)
        if asked.scheme not in ("data", "blob") and (asked.scheme, asked.netloc) != (home.scheme, home.netloc):
            self.strangers.append(url)

    def close(self) -> None:
        for context in self.contexts:
            context.close()


def address(file: Path, at: str = "#/") -> str:
    return file.as_uri() + at


def faults(page: Any) -> list[str]:
    """What axe-core finds against a page (WCAG 2.2 A and AA, and its best practices), with the elements."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe-core is not installed")
    found = axe.Axe().run(page).response["violations"]
    return [f"{fault['id']}: {[node['target'] for node in fault['nodes'][:3]]}" for fault in found]


def too_wide(page: Any) -> int:
    """Pixels by which a page is wider than its window."""
    return int(page.evaluate("document.documentElement.scrollWidth - window.innerWidth"))
