"""The breaks against all possible breaks, tried one by one."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate, combinations, pairwise
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.hyphenation import pieces
from bookmaker.layout.setting import linebreak
from bookmaker.layout.setting.linebreak import line_lengths
from bookmaker.layout.setting.text import FONTS, broken, paragraph
from bookmaker.layout.spec import Type

WORDS = st.lists(st.integers(5, 60), min_size=1, max_size=9)


def cost_of(
    lengths: Sequence[int],
    widths: Sequence[float],
    space: float,
    measure: float,
    joined: Sequence[bool] | None = None,
    hyphen: float = 0,
) -> float:
    joined = joined or [False] * len(widths)
    total, at = 0.0, 0
    for index, count in enumerate(lengths):
        length = sum(widths[at : at + count]) + space * (count - 1 - sum(joined[at + 1 : at + count]))
        if at + count < len(widths) and joined[at + count]:
            length += hyphen
            total += linebreak.PARTING
        if length > measure and count > 1:
            return float("inf")
        last = index == len(lengths) - 1
        gap = max(0.0, measure - length) / measure
        leftover = index > 0 and length < linebreak.RUNT * measure
        total += (0.3 if leftover else 0.01) if last else gap**3 + 0.01
        at += count
    return total


@settings(derandomize=True, deadline=None, max_examples=150)
@given(WORDS, st.integers(60, 140))
def test_no_other_breaks_are_better(widths: Sequence[float], measure: float) -> None:
    found = line_lengths(widths, 4, measure)
    assert sum(found) == len(widths)
    count = len(widths)
    best = float("inf")
    for cuts in range(count):
        for places in combinations(range(1, count), cuts):
            edges = (0, *places, count)
            lengths = [b - a for a, b in pairwise(edges)]
            best = min(best, cost_of(lengths, widths, 4, measure))
    assert abs(cost_of(found, widths, 4, measure) - best) < 1e-9


@settings(derandomize=True, deadline=None, max_examples=150)
@given(st.lists(st.tuples(st.integers(5, 60), st.booleans()), min_size=1, max_size=9), st.integers(60, 140))
def test_no_other_breaks_are_better_where_words_can_be_parted(pieces: list[tuple[float, bool]], measure: float) -> None:
    widths, joined = [width for width, _ in pieces], [False, *(follows for _, follows in pieces[1:])]
    found = line_lengths(widths, 4, measure, joined, 3)
    best = (float("inf"), float("inf"))
    for cuts in range(len(widths)):
        for places in combinations(range(1, len(widths)), cuts):
            lengths = [b - a for a, b in pairwise((0, *places, len(widths)))]
            if (cost := cost_of(lengths, widths, 4, measure, joined, 3)) < float("inf"):
                best = min(best, (ladders(lengths, joined), cost))
    assert ladders(found, joined) == best[0]
    assert abs(cost_of(found, widths, 4, measure, joined, 3) - best[1]) < 1e-9


def ladders(lengths: Sequence[int], joined: Sequence[bool]) -> int:
    """How many lines end in a hyphen under two that do."""
    ends = [joined[at] if at < len(joined) else False for at in accumulate(lengths)]
    return sum(all(ends[at : at + 3]) for at in range(len(ends) - 2))


def three_in_a_row_can_be_helped(
    widths: Sequence[float], space: float, measure: float, joined: Sequence[bool], hyphen: float
) -> bool:
    """Are there breaks without a ladder at all? Reachable places alone are followed, without any cost."""
    reached = {(0, 0)}
    for start in range(len(widths)):
        for hyphens in [count for at, count in reached if at == start]:
            length = 0.0
            for end in range(start + 1, len(widths) + 1):
                length += widths[end - 1] + (space if end - 1 > start and not joined[end - 1] else 0.0)
                parted = end < len(widths) and joined[end]
                if length > measure and end > start + 1:
                    break
                fits = length + (hyphen if parted else 0.0) <= measure or end == start + 1
                if fits and not (parted and hyphens == 2):
                    reached.add((end, hyphens + 1 if parted else 0))
    return any(at == len(widths) for at, _ in reached)


ENGLISH = ["a", "of", "and", "tide", "every", "puzzle", "thermometer", "consecutive", "neighbouring", "hospitality"]
GERMAN = ["und", "der", "Haus", "Nebel", "Donaudampfschifffahrt", "Wahrscheinlichkeitsrechnung", "Leuchtturmwärter"]
SIZE = 10.0
SPACE, DASH = FONTS.width(" ", "serif", SIZE), FONTS.width("-", "serif", SIZE)


def broken_up(words: Sequence[str], language: str, measure: float) -> tuple[list[float], list[bool], list[int]]:
    """The pieces of some words with whether they go on, their widths, and the lines they are set in."""
    parts = [(part, at > 0) for word in words for at, part in enumerate(pieces(word, language))]
    widths, joined = [FONTS.width(part, "serif", SIZE) for part, _ in parts], [follows for _, follows in parts]
    return widths, joined, line_lengths(widths, SPACE, measure, joined, DASH)


@settings(derandomize=True, deadline=None, max_examples=400)
@given(
    st.sampled_from([("en", ENGLISH), ("de", GERMAN)]).flatmap(
        lambda of: st.tuples(st.just(of[0]), st.lists(st.sampled_from(of[1]), min_size=1, max_size=50))
    ),
    st.integers(50, 400),
)
def test_three_lines_in_a_row_end_in_a_hyphen_only_where_nothing_else_fits(
    text: tuple[str, list[str]], measure: float
) -> None:
    language, words = text
    widths, joined, lengths = broken_up(words, language, measure)
    if ladders(lengths, joined):
        assert not three_in_a_row_can_be_helped(widths, SPACE, measure, joined, DASH)


def test_a_ladder_is_not_set_though_its_lines_are_fuller() -> None:
    # two words of three pieces each; the fuller lines would part a word three times in a row
    widths, joined = [75, 70, 50, 40, 20, 25], [False, True, True, False, True, True]
    assert line_lengths(widths, 4, 100, joined, 3) == [1, 1, 1, 3]
    assert ladders([1, 1, 2, 2], joined) == 1
    assert cost_of([1, 1, 2, 2], widths, 4, 100, joined, 3) < cost_of([1, 1, 1, 3], widths, 4, 100, joined, 3)


def test_a_ladder_stays_where_the_column_leaves_no_choice() -> None:
    assert line_lengths([90, 90, 90, 90, 90], 4, 100, [False, True, True, True, True], 3) == [1, 1, 1, 1, 1]


@pytest.mark.parametrize(("ems", "emptiest"), [(14, 0.5), (22, 0.42), (36, 0.38)])
def test_lines_are_filled_and_spaces_are_never_stretched(ems: int, emptiest: float) -> None:
    """Set flush left, a text has no rivers: spaces keep the font's width. What can go wrong is a short line: of 600
    paragraphs none is emptier than this, but for those where the next piece would not have fitted."""
    chance = Random(ems)
    measure = ems * SIZE
    for _ in range(600):
        language, pool = chance.choice([("en", ENGLISH), ("de", GERMAN)])
        words = chance.choices(pool, k=chance.randint(3, 60))
        widths, joined, lengths = broken_up(words, language, measure)
        for start, end in pairwise((0, *accumulate(lengths))):
            if end == len(widths):
                continue
            length = sum(widths[start:end]) + SPACE * sum(not follows for follows in joined[start + 1 : end])
            more = length + widths[end] + (0.0 if joined[end] else SPACE)
            if more + DASH <= measure:
                assert 1 - length / measure <= emptiest, words
    type = Type("serif", SIZE, 14, "de")
    rows = paragraph(" ".join(GERMAN * 5), type, measure, 14)
    assert {item.word_space for row in rows for item in row.items} == {0.0}


def test_words_are_parted_only_where_a_language_is_named() -> None:
    text = "Nevertheless thermometers, consecutive neighbours and non-consecutive digits; the QUADRUPLE’s r3c12 is"
    for measure in range(90, 200, 5):
        lines = broken(text, "serif", 10, measure, "en")
        assert all(FONTS.width(line, "serif", 10) <= measure for line in lines)
        whole = " ".join(lines).replace("-", "").replace(" ", "")
        assert whole == text.replace("-", "").replace(" ", "")
        assert " ".join(broken(text, "serif", 10, measure)) == text
    assert any(line.endswith("-") for line in broken(text, "serif", 10, 110, "en"))


@pytest.mark.parametrize(
    ("word", "language", "parts"),
    [
        ("“hyphenation,”", "en", ("“hy", "phen", "a", "tion,”")),
        ("Schifffahrt", "de", ("Schiff", "fahrt")),
        ("digits", "en", ("digits",)),
        ("cells", "en", ("cells",)),
        ("UNESCO", "en", ("UNESCO",)),
        ("non-consecutive", "en", ("non-consecutive",)),
    ],
)
def test_pieces_of_words(word: str, language: str, parts: str) -> None:
    """English: “hy-phen-ation” as in the patterns of F. M. Liang (1983); German: between the parts of a compound."""
    assert pieces(word, language) == parts


def test_a_line_is_left_shorter_where_that_saves_the_next() -> None:
    # taken word by word, the first line would hold three words and the second a single short one before a long one
    assert line_lengths([30, 30, 30, 10, 95], 5, 100) == [2, 2, 1]


def test_no_leftover_in_the_last_line() -> None:
    # the third word would fit on the first line and leave a fourth of 8 alone
    assert line_lengths([40, 25, 25, 8], 5, 100) == [2, 2]


def test_nothing_and_a_word_too_wide() -> None:
    assert line_lengths([], 4, 100) == []
    assert line_lengths([20, 150, 20], 4, 100) == [1, 1, 1]
