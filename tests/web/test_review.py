"""The review page: one file, sealed; listed, narrowed, stepped through; by mouse, by keys alone, and read aloud."""

from __future__ import annotations

import re
from base64 import b64encode
from hashlib import sha256
from html import unescape
from pathlib import Path
from typing import Any

import pytest

from bookmaker.manifest import load
from bookmaker.proof import prove_all
from bookmaker.proof.cache import user_store
from bookmaker.solve.verdict import Several
from bookmaker.tell import tell
from bookmaker.web.assets import static
from bookmaker.web.page import SCRIPTS, STYLES
from tests.cli.running import run
from tests.web.books import HOSTILE
from tests.web.seeing import Pages, address, faults, too_wide

SOUND = ("kite-string", "hostile")


@pytest.fixture(scope="module")
def proofs(review_file: Path) -> dict[str, Any]:
    entries = load(review_file.parent).entries
    return {proof.entry.id: proof for proof in prove_all(entries, store=user_store())}


# -- the file


def test_the_policy_allows_exactly_what_is_inside(review_file: Path) -> None:
    """Hashes as in W3C's Content Security Policy, level 3."""
    text = review_file.read_text("utf-8")
    (policy,) = re.findall(r'http-equiv="Content-Security-Policy" content="([^"]*)"', text)
    words = {part.split()[0]: part.split()[1:] for part in unescape(policy).split(";")}
    inside = {
        "script-src": re.findall(r'<script type="module">(.*?)</script>', text, re.DOTALL),
        "style-src": re.findall(r"<style>(.*?)</style>", text, re.DOTALL),
    }
    for kind, parts in inside.items():
        sums = [f"'sha256-{b64encode(sha256(part.encode()).digest()).decode()}'" for part in parts]
        assert len(sums) == 1 and words[kind] == sums
    assert words["default-src"] == ["'none'"] and words["base-uri"] == ["'none'"] and "connect-src" not in words
    kinds = [re.sub(r'id="[\w-]+"', "id", kind) for kind in re.findall(r"<script ([^>]*)>", text)]
    assert set(kinds) == {'type="module"', 'type="application/json" id', 'type="text/plain" id'}
    assert not re.search(r"""\b(?:src|href)=["']?(?:https?:)?//""", text) and "@import" not in text


def test_words_of_the_manifest_are_never_markup(review_file: Path) -> None:
    text = review_file.read_text("utf-8")
    assert "<script>window" not in text and "<img" not in text and "<b>Spring" not in text
    assert "Neap &amp; &lt;b&gt;Spring&lt;/b&gt;" in text


def test_the_same_book_gives_the_same_page_and_names_no_folder_of_the_machine(review_file: Path) -> None:
    assert str(review_file.parent) not in review_file.read_text("utf-8")
    again = review_file.with_name("again.html")
    assert run("review", review_file.parent, "--out", again, "--notes").exit_code == 0
    assert again.read_bytes() == review_file.read_bytes()


def test_modules_that_stand_in_one_script_share_no_names() -> None:
    """And are imported only by lines that can go, in an order in which each comes after what it needs."""
    names: list[str] = []
    for at, name in enumerate(SCRIPTS):
        text = static(name)
        names += re.findall(r"^(?:export )?(?:async )?(?:const|let|class|function) (\w+)", text, re.MULTILINE)
        for needed in re.findall(r'^import .* from "\./(.*)";$', text, re.MULTILINE):
            assert needed in SCRIPTS[:at], f"{name} needs {needed}"
        assert text.count("import ") == len(re.findall(r"^import [^\n]*;$", text, re.MULTILINE))
    assert len(names) == len(set(names))
    assert not any(re.search(r"animation|transition|@import|url\(", static(style)) for style in STYLES)
    assert not any("innerHTML" in static(name) for name in (*SCRIPTS, "desk.js", "cells.js"))


def test_a_name_that_is_no_page_is_refused(tmp_path: Path, review_file: Path) -> None:
    wrong = run("review", review_file.parent, "--out", tmp_path / "page.pdf")
    assert wrong.exit_code == 2 and "should end in .html" in wrong.output


def test_a_folder_without_puzzles_is_no_archive(tmp_path: Path) -> None:
    wrong = run("review", tmp_path, "--out", tmp_path / "r.html")
    assert wrong.exit_code == 1 and "no file with puzzles" in wrong.output and not (tmp_path / "r.html").exists()


def test_an_archive_is_shown_with_what_it_knows(tmp_path: Path, pages: Pages) -> None:
    """Its files, permissions and look-alikes; the second puzzle is the first, turned by a half turn."""
    rows = ["1 2 3 .", "3 . 1 2", "2 . 4 3", "4 . 2 1"]
    turned = [" ".join(reversed(row.split())) for row in reversed(rows)]
    (tmp_path / "one.yaml").write_text(_puzzle("ebb", rows), encoding="utf-8")
    (tmp_path / "two.yaml").write_text(_puzzle("flow", turned), encoding="utf-8")
    assert run("review", tmp_path, "--out", tmp_path / "r.html").exit_code == 0
    page = pages.open(address(tmp_path / "r.html"))
    assert page.inner_text(".count") == "2 puzzles"
    page.select_option("select:has(option[value=alike])", "alike")
    assert page.locator(".row").count() == 2
    page.click(".row a >> nth=0")
    page.click(".facts a[href='#/flow']")
    page.locator("#sheet h2", has_text="Flow").wait_for()
    assert "two.yaml, line 1 (flow)" in page.inner_text(".facts")


def _puzzle(name: str, rows: list[str]) -> str:
    givens = "".join(f"    {row}\n" for row in rows)
    return f"- id: {name}\n  title: {name.title()}\n  size: 4\n  givens: |\n{givens}"


# -- the list


def test_the_list_is_searched_narrowed_and_sorted(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file))

    def titles() -> list[str]:
        return [text for text in page.locator(".row h3").all_inner_texts() if text != HOSTILE]

    assert page.inner_text(".count") == "5 puzzles; 2 to mend"
    assert titles() == ["Paper Boat", "Kite String", "Two Ways", "No Way"]
    page.fill("input[type=search]", "wick")
    assert titles() == ["Kite String", "No Way"]
    page.fill("input[type=search]", "")
    page.click(".bar:has-text('Wick')")
    assert titles() == ["Kite String", "No Way"] and page.inner_text(".count") == "2 puzzles of 5; 2 to mend"
    assert page.locator(".bar[aria-pressed=true]").inner_text().split("\n")[0] == "Wick"
    page.select_option("select:has(option[value=mend])", "mend")
    assert titles() == ["No Way"]
    page.click("button:has-text('Show all')")
    page.select_option("select:has(option[value=rank])", "title")
    assert titles() == ["Kite String", "No Way", "Paper Boat", "Two Ways"]
    page.fill("input[type=number] >> nth=0", "1.1")
    assert titles() == ["Kite String", "Paper Boat"] or titles() == ["Paper Boat"]
    assert page.evaluate("window.struck") is None
    page.wait_for_selector(".row .thumb svg")


def test_thousands_of_rows_are_drawn_as_one_looks(review_file: Path, pages: Pages, tmp_path: Path) -> None:
    text = review_file.read_text("utf-8")
    (index,) = re.findall(r'id="index">(.*?)</script>', text)
    (rows,) = re.findall(r'"puzzles":(\[.*?\]),"measures"', index)
    many = "[" + ",".join([rows[1:-1]] * 1000) + "]"
    packed = re.search(r'id="packed-0">([^<]*)<', text)[1]
    more = "".join(f'<script type="text/plain" id="packed-{at}">{packed}</script>' for at in range(5, 5000))
    text = text.replace(rows, many).replace('<script type="module">', f'{more}<script type="module">')
    (tmp_path / "many.html").write_text(text, encoding="utf-8")
    page = pages.open(address(tmp_path / "many.html"))
    assert page.inner_text(".count") == "5000 puzzles; 2000 to mend"
    drawn = page.locator(".row").count()
    assert 40 <= drawn <= 200
    page.locator(".more").scroll_into_view_if_needed()
    page.wait_for_selector(f".row:nth-child({drawn + 1})", state="attached")


# -- one puzzle


@pytest.mark.parametrize("name", SOUND)
def test_the_path_is_stepped_as_it_is_told(review_file: Path, pages: Pages, proofs: dict[str, Any], name: str) -> None:
    proof = proofs[name]
    solution, symbols = proof.solution, "123456789"
    told = {number: sentence.text for passage in tell(proof).passages for sentence in passage.sentences
            for number in sentence.told}  # fmt: skip
    page = pages.open(address(review_file, f"#/{name}"))
    rows = _rows(page)
    assert rows == ["".join(symbols[d - 1] if d else "·" for d in row) for row in _square(proof.entry.puzzle.givens)]
    seen = [page.inner_html(".paper")]
    steps = []
    while page.locator("button:has-text('Forward')").is_enabled():
        page.click("button:has-text('Forward')")
        (step,) = re.findall(r"Step (\d+) of \d+", page.inner_text(".caption"))
        steps.append(int(step))
        assert page.inner_text(".story a[aria-current=step]") == told[int(step)]
        assert page.url.endswith(f"#/{name}/{step}")
        for row, right in zip(_rows(page), _square(solution), strict=True):
            assert all(sign in ("·", symbols[digit - 1]) for sign, digit in zip(row, right, strict=True))
        seen.append(page.inner_html(".paper"))
    assert sorted(steps) == sorted(told)
    assert _rows(page) == ["".join(symbols[d - 1] for d in row) for row in _square(solution)]
    for before in reversed(seen[:-1]):
        page.click("button:has-text('Back')")
        assert page.inner_html(".paper") == before
    assert page.locator("button:has-text('Back')").is_disabled()


def test_a_link_to_a_step_opens_it(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/kite-string/9"))
    assert "Step 9 of" in page.inner_text(".caption")
    assert page.get_attribute(".here", "href") == "#/kite-string/9"
    assert page.locator(".board rect[rx]").count() >= 1  # the cell that is filled next has a frame, as in a crib


def test_candidates_are_shown_on_demand_and_struck(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/kite-string/1"))
    few = page.locator(".board use").count()
    page.check("text=All candidates")
    assert page.locator(".board use").count() > few + 30
    struck = "path[stroke='#000']:not([fill])"
    page.click("button:has-text('End')")
    while not page.locator(f".board {struck}").count():
        page.click("button:has-text('Back')")
    assert "thermometer" in page.inner_text(".caption")


def test_the_solution_is_hidden_until_it_is_asked_for(review_file: Path, pages: Pages, proofs: dict[str, Any]) -> None:
    page = pages.open(address(review_file, "#/paper-boat"))
    solved = ["".join(map(str, row)) for row in _square(proofs["paper-boat"].solution)]
    assert _rows(page) != solved
    ahead = page.locator(".passage").all()
    assert ahead[0].is_visible() and not ahead[-1].is_visible()
    page.click("button:has-text('Show the solution')")
    assert _rows(page) == solved and "The solution; 81 of 81" in page.inner_text(".caption")
    page.click("button:has-text('Hide the solution')")
    assert _rows(page) != solved
    page.check("text=Whole path")
    assert page.locator(".passage").last.is_visible()


def test_the_profile_is_a_scrubber(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/paper-boat"))
    page.focus("input[type=range]")
    for _ in range(5):
        page.keyboard.press("ArrowRight")
    assert "Step 5 of" in page.inner_text(".caption")
    assert page.get_attribute("input[type=range]", "aria-valuetext").startswith("Step 5 of")
    page.keyboard.press("Home")
    assert page.inner_text(".caption").startswith("The puzzle as given")


def test_two_solutions_stand_side_by_side_with_what_differs(
    review_file: Path, pages: Pages, proofs: dict[str, Any]
) -> None:
    verdict = proofs["two-ways"].verdict
    assert isinstance(verdict, Several)
    page = pages.open(address(review_file, "#/two-ways"))
    assert page.locator(".stage figure").count() == 2
    assert f"differs in {len(verdict.differing)} cells" in page.inner_text(".stage figure >> nth=0")
    heavy = page.locator(".stage figure >> nth=1").locator("path[fill=none][stroke='#000']")
    assert heavy.count() == len(verdict.differing)
    assert "two of them differ in r3c2" in page.inner_text(".remark")
    cures = page.inner_text(".cures")
    assert "A given left out? The 1 at r3c2 added; then one solution" in cures and "Or add the 1 at r3c2." in cures


def test_a_puzzle_without_a_solution_says_why(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/no-way"))
    assert "To mend: no solution." in page.inner_text(".remark") and "can't both hold" in page.inner_text(".remark")
    assert "A mark beside its place? The inequality sign between r1c2 and r2c2" in page.inner_text(".cures")


def test_what_is_known_stands_below(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/paper-boat"))
    facts = page.inner_text(".facts")
    for said in (
        "granted, by Wick, March 2026",
        "With thanks.",
        "harbour, easter",
        "hidden single",
        "book.yaml, line 6",
    ):
        assert said in facts
    assert "first shown 14 March 2026" in page.inner_text("#sheet header")


def test_by_keys_alone(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file))
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "To the puzzles"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Paper Boat"
    page.keyboard.press("Enter")
    page.wait_for_selector("#sheet h2")
    assert page.evaluate("document.activeElement.id") == "sheet-title"
    for _ in range(3):
        page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowLeft")
    assert "Step 2 of" in page.inner_text(".caption")
    page.keyboard.press("Escape")
    page.wait_for_selector(".row", state="visible")
    assert page.evaluate("document.activeElement.textContent") == "Paper Boat"
    outline = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
    assert outline == "solid"


def test_in_print_there_is_no_furniture(review_file: Path, pages: Pages) -> None:
    page = pages.open(address(review_file, "#/paper-boat/5"))
    page.emulate_media(media="print")
    for furniture in (".controls", ".leaf", ".options", ".scrub input"):
        assert not page.locator(furniture).is_visible()
    assert page.locator("#sheet .board").is_visible() and page.locator("#sheet h2").is_visible()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("at", ["#/", "#/kite-string/9", "#/two-ways"])
def test_axe_has_nothing_against_it(review_file: Path, pages: Pages, at: str, scheme: str) -> None:
    page = pages.open(address(review_file, at), color_scheme=scheme, reduced_motion="reduce")
    page.wait_for_timeout(100)
    assert faults(page) == []


@pytest.mark.parametrize("at", ["#/", "#/paper-boat/9", "#/two-ways"])
@pytest.mark.parametrize("width", [600, 320], ids=["200 %", "a phone"])
def test_nothing_is_cut_off_when_it_is_narrow(review_file: Path, pages: Pages, at: str, width: int) -> None:
    """A window of 1200 pixels zoomed to 200 % is one of 600; 320 is what WCAG 2.2, 1.4.10 asks."""
    page = pages.open(address(review_file, at), width=width, height=700)
    assert too_wide(page) <= 0


def _rows(page: Any) -> list[str]:
    """The board in words, a text for each row."""
    return [text.replace(" ", "") for text in page.locator(".inwords li").all_text_contents()]


def _square(digits: Any) -> list[Any]:
    size = round(len(digits) ** 0.5)
    return [digits[at : at + size] for at in range(0, len(digits), size)]
