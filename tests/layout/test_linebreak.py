"""The breaks against all possible breaks, tried one by one."""

from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.hyphenation import pieces
from bookmaker.layout.setting import linebreak
from bookmaker.layout.setting.linebreak import line_lengths
from bookmaker.layout.setting.text import FONTS, broken

WORDS = st.lists(st.integers(5, 60), min_size=1, max_size=9)


def cost_of(lengths, widths, space, measure, joined=None, hyphen=0):
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
def test_no_other_breaks_are_better(widths, measure):
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
def test_no_other_breaks_are_better_where_words_can_be_parted(pieces, measure):
    widths, joined = [width for width, _ in pieces], [False, *(follows for _, follows in pieces[1:])]
    found = line_lengths(widths, 4, measure, joined, 3)
    best = float("inf")
    for cuts in range(len(widths)):
        for places in combinations(range(1, len(widths)), cuts):
            lengths = [b - a for a, b in pairwise((0, *places, len(widths)))]
            best = min(best, cost_of(lengths, widths, 4, measure, joined, 3))
    assert abs(cost_of(found, widths, 4, measure, joined, 3) - best) < 1e-9


def test_words_are_parted_only_where_a_language_is_named():
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
def test_pieces_of_words(word, language, parts):
    """English: “hy-phen-ation” as in the patterns of F. M. Liang (1983); German: between the parts of a compound."""
    assert pieces(word, language) == parts


def test_a_line_is_left_shorter_where_that_saves_the_next():
    # taken word by word, the first line would hold three words and the second a single short one before a long one
    assert line_lengths([30, 30, 30, 10, 95], 5, 100) == [2, 2, 1]


def test_no_leftover_in_the_last_line():
    # the third word would fit on the first line and leave a fourth of 8 alone
    assert line_lengths([40, 25, 25, 8], 5, 100) == [2, 2]


def test_nothing_and_a_word_too_wide():
    assert line_lengths([], 4, 100) == []
    assert line_lengths([20, 150, 20], 4, 100) == [1, 1, 1]
