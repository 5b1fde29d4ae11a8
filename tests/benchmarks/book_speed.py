"""How long a large book takes when its proofs are known, beside replaying its pages through reportlab alone.

    python tests/benchmarks/book_speed.py [PUZZLES …]

A book of that many puzzles (default 30 and 300; 3000 takes five minutes), the demo book's seen in eight ways over and
over, is made in the steps of `bookmaker typeset`, each timed: manifest, proofs and hints from the store, pages, PDF,
preflight. Then the same pages are drawn item by item with the methods of reportlab's canvas, which is what any program
on reportlab would have to do. Each of three rounds is a process of its own; what counts is the least processor time of
each step, and the peak memory before the replay. Wanted for 300 puzzles: 1.5 replays, 300 MB; and a puzzle costs the
same in books of any size.
"""

from __future__ import annotations

import gc
import json
import resource
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterable
from io import BytesIO
from math import cos, radians, sin
from pathlib import Path
from time import process_time
from typing import Any, TypeVar

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from reportlab.pdfgen.canvas import Canvas

from bookmaker.book import make_book
from bookmaker.book.kepthints import hints_of_all
from bookmaker.book.order import in_book_order
from bookmaker.cli.group import COLLECT_AFTER
from bookmaker.display.items import (
    Close,
    Curve,
    Document,
    Group,
    Item,
    Line,
    Link,
    Move,
    Rect,
    Straight,
    Stroke,
    Text,
)
from bookmaker.display.items import (
    Path as Shape,
)
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pdffonts import embeddable
from bookmaker.layout import compose, load_layout
from bookmaker.manifest import load
from bookmaker.manifest.written import puzzle_lines
from bookmaker.preflight import inspect
from bookmaker.proof import prove_all
from bookmaker.proof.cache import FileStore
from tests.makers.turned import is_seen_alike, turned, views

T = TypeVar("T")

ROUNDS = 3


class Clock:
    """Processor time of each step."""

    def __init__(self) -> None:
        self.spent: dict[str, float] = {}

    def timed(self, step: str, work: Callable[[], T]) -> T:
        began = process_time()
        made = work()
        self.spent[step] = process_time() - began
        return made


def write_book(folder: Path, count: int) -> None:
    """A manifest with the demo book's puzzles, each seen in eight ways, then all of them again under other names."""
    entries = load(ROOT / "demo_book").entries
    listed = []
    for at in range(count):
        copy, number = divmod(at, len(entries))
        entry = entries[number]
        moves = [move for move in views(entry.puzzle.grid.size) if is_seen_alike(entry.puzzle, move)]
        puzzle = turned(entry.puzzle, moves[copy % len(moves)])
        texts = {"id": f"{entry.id}-{copy}", "title": f"{entry.title} {copy + 1}", "setter": entry.setter}
        listed += puzzle_lines(puzzle, texts | {"note": entry.note})
    (folder / "many.yaml").write_text("\n".join(listed) + "\n", encoding="utf-8")
    heading = "book: {title: Many, layout: a4-book, permission: for this benchmark}"
    (folder / "book.yaml").write_text(f"{heading}\npuzzles: [include: many.yaml]\n", encoding="utf-8")


def replay(document: Document) -> bytes:
    """The pages through the canvas's own methods, nothing remembered from one call to the next."""
    file = BytesIO()
    canvas = Canvas(file, pageCompression=1, invariant=1, initialFontName=embeddable("sans").fontName)
    for page in document.pages:
        canvas.setPageSize((page.width, page.height))
        canvas.translate(0, page.height)
        _draw(canvas, page.items)
        for anchor in page.anchors:
            canvas.bookmarkPage(anchor.name)
        canvas.showPage()
    canvas.save()
    return file.getvalue()


def _draw(canvas: Any, items: Iterable[Item]) -> None:
    for item in items:
        match item:
            case Line((x0, y0), (x1, y1), stroke):
                _pen(canvas, stroke)
                canvas.line(x0, -y0, x1, -y1)
            case Rect(x, y, width, height, stroke, fill, radius):
                _inks(canvas, stroke, fill)
                shape = canvas.roundRect if radius else canvas.rect
                rest = (radius,) if radius else ()
                shape(x, -y - height, width, height, *rest, stroke=stroke is not None, fill=fill is not None)
            case Shape(segments, stroke, fill):
                _inks(canvas, stroke, fill)
                canvas.drawPath(_path(canvas, segments), stroke=stroke is not None, fill=fill is not None, fillMode=0)
            case Text():
                canvas.setFillGray(item.grey)
                canvas.setFont(embeddable(item.font).fontName, item.size)
                draw = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
                draw[item.anchor](item.x, -item.y, item.text, charSpace=item.letter_space, wordSpace=item.word_space)
            case Group():
                canvas.saveState()
                a, b = cos(radians(item.turn)) * item.scale, sin(radians(item.turn)) * item.scale
                canvas.transform(a, -b, b, a, item.dx, -item.dy)
                if isinstance(item.clip, Rect):
                    clip = canvas.beginPath()
                    clip.rect(item.clip.x, -item.clip.y - item.clip.height, item.clip.width, item.clip.height)
                    canvas.clipPath(clip, stroke=0)
                elif item.clip is not None:
                    canvas.clipPath(_path(canvas, item.clip.segments), stroke=0)
                _draw(canvas, item.items)
                canvas.restoreState()
            case Link():
                canvas.linkAbsolute("", item.target, (item.x, -item.y, item.x + item.width, -item.y - item.height))


def _path(canvas: Any, segments: Iterable[Any]) -> Any:
    path = canvas.beginPath()
    for segment in segments:
        match segment:
            case Move((x, y)):
                path.moveTo(x, -y)
            case Straight((x, y)):
                path.lineTo(x, -y)
            case Curve((a, b), (c, d), (x, y)):
                path.curveTo(a, -b, c, -d, x, -y)
            case Close():
                path.close()
    return path


def _inks(canvas: Any, stroke: Stroke | None, fill: float | None) -> None:
    if stroke is not None:
        _pen(canvas, stroke)
    if fill is not None:
        canvas.setFillGray(fill)


def _pen(canvas: Any, stroke: Stroke) -> None:
    canvas.setLineWidth(stroke.width)
    canvas.setStrokeGray(stroke.grey)
    canvas.setDash(list(stroke.dash))
    canvas.setLineCap({"butt": 0, "round": 1, "square": 2}[stroke.cap])
    canvas.setLineJoin({"miter": 0, "round": 1, "bevel": 2}[stroke.join])


def once(folder: Path, store: FileStore) -> dict[str, Any]:
    """Make the book in this process, whose puzzles the store knows; the processor time of each step, and the memory."""
    gc.set_threshold(COLLECT_AFTER)  # as every command does
    clock = Clock()
    manifest = clock.timed("manifest", lambda: load(folder))
    proofs = clock.timed("proofs", lambda: prove_all(manifest.entries, store=store))
    layout = load_layout(manifest.layout)
    book = clock.timed("book", lambda: make_book(manifest, in_book_order(manifest, proofs), store=store))
    document = clock.timed("pages", lambda: compose(book, layout))
    file = clock.timed("PDF", lambda: pdf_bytes(document))
    report = clock.timed("preflight", lambda: inspect(file, "book.pdf", proofs))
    assert report.sound and len(report.printed) == 2 * len(proofs)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000
    clock.timed("replay", lambda: replay(document))
    return {"spent": clock.spent, "pages": len(document.pages), "MB": len(file) / 1e6, "peak": peak}


def measure(count: int, folder: Path) -> tuple[float, float, float]:
    """Print the steps for a book of that many puzzles; its milliseconds, its time in replays and its peak memory."""
    write_book(folder, count)
    _child(folder, "--warm")
    rounds = [_child(folder, "--once") for _ in range(ROUNDS)]
    first = rounds[0]
    spent = {step: min(made["spent"][step] for made in rounds) for step in first["spent"]}
    base = spent.pop("replay")
    whole = sum(spent.values())
    print(f"{count} puzzles, {first['pages']} pages, {first['MB']:.2f} MB")
    for step, seconds in {**spent, "all of it": whole, "replay": base}.items():
        each = 1000 * seconds / count
        print(f"  {step:<10} {seconds:7.2f} s  {seconds / base:5.2f} × replay  {each:6.2f} ms a puzzle")
    peak = max(made["peak"] for made in rounds)
    print(f"  peak memory {peak:.0f} MB", flush=True)
    return 1000 * whole, whole / base, peak


def _child(folder: Path, task: str) -> Any:
    """Do a task in a process of its own, so that none finds warm what another has warmed."""
    done = subprocess.run([sys.executable, __file__, task, str(folder)], check=True, stdout=subprocess.PIPE)
    return json.loads(done.stdout)


def main(counts: list[int]) -> None:
    found = {}
    with tempfile.TemporaryDirectory() as folder:
        for count in counts:
            found[count] = measure(count, Path(folder))
    print("puzzles  ms a puzzle  × replay  peak MB  kB a puzzle more")
    before = (0, 0.0)
    for count, (spent, share, peak) in found.items():
        more = f"{1000 * (peak - before[1]) / (count - before[0]):16.0f}" if before[0] else ""
        print(f"{count:7}  {spent / count:11.2f}  {share:8.2f}  {peak:7.0f}  {more}")
        before = (count, peak)


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["--warm", name]:
            known = FileStore(Path(name) / "proofs.sqlite")
            told = hints_of_all(prove_all(load(Path(name)).entries, store=known), known)
            print(len(told))
        case ["--once", name]:
            print(json.dumps(once(Path(name), FileStore(Path(name) / "proofs.sqlite"))))
        case counts:
            main(sorted(map(int, counts)) or [30, 300])
