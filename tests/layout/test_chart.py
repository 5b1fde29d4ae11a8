"""The specimen chart shows every kind once, in its group, and nothing on it touches anything else."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.display.items import Document, Line, Page, Text
from bookmaker.language import catalogue
from bookmaker.layout.sheets.chart import GROUP, GROUPS, MARGIN, NAME, TEXT, compose_chart
from bookmaker.rules import kinds
from tests.layout.flat import Box, flat


@cache
def chart() -> Document:
    return compose_chart()


def told(page: Page) -> list[Text]:
    """The texts of a page but for those in samples, in the order drawn: column by column."""
    return [one.item for one in flat(page) if isinstance(one.item, Text) and not one.inside("sample")]


def entries() -> dict[str, tuple[str, str]]:
    """Title → group and sentence, as printed."""
    found: dict[str, tuple[str, str]] = {}
    group = title = ""
    for text in (text for page in chart().pages for text in told(page)):
        if text.font == GROUP.font:
            group = text.text
        elif text.font == NAME.font:
            title = text.text
            assert title not in found
            found[title] = group, ""
        elif (text.font, text.size) == (TEXT.font, TEXT.size):
            found[title] = group, f"{found[title][1]} {text.text}".strip()
    return found


def test_every_kind_stands_on_it_once_with_its_sentence() -> None:
    printed = entries()
    assert set(printed) == {smart_quotes(rule.title) for rule in kinds().values()}
    for rule in kinds().values():
        sample, (_, sentence) = rule.sample(), printed[smart_quotes(rule.title)]
        if sample is not None:
            assert sentence == smart_quotes(sample.rule.sentence(catalogue("en")))
        assert sentence.endswith(".")


def test_kinds_are_grouped_by_where_they_draw() -> None:
    groups = {title: group for title, (group, _) in entries().items()}
    assert [*dict.fromkeys(groups.values())] == [catalogue("en").say(name) for name in GROUPS]
    assert groups["Thermometers"] == groups["Arrows"] == "Along lines"
    assert groups["Cages"] == groups["Even and odd"] == "In cells and areas"
    assert groups["Dots"] == groups["Corner quadruples"] == "Between cells and at corners"
    assert groups["Diagonal sums"] == groups["Skyscrapers"] == "Outside the grid"
    assert groups["King’s move"] == "In the whole grid, without a mark"


def test_every_sample_is_drawn_once() -> None:
    names = [one.names[-1] for page in chart().pages for one in flat(page) if one.inside("sample")]
    assert sorted(names) == [f"sample {kind}" for kind, rule in kinds().items() if rule.sample()]


def test_nothing_touches_anything_else_or_leaves_the_margins() -> None:
    for page in chart().pages:
        boxes: list[Box] = [one.box for one in flat(page) if not isinstance(one.item, Line)]
        for left, top, right, bottom in boxes:
            assert left >= MARGIN - 2
            assert top >= MARGIN - 2
            assert right <= page.width - MARGIN + 2
            assert bottom <= page.height - MARGIN + 2
        for one, other in ((a, b) for i, a in enumerate(boxes) for b in boxes[:i]):
            across = min(one[2], other[2]) - max(one[0], other[0])
            down = min(one[3], other[3]) - max(one[1], other[1])
            assert across <= 1 or down <= 1


def test_it_fits_two_sheets_of_a4() -> None:
    assert len(chart().pages) <= 4
    assert {(round(page.width, 3), round(page.height, 3)) for page in chart().pages} == {(595.276, 841.89)}
    assert compose_chart() == chart()
    assert all(a.label < b.label for a, b in pairwise(chart().pages))
