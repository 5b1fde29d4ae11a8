"""The desk: what is saved is seen, broken files change nothing but the troubles, and nobody else gets an answer."""

from __future__ import annotations

import hashlib
import http.client
import json
import os
import re
import signal
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from random import Random
from time import sleep
from urllib.parse import urlsplit

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word
from bookmaker.web.desk.reading import Reading
from tests.cli.running import run
from tests.manifest.books import GIVENS
from tests.web.books import BOOK
from tests.web.seeing import Pages, faults, too_wide

Opened = Callable[..., "Served"]


class Served:
    """A desk that runs: its process, its address and its book."""

    def __init__(self, book: Path, *options: str) -> None:
        self.book = book
        command = [sys.executable, "-m", "bookmaker", "desk", str(book), "--no-browser", *options]
        self.process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        assert self.process.stdout is not None
        self.address = self.process.stdout.readline().strip()

    def ask(self, path: str, method: str = "GET", body: str = "", **headers: str) -> http.client.HTTPResponse:
        """What the desk answers to a request; the path begins after the token unless it begins with “/”."""
        home = urlsplit(self.address)
        link = http.client.HTTPConnection(home.hostname or "", home.port or 0, timeout=10)
        link.putrequest(method, path if path.startswith("/") else home.path + path, skip_host="Host" in headers)
        for name, value in headers.items():
            link.putheader(name.replace("_", "-"), value)
        link.putheader("Content-Length", str(len(body)))
        link.endheaders(body.encode())
        return link.getresponse()

    @property
    def origin(self) -> str:
        home = urlsplit(self.address)
        return f"http://{home.netloc}"

    def stop(self, sign: int = signal.SIGTERM) -> int:
        self.process.send_signal(sign)
        return self.process.wait(15)


@pytest.fixture
def serve(tmp_path: Path) -> Iterator[Opened]:
    """Begins desks for the small book, or for another one."""
    begun: list[Served] = []

    def begin(*options: str, text: str = BOOK) -> Served:
        folder = tmp_path / "book"
        folder.mkdir(exist_ok=True)
        (folder / "book.yaml").write_text(text, encoding="utf-8")
        begun.append(Served(folder, *options))
        return begun[-1]

    yield begin
    for collector in begun:
        if collector.process.poll() is None:
            collector.stop()
        for stream in (collector.process.stdout, collector.process.stderr):
            if stream:
                stream.close()


def contents(folder: Path) -> dict[str, str]:
    return {str(path): hashlib.sha256(path.read_bytes()).hexdigest() for path in folder.rglob("*") if path.is_file()}


def test_what_is_saved_is_seen(serve: Opened, pages: Pages) -> None:
    collector = serve()
    file = collector.book / "book.yaml"
    page = pages.open(collector.address)
    assert page.inner_text("#title") == "Neap & <b>Spring</b>"
    assert page.inner_text("#status") == "5 puzzles, 2 to mend"
    assert page.evaluate("window.struck") is None
    boat = page.locator(".card[data-id=paper-boat]")
    assert "One solution · Ramble" in boat.inner_text()
    before = {item.get_attribute("data-id"): item.get_attribute("data-version") for item in page.locator(".card").all()}
    page.evaluate("window.stayed = 1")
    cell = page.locator("[data-id=paper-boat] [data-cell='0']")
    assert cell.get_attribute("aria-label") == "r1c1"
    file.write_text(BOOK.replace(". 7 6 | . 5 1", "2 7 6 | . 5 1"), encoding="utf-8")
    page.wait_for_selector("[data-id=paper-boat] [data-cell='0'][aria-label='r1c1, 2']")
    page.wait_for_selector("html[data-ready=yes]")
    after = {item.get_attribute("data-id"): item.get_attribute("data-version") for item in page.locator(".card").all()}
    assert [name for name in before if before[name] != after[name]] == ["paper-boat"]
    assert page.evaluate("window.stayed") == 1

    broken = BOOK.replace("    setter: Sandpiper", "    setter Sandpiper")
    file.write_text(broken, encoding="utf-8")
    page.wait_for_selector("body.stale")
    diagnostic = page.inner_text("#troubles")
    line = broken[: broken.index("setter Sandpiper")].count("\n") + 1
    assert f"book.yaml:{line}:5" in diagnostic and "setter: Sandpiper" in diagnostic
    assert page.locator(".card").count() == 5 and "as it was before" in page.inner_text("#status")

    file.write_text(BOOK.replace("title: Two Ways", "title: Two Roads"), encoding="utf-8")
    page.wait_for_selector("body:not(.stale) .card h2:has-text('Two Roads')")
    page.wait_for_selector("html[data-ready=yes]")
    shorter = BOOK[: BOOK.index("  - id: two-ways")]
    file.write_text(shorter, encoding="utf-8")
    page.wait_for_selector("#status:has-text('3 puzzles, all proven')")
    assert page.locator(".card").count() == 3
    assert faults(page) == []


def test_a_book_that_is_broken_from_the_start_is_shown_once_it_is_mended(serve: Opened, pages: Pages) -> None:
    collector = serve(text="book:\n  title: T\n  titel: T\n")
    page = pages.open(collector.address)
    assert "the book has no “titel”" in page.inner_text("#troubles")
    assert page.locator(".card").count() == 0
    (collector.book / "book.yaml").write_text(BOOK, encoding="utf-8")
    page.wait_for_selector(".card >> nth=4", state="attached")


def test_cells_that_are_clicked_are_text_for_the_manifest(serve: Opened, pages: Pages) -> None:
    page = pages.open(serve().address, width=1400)

    def click(*cells: int) -> None:
        for cell in cells:
            page.click(f"[data-id=paper-boat] [data-cell='{cell}']")

    click(0, 1, 2, 3, 13)
    assert page.input_value("[aria-label=Cells]") == "r1c1-r1c4 r2c5"
    page.fill("#cells input", "17")
    assert page.input_value("[aria-label=Cage]") == "- {cells: r1c1-r1c4 r2c5, total: 17}"
    rows = page.input_value("[aria-label=Picture]").split("\n")
    assert rows[:3] == ["a a a a . . . . .", ". . . . a . . . .", ". . . . . . . . ."] and len(rows) == 9
    click(3)
    assert page.input_value("[aria-label=Cells]") == "r1c1-r1c3 r2c5"
    page.click("button:has-text('Choose none')")
    assert not page.locator("#cells").is_visible()
    page.focus("[data-id=paper-boat] [data-cell='0']")
    for key in ("Space", "ArrowRight", "ArrowDown", "Enter"):
        page.keyboard.press(key)
    assert page.input_value("[aria-label=Cells]") == "r1c1 r2c2"
    assert page.locator("[data-cell='10'][aria-pressed=true]").count() == 1
    page.keyboard.press("Escape")
    assert not page.locator("#cells").is_visible()

    rng = Random("cells")
    for _ in range(200):
        cells = [rng.randrange(81)]
        while rng.random() < 0.85:
            near = [cell for cell in CLASSIC.cells if CLASSIC.touching(cells[-1], cell)]
            cells.append(rng.choice(near) if rng.random() < 0.8 else rng.randrange(81))
        cells = list(dict.fromkeys(cells))
        line = page.evaluate(
            "async (cells) => (await import('./static/cells.js')).asLine("
            "(await import('./static/shape.js')).shapeOf({ digits: Array(81) }), cells)",
            cells,
        )
        collector = Collector()
        assert read_cells(Word(Place(""), line), CLASSIC, collector) == tuple(cells), line
    assert faults(page) == [] and too_wide(page) <= 0


def test_a_trouble_that_is_clicked_lights_its_cells(serve: Opened, pages: Pages) -> None:
    collector = serve()
    page = pages.open(collector.address, color_scheme="dark")
    (collector.book / "book.yaml").write_text(BOOK.replace(". 7 6 | . 5 1", ". 7 7 | . 5 1"), encoding="utf-8")
    page.wait_for_selector("#troubles button:has-text('row 1 has 7 twice (r1c2 and r1c3)')")
    assert "one of the two is likely a slip" in page.inner_text("#troubles")
    board = page.locator("[data-id=paper-boat] .board")
    signs = board.locator("> path[fill=none][stroke='#000']")
    assert signs.count() == 0
    page.click("#troubles button:has-text('row 1 has 7 twice')")
    assert signs.count() == 2
    assert "2 cells marked in Paper Boat" in page.inner_text("#remark")
    assert faults(page) == []
    (collector.book / "book.yaml").write_text(BOOK, encoding="utf-8")
    page.wait_for_selector("body:not(.stale)")
    assert signs.count() == 0


def test_what_is_made_is_there_to_save_and_nothing_is_written(serve: Opened, pages: Pages) -> None:
    sound = BOOK[: BOOK.index("  - id: two-ways")]
    collector = serve(text=sound)
    before = contents(collector.book)
    page = pages.open(collector.address)
    page.click("[data-id=kite-string] button:has-text('Picture')")
    page.wait_for_selector("#jobs a:has-text('kite-string.svg')", timeout=60_000)
    with page.expect_download() as saved:
        page.click("#jobs a:has-text('kite-string.svg')")
    assert saved.value.suggested_filename == "kite-string.svg"
    assert Path(saved.value.path()).read_text("utf-8").startswith("<?xml")
    assert page.locator("[data-make=handout]").is_disabled()
    page.check("[data-id=paper-boat] input[type=checkbox]")
    page.click("[data-make=handout]")
    page.wait_for_selector("#jobs progress", state="attached")
    page.wait_for_selector("#jobs a:has-text('handout.pdf')", timeout=60_000)
    assert contents(collector.book) == before
    job = re.search(r"made/(\w+)/", page.get_attribute("#jobs a:has-text('handout.pdf')", "href"))[1]
    for stray in (
        f"made/{job}/../../book.yaml",
        f"made/{job}/%2e%2e%2fbook.yaml",
        f"made/{job}/other.pdf",
        "made/x/handout.pdf",
    ):
        assert collector.ask(stray).status == 404


def test_what_cannot_be_made_says_why(serve: Opened, pages: Pages) -> None:
    page = pages.open(serve().address)
    page.click("[data-make=typeset]")
    page.wait_for_selector("#jobs pre", timeout=60_000)
    assert "“Two Ways” can't be printed: more than one solution" in page.inner_text("#jobs pre")


def test_only_its_own_page_gets_an_answer(serve: Opened) -> None:
    collector = serve()
    host = urlsplit(collector.address).netloc
    assert re.fullmatch(r"http://127\.0\.0\.1:\d+/[\w-]{20,}/", collector.address)
    page = collector.ask("")
    assert page.status == 200
    assert page.getheader("Content-Security-Policy", "").startswith("default-src 'none'; script-src 'self';")
    assert page.getheader("Referrer-Policy") == "no-referrer"
    assert collector.ask("", Host=f"localhost:{host.partition(':')[2]}").status == 200
    for status, answer in (
        (421, collector.ask("", Host="quay.example")),
        (421, collector.ask("", Host="127.0.0.1")),
        (403, collector.ask("", Origin="http://quay.example")),
        (403, collector.ask("", Origin="null")),
        (403, collector.ask("", Sec_Fetch_Site="cross-site")),
        (404, collector.ask("/")),
        (404, collector.ask("/wrong/")),
        (404, collector.ask("/static/desk.js")),
        (404, collector.ask("static/../desk/serving.py")),
        (404, collector.ask("static/%2e%2e%2f__init__.py")),
        (404, collector.ask("book.yaml")),
        (403, collector.ask("make", "POST", '{"make": "typeset"}')),
        (403, collector.ask("make", "POST", '{"make": "typeset"}', Origin="http://quay.example")),
        (400, collector.ask("make", "POST", '{"make": "start"}', Origin=collector.origin)),
        (400, collector.ask("make", "POST", '{"make": "crib", "ids": ["../x"]}', Origin=collector.origin)),
        (400, collector.ask("make", "POST", "[", Origin=collector.origin)),
        (405, collector.ask("make")),
    ):
        assert answer.status == status
    with socket.socket() as other:
        address = socket.gethostbyname(socket.gethostname())
        if not address.startswith("127."):
            other.settimeout(2)
            assert other.connect_ex((address, int(host.partition(":")[2]))) != 0


@pytest.mark.skipif(os.name == "nt", reason="Windows has no such signals")
@pytest.mark.parametrize("sign", [signal.SIGINT, signal.SIGTERM])
def test_it_stops_when_it_is_told(serve: Opened, sign: int) -> None:
    """Also while a page looks at it and puzzles are being proven; and nothing of it stays behind."""
    collector = serve()
    events = collector.ask("events")
    assert json.loads(events.readline().decode().removeprefix("data: "))["type"] == "book"
    children = _children(collector.process.pid)
    assert collector.stop(sign) == 0
    assert collector.process.stderr is not None and collector.process.stderr.read() == ""
    for _ in range(50):  # those that it began notice within a moment
        if not any(map(_alive, children)):
            break
        sleep(0.1)
    assert not any(map(_alive, children))


def _children(pid: int) -> list[int]:
    lists = Path(f"/proc/{pid}/task/{pid}/children")
    return [int(child) for child in lists.read_text().split()] if lists.exists() else []


def _alive(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False


def test_two_desks_side_by_side_and_a_port_that_is_taken(serve: Opened) -> None:
    one, two = serve(), serve()
    assert one.address != two.address and one.ask("").status == two.ask("").status == 200
    port = urlsplit(one.address).port
    taken = run("desk", one.book, "--no-browser", "--port", port)
    assert taken.exit_code == 1
    assert f"port {port} can't be used" in taken.output and "leave out --port" in taken.output


def test_without_the_extra_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setitem(sys.modules, "bookmaker.web.desk.serving", None)
    (tmp_path / "book.yaml").write_text(BOOK, encoding="utf-8")
    wrong = run("desk", tmp_path, "--no-browser")
    assert wrong.exit_code == 1 and "pip install 'bookmaker[desk]'" in wrong.output


def test_a_folder_without_a_book_is_told_before_anything_is_served(tmp_path: Path) -> None:
    wrong = run("desk", tmp_path, "--no-browser")
    assert wrong.exit_code == 1 and "there is no book.yaml in this folder" in wrong.output


def test_troubles_know_their_puzzle_and_their_cells(tmp_path: Path) -> None:
    """Named in the message, else in the line that it points to; the puzzle is the nearest id above."""
    text = (
        f"book: {{title: T}}\npuzzles:\n- id: one\n  givens: {GIVENS}\n"
        f"- id: two\n  givens: {GIVENS}\n  rules:\n    thermometer:\n      - r1c1-r1c3 r5c5\n      - r2c2 r9c99\n"
    )
    (tmp_path / "book.yaml").write_text(text, encoding="utf-8")
    reading = Reading(tmp_path / "book.yaml")
    reading.read()
    jump, off = (diagnostic for diagnostic in reading.diagnostics() if not diagnostic["warning"])
    assert jump["puzzle"] == off["puzzle"] == "two"
    assert jump["text"].startswith("the thermometer jumps from r1c3 to r5c5")
    assert jump["cells"] == [[0, 2], [4, 4]]
    assert off["place"].endswith("book.yaml:10:14") and "9 rows" in off["text"]
    assert "r9c99" in off["excerpt"]
