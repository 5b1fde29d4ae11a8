"""Schemas beside the readers: what these accept the schemas accept, and what a schema can see of a slip it refuses.

The judge of a schema is jsonschema's validator for draft 2020-12 (json-schema.org); files are read as editors do.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any

import pytest
import yaml
from jsonschema import Draft202012Validator

from bookmaker.manifest import load
from bookmaker.manifest.bookfields import BOOK_KEYS
from bookmaker.manifest.puzzlefields import PUZZLE_KEYS
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import FORMS
from bookmaker.schema import SCHEMAS, schema_text
from bookmaker.schema.rules import WORDS
from bookmaker.source.diagnostics import BookErrors, Collector
from bookmaker.source.yamlfile import parse_yaml
from bookmaker.starter import write_starter
from bookmaker.wishes.reading import wishes_in
from tests.cli.running import run
from tests.manifest.books import write
from tests.manifest.test_mistakes import CASES
from tests.manifest.test_slips import BOOK, SLIPS
from tests.schema.plainyaml import read

HERE = Path(__file__).resolve().parents[2]
DEMO = HERE / "demo_book"


@cache
def judge(name: str) -> Draft202012Validator:
    schema = json.loads(schema_text(name))
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


def refused(name: str, document: Any) -> list[str]:
    return [f"{'.'.join(map(str, error.absolute_path))}: {error.message[:200]}" for error in
            judge(name).iter_errors(document)]  # fmt: skip


def shipped_files() -> dict[str, str]:
    """Every YAML file that comes with bookmaker, with the kind of file that it is."""
    found = {str(path): "manifest" for path in DEMO.rglob("*.yaml") if path.parent.name != "wishes"}
    found |= {str(path): "wish" for path in DEMO.glob("wishes/*.yaml")}
    found |= {str(path): "brief" for path in DEMO.glob("briefs/*.yaml")}
    found |= {str(path): "archive" for path in DEMO.rglob("archive.yaml")}
    found |= {str(path): "layout" for path in (HERE / "layouts").glob("*.yaml")}
    found |= {str(path): "theme" for path in (HERE / "layouts/themes").glob("*.yaml")}
    found |= {str(path): "manifest" for path in (HERE / "tests/layout/sample").rglob("*.yaml")}
    return dict(sorted(found.items()))


@pytest.mark.parametrize("kind", list(SCHEMAS))
def test_what_comes_with_bookmaker_is_accepted(kind: str) -> None:
    files = [file for file, its in shipped_files().items() if its == kind]
    assert files
    complaints = {file: found for file in files if (found := refused(kind, read(Path(file).read_text("utf-8"))))}
    assert not complaints


@pytest.mark.parametrize("kind", [None, *sorted(kinds())])
def test_what_start_writes_is_accepted_and_points_to_its_schema(kind: str | None, tmp_path: Path) -> None:
    book, schema = write_starter(tmp_path, kind)
    text = book.read_text("utf-8")
    assert text.startswith(f"# yaml-language-server: $schema={schema.name}\n")
    assert schema.read_text("utf-8") == schema_text("manifest")
    assert refused("manifest", read(text)) == []
    load(book)


def test_a_schema_of_the_users_own_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "book.schema.json").write_text("{}")
    assert [path.name for path in write_starter(tmp_path)] == ["book.yaml"]
    assert (tmp_path / "book.schema.json").read_text() == "{}"


@pytest.mark.parametrize("kind", sorted(kinds()))
def test_every_example_is_accepted_and_a_stray_body_refused(kind: str) -> None:
    rule = kinds()[kind]
    puzzle = {"id": "a", "rules": read(rule.example)}
    assert refused("manifest", [puzzle]) == []
    assert refused("manifest", [{"id": "a", "rules": {kind: {"no such name": [[1]]}}}])
    for way in rule.typed:
        words = [part.rpartition(": ")[2] for part in way.strip("[]").split(", ")]
        assert all(" | " in word or word in FORMS for word in words), way
    assert set(FORMS) == set(WORDS)


def test_every_field_is_explained() -> None:
    schema = json.loads(schema_text("manifest"))["$defs"]
    for keys, properties in ((BOOK_KEYS, schema["book"]), (PUZZLE_KEYS, schema["puzzle"])):
        assert [key for key in keys if "description" not in properties["properties"][key]] == []
    explained = schema["book"]["properties"]
    assert explained["fold"]["description"].startswith("The page count is a multiple of it.")
    assert explained["imprint"]["properties"]["isbn"]["description"].startswith("Also the barcode.")
    brief = json.loads(schema_text("brief"))["properties"]["brief"]["properties"]
    assert [key for key in brief if "description" not in brief[key]] == ["title", "rather"]
    margins = json.loads(schema_text("layout"))["properties"]["margins"]
    assert "left and right pages mirror" in margins["description"]


UNSEEN = {
    "same-id", "givens-clash", "region-apart", "region-size", "stray-character", "isbn", "same-puzzle",
    "chain-jumps", "chain-returns", "chain-unfillable", "crooked-run", "off-grid", "not-a-cell", "cell-twice",
    "no-file", "include-outside", "include-name", "include-loop", "include-twice", "one-of-two", "no-puzzles",
    "empty-file", "bad-boxes", "lost-number", "unknown-letter", "area-small", "backward-range",
}  # fmt: skip
"""What depends on more than the shape of a file: on cells, on other files, on two values together."""

UNSEEN_CASES = {
    "no “givens” after the setter", "no “givens” after the title", "no “givens” after a name left empty",  # as any name
    "no such day", "one line too short",  # right in form, and a number is not counted
}  # fmt: skip
"""Single slips beyond a schema, whose codes have others that it sees."""


def faulty(tmp_path: Path, text: str) -> set[str]:
    """The codes of a book's mistakes."""
    write(tmp_path, {"book.yaml": text})
    try:
        load(tmp_path / "book.yaml")
    except BookErrors as found:
        return {diagnostic.code for diagnostic in found.diagnostics if not diagnostic.warning}
    return set()


FAULTY = {name: BOOK.replace(old, new, 1).replace("▸", "") for name, (old, new, *_) in SLIPS.items()} | {
    name: case[0] for name, case in CASES.items()
}


@pytest.mark.parametrize("name", FAULTY)
def test_a_slip_that_a_schema_can_see_is_refused(name: str, tmp_path: Path) -> None:
    """Either it is no YAML, or the schema refuses it, or all its mistakes are of those that no schema sees."""
    text = FAULTY[name]
    try:
        document = read(text)
    except yaml.YAMLError:
        return
    if not refused("manifest", document):
        assert name in UNSEEN_CASES or faulty(tmp_path, text) <= UNSEEN, document


def test_the_sound_book_of_the_slips_is_accepted() -> None:
    assert refused("manifest", read(BOOK)) == []


@pytest.mark.parametrize(
    "text",
    [
        "brief: {title: T, puzzles: 20, kind: {cage: 2}}",
        "brief: {puzzles: 20}",
        "brief: {title: T, puzzles: a few}",
        "brief: {title: T, puzzles: 20, apart: colours}",
        "brief: {title: T, puzzles: 20, shown: since 2025}",
        "brief: {title: T, puzzles: 20, prefer: [cheapest]}",
        "brief: {title: T, puzzles: 20, tags: {harbour: {rather: yes}}}",
        "book: {title: T}",
        "brief: {title: T, puzzles: 20}\nbook: {order: listed}",
    ],
)
def test_slips_in_a_brief_are_refused(text: str) -> None:
    assert refused("brief", read(text))


@pytest.mark.parametrize(
    ("old", "new"),
    [("rows: 1", "rows: 9"), ("text: above", "text: below"), ("inner: 25 mm", "inner: 25"), ("paper: A4", "paper: A9")],
)
def test_slips_in_a_layout_are_refused(old: str, new: str) -> None:
    text = (HERE / "layouts" / "a4-book.yaml").read_text("utf-8")
    assert old in text
    assert refused("layout", read(text.replace(old, new)))


@pytest.mark.parametrize(
    "text",
    [
        "wish: {rules: {cage: {shape: 3}}}",
        "wish: {rules: [cages]}",
        "wish: {band: Climb to Ramble}",
        "wish: {givens: a few}",
        "wish: {refuse: [guessing]}",
        "wish: {want: {X-wing: often}}",
        "wish: {bottlenecks: {where: everywhere}}",
        "wish: {puzzle: 3}",
        "wish: {size: 9, boxes: 3x3, regions: aaa}",
        "{}",
    ],
)
def test_slips_in_a_wish_are_refused(text: str) -> None:
    assert refused("wish", read(text))


@pytest.mark.parametrize(
    "text",
    [
        "wish: {rules: cage, band: ramble to Climb, want: {x-Wing: 1 to 2}, refuse: What-if}",
        "wishes: [{rules: [cage, knight], givens: at most 24}, {rules: {dots: {marks: 6 to 10, all-marked: yes}}}]",
        "wish: {rules: {sandwich: {clues: 4}, cage: {shapes: 4 to 8, cells: 2}}, difficulty: 2 to 3.5}",
        "wish: {rules: {knight: , cage: }, bottlenecks: {how-many: 1 to 2, where: late}, id: '{number}'}",
    ],
)
def test_wishes_are_accepted(text: str) -> None:
    assert refused("wish", read(text)) == []
    collector = Collector()
    tree = parse_yaml(text, "wish.yaml", collector)
    assert tree is not None and wishes_in(tree, collector) and not collector.found


def test_amounts_in_any_case() -> None:
    assert not refused("brief", read("brief: {title: T, puzzles: At  least 4, tags: {a: None, b: 2 to 5}}"))


def test_the_command_prints_it() -> None:
    assert run("schema").output == schema_text("manifest")
    assert run("schema", "layout").output == schema_text("layout")
    wrong = run("schema", "layuot")
    assert wrong.exit_code == 2 and "layout" in wrong.output
