"""The review page and the desk: how large, how soon usable, how soon a change is seen.

Run: python tests/benchmarks/web_speed.py [--many N]. Needs Chromium and Playwright. The puzzles are the demo book's,
over and over under other ids; telling their paths the first time is not counted. Wanted: a page of 300 puzzles of at
most 6 MB, usable within 1 s; one of 5,000 usable; at the desk a change of one puzzle seen within 0.3 s, in a book of
300 within 1 s.
"""

from __future__ import annotations

import argparse
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter, time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from playwright.sync_api import Browser, sync_playwright

AT_ONCE = 300
"""Puzzles in a file."""

ENTRY = re.compile(r"^(?=- id: )", re.MULTILINE)


def book(folder: Path, puzzles: int) -> None:
    """A book of so many puzzles, in files of a few hundred."""
    entries = [
        entry
        for file in sorted((ROOT / "demo_book").glob("*.yaml"))
        if file.name != "book.yaml"
        for entry in ENTRY.split(file.read_text(encoding="utf-8"))
        if entry.startswith("- id: ")
    ]
    chosen = [re.sub(r"^- id: (\S{1,30})\S*", rf"- id: \1-{at}", entries[at % len(entries)]) for at in range(puzzles)]
    files = {f"{at}.yaml": chosen[at : at + AT_ONCE] for at in range(0, puzzles, AT_ONCE)}
    for name, some in files.items():
        (folder / name).write_text("".join(some), encoding="utf-8")
    head = "book:\n  title: Many\n  order: listed\n  permission: Made for this benchmark.\n"
    includes = "".join(f"  - include: {name}\n" for name in files)
    (folder / "book.yaml").write_text(f"{head}puzzles:\n{includes}", encoding="utf-8")


def review(browser: Browser, folder: Path, puzzles: int) -> None:
    file = folder / "review.html"
    began = perf_counter()
    command = [sys.executable, "-m", "bookmaker", "review", str(folder), "--out", str(file)]
    subprocess.run(command, check=True, capture_output=True, cwd=ROOT)
    made = perf_counter() - began
    usable, opened, narrowed = [], [], []
    for _ in range(3):
        page = browser.new_page()
        began = perf_counter()
        page.goto(file.as_uri())
        page.wait_for_selector("html[data-ready=yes]", timeout=120_000)
        usable.append(perf_counter() - began)
        began = perf_counter()
        page.fill("input[type=search]", "heron")
        page.wait_for_selector(".count:has-text(' of ')")
        narrowed.append(perf_counter() - began)
        began = perf_counter()
        page.click(".row a >> nth=3")
        page.wait_for_selector("#sheet .board")
        opened.append(perf_counter() - began)
        page.close()
    size = file.stat().st_size / 1e6
    print(
        f"review of {puzzles}: made in {made:.1f} s, {size:.1f} MB; usable after {median(usable):.2f} s, "
        f"narrowed in {median(narrowed):.2f} s, a puzzle open in {median(opened):.2f} s"
    )


def desk(browser: Browser, folder: Path, puzzles: int) -> None:
    command = [sys.executable, "-m", "bookmaker", "desk", str(folder), "--no-browser"]
    served = subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=ROOT)
    assert served.stdout is not None
    try:
        page = browser.new_page()
        page.goto(served.stdout.readline().strip())
        page.wait_for_selector("html[data-ready=yes]", timeout=300_000)
        file = folder / "0.yaml"
        text = file.read_text(encoding="utf-8")
        title = re.search(r"title: (.*)", text)[1]
        givens = text.index("givens: |") + len("givens: |")
        empty = text.index(".", givens)
        seen = []
        for at in range(7):
            page.evaluate(
                "() => { window.changed = new Promise((done) => new MutationObserver(() => done(performance.timeOrigin "
                "+ performance.now())).observe(document.querySelector('.card .paper'), {childList: true})); }"
            )
            digit = ".1"[at % 2 == 0]
            began = time()
            file.write_text(text[:empty] + digit + text[empty + 1 :], encoding="utf-8")
            seen.append(page.evaluate("window.changed") / 1000 - began)
            page.wait_for_timeout(700)
        print(f"desk of {puzzles} (“{title}” changed): seen after {median(seen):.2f} s, at worst {max(seen):.2f} s")
        page.close()
    finally:
        served.terminate()
        served.wait(20)


def main() -> None:
    options = argparse.ArgumentParser()
    options.add_argument("--many", type=int, default=5000)
    many = options.parse_args().many
    program = os.environ.get("CHROMIUM") or shutil.which("chromium")
    with sync_playwright() as player, TemporaryDirectory() as name:
        browser = player.chromium.launch(executable_path=program, args=["--no-sandbox"])
        for puzzles in (48, 300, many):
            folder = Path(name) / str(puzzles)
            folder.mkdir()
            book(folder, puzzles)
            review(browser, folder, puzzles)
            if puzzles <= 300:
                desk(browser, folder, puzzles)
        browser.close()


if __name__ == "__main__":
    main()
