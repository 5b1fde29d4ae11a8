"""The doors by which files come in. Each takes what was drawn, and fails unless the answer is sound or a diagnostic."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from functools import cache
from io import BytesIO
from math import isfinite
from pathlib import Path
from xml.etree.ElementTree import fromstring

from PIL import Image
from pypdf import PdfReader, PdfWriter

from bookmaker.archive.intake import take_in
from bookmaker.archive.workbook import workbook_bytes
from bookmaker.assemble.brief import make_plan, open_brief
from bookmaker.assemble.choose import choose
from bookmaker.book import make_book
from bookmaker.book.textedition import CELLS, braille_edition, text_edition
from bookmaker.ebook.pictures import Pictures
from bookmaker.ebook.texts import texts_of
from bookmaker.hypertext.elements import element, xhtml
from bookmaker.hypertext.webpage import web_page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, compose_cover, compose_handout, fillable, load_layout
from bookmaker.layout.specfile import read_layout
from bookmaker.layout.themefile import read_theme
from bookmaker.manifest import load
from bookmaker.manifest.pictures import read_picture
from bookmaker.preflight import inspect
from bookmaker.preflight.filled import mark, read_filled
from bookmaker.proof import Proof, prove_all
from bookmaker.resources import shipped
from bookmaker.solve.verdict import Several, Unique
from bookmaker.source.diagnostics import BookErrors, Collector, Place
from bookmaker.source.placed import Word
from bookmaker.times import assess, calibrated, read_calibration, read_results
from bookmaker.typeface import Typeface, font_files
from bookmaker.web.desk.proving import examine
from bookmaker.web.desk.reading import Reading
from bookmaker.wishes.reading import load_wishes
from tests.assemble.pools import pool
from tests.cli.running import run
from tests.dump import dump
from tests.filling import filled
from tests.layout.sample_book import picked, sample_proofs
from tests.listening import listen
from tests.manifest.test_hostile import try_book
from tests.times.clubs import graded
from tests.times.clubs import sheet as results_sheet

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


def book(folder: Path, text: str) -> None:
    """Read it; if it is sound, prove and grade every puzzle."""
    try_book(folder, text)
    try:
        manifest = load(folder)
    except BookErrors:
        return
    small = [entry for entry in manifest.entries if entry.puzzle.grid.size <= 6]
    assert len(prove_all(small)) == len(small)


def whole_book(folder: Path, text: str) -> None:
    """Proof it as a user does, who is told what is wrong with each puzzle."""
    (folder / "book.yaml").write_text(text, encoding="utf-8")
    result = run("proof", folder / "book.yaml", "--count", "100")
    assert result.exit_code in (0, 1), result.output
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception


def sound_book(folder: Path, text: str) -> None:
    """It reads without a mistake, and every puzzle has at least the solution that its marks were made from."""
    (folder / "book.yaml").write_text(text, encoding="utf-8")
    proven = prove_all(load(folder).entries)
    assert proven
    assert all(isinstance(proof.verdict, Unique | Several) for proof in proven)


def printed_book(folder: Path, text: str) -> None:
    """Typeset it from the command line: nothing but the folder for the output may change."""
    (folder / "book.yaml").write_bytes(text.encode("utf-8", errors="surrogatepass"))
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file() and "out" not in path.parts}
    result = run("typeset", folder, "--out", folder / "out", "--draft")
    assert result.exit_code in (0, 1), result.output
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    after = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file() and "out" not in path.parts}
    assert before == after
    if (folder / "out").exists():
        assert {path.name for path in (folder / "out").iterdir()} <= {"book.pdf", "key.pdf", "cover.pdf"}


def spoken_book(folder: Path, text: str) -> None:
    """Read it aloud in every way that needs no page, whatever its words: all of it is well-formed and whole."""
    (folder / "book.yaml").write_text(text, encoding="utf-8")
    manifest = load(folder)
    proofs = prove_all(manifest.entries)
    bound = make_book(manifest, proofs, draft=True)
    text = text_edition(bound)
    if bound.language == "en":  # no other is understood by who listens
        assert len([one.puzzle.givens for one in listen(text)]) == len(bound.puzzles)
    assert max(map(len, braille_edition(bound).splitlines())) <= CELLS
    assert web_page(bound).decode().count('<section id="puzzle-') == len(bound.puzzles)
    for page in texts_of(bound, Pictures(), "cover.png"):
        assert len(fromstring(xhtml([element("title", page.title)], page.body, "en"))) == 2


@cache
def layout_texts() -> tuple[str, ...]:
    return tuple(file.read_text(encoding="utf-8") for file in sorted(shipped("layouts").glob("*.yaml")))


def layout(text: str) -> None:
    """Read it; if it is sound, print a puzzle in it."""
    try:
        found = read_layout("hostile", text, "layouts/hostile.yaml")
        assert dump(compose(picked("morning"), found))
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)


@cache
def tables() -> tuple[bytes, ...]:
    """A spreadsheet as text, and the same as a workbook."""
    rows = (
        ("id", "title", "givens", "rules", "size", "permission state"),
        ("one", "Low Tide", "1" + "." * 15, "thermometer: r1c1-r1c3", "4", "own"),
        ("two", "Neap", "A1:D4", "", "4", ""),
    )
    return "\n".join(",".join(f'"{cell}"' for cell in row) for row in rows).encode(), workbook_bytes("Puzzles", rows)


def table(folder: Path, content: bytes) -> None:
    """Take it in, or be told at which cells it is faulty; what was taken in is a sound list of puzzles."""
    file = folder / "table.xlsx"
    file.write_bytes(content)
    try:
        taken = take_in(file, folder / "archive")
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)
        return
    assert bool(taken.text) == bool(taken.entries)
    if taken.text:
        (folder / "taken.yaml").write_text(taken.text, encoding="utf-8")
        assert [entry.puzzle for entry in load(folder / "taken.yaml").entries] == [e.puzzle for e in taken.entries]


@cache
def briefs() -> tuple[bytes, ...]:
    return tuple(file.read_bytes() for file in sorted((DEMO / "briefs").glob("*.yaml")))


def brief(folder: Path, text: str) -> None:
    """Make a plan of it and choose, or be told what is wrong with it."""
    (folder / "brief.yaml").write_text(text, encoding="utf-8")
    collector = Collector()
    catalogue = pool(30, 1)
    opened = open_brief(folder / "brief.yaml", collector)
    plan = make_plan(opened, catalogue, lambda books: frozenset(), collector) if opened else None
    assert (plan is None) == any(collector.errors())
    if plan is not None and len(plan.parts) < 12:
        found = choose(plan)
        assert found is None or all(demand.rather or found.keeps(demand) for demand in plan.demands)


def wish(folder: Path, text: str) -> None:
    """Read the wishes, or be told what is wrong with them."""
    (folder / "wish.yaml").write_text(text, encoding="utf-8")
    try:
        assert load_wishes(folder / "wish.yaml")
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)


def theme(text: str) -> None:
    """Read it; if it is sound, lay it on a cover."""
    try:
        found = read_theme("hostile", text, "layouts/themes/hostile.yaml")
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)
        return
    assert dump(compose_cover(picked("morning"), replace(load_layout("a5-book"), theme=found), 8))


def desk(folder: Path, texts: Sequence[str]) -> None:
    """Show a book at the desk, and again as it is saved once more: all that is told can be sent."""
    reading = Reading(folder / "desk.yaml")
    for text in texts:
        (folder / "desk.yaml").write_bytes(text.encode("utf-8", errors="surrogatepass"))
        reading.read()
        for entry in reading.unknown():
            if entry.puzzle.grid.size <= 6:
                reading.known[entry.puzzle] = examine(entry)
        assert json.dumps([reading.puzzles(), reading.diagnostics()], allow_nan=False)


@cache
def sheets() -> tuple[bytes, ...]:
    """A sheet to be filled in on a screen, empty, and with a digit and notes in it."""
    empty = pdf_bytes(fillable(compose_handout(picked("morning"), load_layout("a4-handout"))))
    puzzle = proofs()[0].entry.puzzle
    first, second = (puzzle.grid.name(cell) for cell in [c for c in puzzle.grid.cells if not puzzle.givens[c]][:2])
    return empty, filled(empty, {f"morning.{first}": "7", f"morning.{second}": "12"})


def sheet(folder: Path, content: bytes) -> None:
    """Mark it, or be told that it is none."""
    (folder / "sheet.pdf").write_bytes(content)
    try:
        read = read_filled(folder / "sheet.pdf")
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)
        return
    puzzle, solution = proofs()[0].entry.puzzle, proofs()[0].solution
    assert solution is not None
    for cells in read.values():
        marked = mark(puzzle.grid, puzzle.givens, solution, cells)
        assert len({*marked.wrong, *marked.empty}) <= len(solution)


@cache
def fonts() -> tuple[bytes, ...]:
    return tuple(font_files()[name].read_bytes() for name in ("sans", "serif-bold"))


def font(folder: Path, content: bytes) -> None:
    """Measure and draw with it, or be told that it is damaged."""
    file = folder / "font.ttf"
    file.write_bytes(content)
    try:
        face = Typeface("hostile", file)
    except OSError:
        return
    assert face.length("AVATAR 123", 10.0) >= 0
    assert face.figure_height
    face.outline("g")


@cache
def pictures() -> tuple[bytes, ...]:
    """A small PNG in colours, one with a palette, and a JPEG."""
    whole = Image.linear_gradient("L").resize((40, 30))
    kinds = ((whole.convert("RGBA"), "PNG"), (whole.convert("P"), "PNG"), (whole.convert("CMYK"), "JPEG"))
    made = []
    for picture, kind in kinds:
        stream = BytesIO()
        picture.save(stream, kind)
        made.append(stream.getvalue())
    return tuple(made)


def picture(folder: Path, content: bytes) -> None:
    """Have it, or be told why not."""
    (folder / "picture.png").write_bytes(content)
    collector = Collector()
    found = read_picture(Word(Place(str(folder / "book.yaml"), 1, 1), "picture.png"), collector)
    assert (found is None) == bool(collector.found)


@cache
def results() -> tuple[bytes, ...]:
    """Tables of results, in both shapes."""
    wide = results_sheet([2.0, 3.0, 4.0], ["puzzle-1", "Puzzle B", "3"], 9, 1)
    listed = 'Minutes,Name,Puzzle\n12:30,Ada,1\n"9,5",Ada,2\n,Bo,1\n>45,Bo,2\n'
    return wide.encode(), listed.encode("utf-16")


def times(folder: Path, content: bytes) -> None:
    """Read the results and say what there is to say of them, or what is wrong with them."""
    (folder / "results.csv").write_bytes(content)
    try:
        read = read_results(folder / "results.csv", [proof.entry for proof in graded(12)])
        assert read.attempts
        found = assess(read, graded(12))
        assert all(isfinite(measured.both) for measured in found.puzzles)
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)


CALIBRATION = "grades: 6\nfamilies:\n  sums: +0.40\npuzzles:\n  - puzzle: abc    # one\n    difficulty: 3.412\n"


def calibration(folder: Path, content: bytes) -> None:
    """Read it and use it, or be told why not."""
    (folder / "calibration.yaml").write_bytes(content)
    try:
        found = read_calibration(folder / "calibration.yaml")
        assert all(1 <= proof.grade.difficulty < 6 for proof in calibrated(graded(3), found) if proof.grade)
    except BookErrors as errors:
        assert all(diagnostic.text for diagnostic in errors.diagnostics)


@cache
def proofs() -> tuple[Proof, ...]:
    return tuple(proof for proof in sample_proofs() if proof.entry.id == "morning")


@cache
def pdfs() -> tuple[bytes, ...]:
    """A small book as printed, and once more with its pages as plain text, so that damage reaches the operators."""
    document = compose(picked("morning"), load_layout("a5-book"))
    packed = pdf_bytes(document)
    writer = PdfWriter(clone_from=PdfReader(BytesIO(packed)))
    for page in writer.pages:
        contents = page.get_contents()
        assert contents is not None
        page.replace_contents(contents)
    stream = BytesIO()
    writer.write(stream)
    return packed, stream.getvalue()


def pdf(content: bytes) -> None:
    """Look it over, and compare it with its book."""
    report = inspect(content, "hostile.pdf", proofs())
    assert report.pages or report.diagnostics
    assert all(diagnostic.text for diagnostic in report.diagnostics)
