"""How long a large book takes when its proofs are known, beside replaying its pages through reportlab alone.

    python tests/benchmarks/book_speed.py [PUZZLES …]

A book of that many puzzles (default 30 and 300), the demo book's over and over, is made in the steps of
`bookmaker typeset`, each timed: manifest, proofs and hints from the store, pages, PDF, preflight. Then the same pages
are drawn item by item with the methods of reportlab's canvas, which is what any program on reportlab would have to do.
Processor time of one process, everything in one run.
"""

from __future__ import annotations

import re
import resource
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
from bookmaker.preflight import inspect
from bookmaker.proof import prove_all
from bookmaker.proof.cache import FileStore

T = TypeVar("T")


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
    """A manifest with the demo book's puzzles, each as often as it takes, under ids of their own."""
    texts = []
    for file in sorted((ROOT / "demo_book").glob("*.yaml")):
        if file.name != "book.yaml":
            parts = re.split(r"^(?=- )", file.read_text(encoding="utf-8"), flags=re.M)
            texts += [part for part in parts if "id:" in part]
    listed = [re.sub(r"id: (\S+)", rf"id: \1-{at}", texts[at % len(texts)], count=1) for at in range(count)]
    (folder / "many.yaml").write_text("".join(listed), encoding="utf-8")
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


def measure(count: int) -> None:
    clock = Clock()
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        write_book(folder, count)
        store = FileStore(folder / "proofs.sqlite")
        hints_of_all(prove_all(load(folder).entries, store=store), store)
        manifest = clock.timed("manifest", lambda: load(folder))
        proofs = clock.timed("proofs", lambda: prove_all(manifest.entries, store=store))
        layout = load_layout(manifest.layout)
        book = clock.timed("book", lambda: make_book(manifest, in_book_order(manifest, proofs), store=store))
        document = clock.timed("pages", lambda: compose(book, layout))
        file = clock.timed("PDF", lambda: pdf_bytes(document))
        report = clock.timed("preflight", lambda: inspect(file, "book.pdf", proofs))
        assert report.sound and len(report.printed) == 2 * count
        replayed = Clock()
        replayed.timed("replay", lambda: replay(document))
    base = replayed.spent["replay"]
    print(f"{count} puzzles, {len(document.pages)} pages, {len(file) / 1e6:.2f} MB")
    for step, seconds in {**clock.spent, "all of it": sum(clock.spent.values()), "replay": base}.items():
        each = seconds / count * 1000
        print(f"  {step:<10} {seconds:7.2f} s  {seconds / base:5.2f} × replay  {each:6.2f} ms a puzzle")
    print(f"  peak memory {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000:.0f} MB")


if __name__ == "__main__":
    for wanted in [int(argument) for argument in sys.argv[1:]] or [30, 300]:
        measure(wanted)
