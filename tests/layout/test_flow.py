from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.display.items import Text
from bookmaker.layout.setting.flow import columns, height
from bookmaker.layout.setting.runs import marked_paragraph
from bookmaker.layout.setting.text import FONTS, Row, broken, paragraph
from bookmaker.layout.spec import Type
from bookmaker.manifest.markup import Run

SERIF = Type("serif", 10, 14)
TEXT = "a lamp by the stairs is better than two in the cellar said the caretaker who had neither"
WORDS = TEXT.split()


def line_of(row: Row) -> str:
    (text,) = row.items
    assert isinstance(text, Text)
    return text.text


@settings(derandomize=True, deadline=None, max_examples=60)
@given(st.lists(st.integers(5, 90), min_size=1, max_size=6), st.integers(4, 12))
def test_no_line_of_a_paragraph_stands_alone(paragraphs: list[int], lines: int) -> None:
    rows: list[Row] = []
    whole: list[list[str]] = []
    for at, count in enumerate(paragraphs):
        text = " ".join(WORDS[(at + i) % len(WORDS)] for i in range(count))
        made = paragraph(text, SERIF, 120, 14)
        whole.append([line_of(row) for row in made])
        rows += made
    pages = columns(rows, lines * 14)
    assert [line_of(row) for page in pages for row in page] == [line for text in whole for line in text]
    assert all(height(page) <= lines * 14 for page in pages)
    starts = {0}
    for page in pages:
        starts.add(max(starts) + len(page))
    at = 0
    for said in whole:
        for cut in (at + 1, at + len(said) - 1):
            assert len(said) < 2 or cut not in starts, "a widow or an orphan"
        at += len(said)


def test_a_tied_heading_moves_with_its_text_and_space_at_the_top_is_dropped() -> None:
    body = [Row(14, (Text(0, 0, "x", "serif", 10),))] * 3
    rows = [*body, Row(14), Row(20, body[0].items, tied=True), *body]
    first, second = columns(rows, 70)
    assert len(first) == 4
    assert second[0].height == 20
    assert columns([Row(14), *body], 70)[0] == tuple(body)


@pytest.mark.parametrize("measure", range(40, 140, 10))
def test_marked_up_words_are_parted_like_plain_ones(measure: float) -> None:
    text = "hospitality, considered generously, " + TEXT
    spoken = replace(SERIF, language="en")
    rows = marked_paragraph((Run(text),), spoken, measure, 14)
    assert [line_of(row) for row in rows] == [line_of(row) for row in paragraph(text, spoken, measure, 14)]


def test_a_word_of_two_styles_stays_whole_and_slanted_words_are_parted() -> None:
    spoken = replace(SERIF, language="en")
    runs = (Run("the "), Run("hospitality", "italic"), Run(" of "), Run("con", "bold"), Run("sideration"))
    lines = ["".join(item.text for item in row.items) for row in marked_paragraph(runs, spoken, 45, 14)]
    assert "".join(lines).replace("-", "").replace(" ", "") == "thehospitalityofconsideration"
    assert any(line.endswith("-") for line in lines) and "consideration" in lines


def test_lines_are_no_wider_than_their_column_and_keep_every_letter() -> None:
    text = " ".join(WORDS) + " Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen"
    for measure in (40, 90, 200):
        lines = broken(text, "serif", 10, measure)
        assert all(FONTS.width(line, "serif", 10) <= measure for line in lines)
        assert "".join(line.removesuffix("-") for line in lines).replace(" ", "") == text.replace(" ", "")
    assert all(
        "1\u00a0to\u00a09" in line or "1" not in line for line in broken("from 1\u00a0to\u00a09 a", "serif", 10, 40)
    )
