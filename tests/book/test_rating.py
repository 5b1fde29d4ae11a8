import pytest

from bookmaker.book.rating import narrow_points


@pytest.mark.parametrize(
    ("efforts", "wanted"),
    [
        ((), ()),
        ((1.0, 2.0, 9.0, 2.0), (2,)),
        ((9.0, 1.0, 9.0), (0, 2)),  # a steep start and a steep end
        ((1.0, 5.0, 1.0, 9.0, 1.0), (3,)),  # 5 is less than three fifths of 9
        ((1.0, 9.0, 9.0, 9.0, 1.0), (1,)),  # a run of equal steps counts once
        ((2.0, 9.0, 9.0, 10.0, 1.0), (3,)),  # and not where it goes on rising
        ((3.0, 3.0), (0,)),
        ((9.0, 1.0, 8.0, 1.0, 7.0, 1.0, 6.0), (0, 2, 4)),  # three at most
    ],
)
def test_narrow_points_are_the_peaks_that_stand_out(efforts, wanted):
    assert narrow_points(efforts) == wanted


def test_of_two_peaks_side_by_side_the_harder_is_marked():
    efforts = [1.0] * 50
    efforts[10], efforts[12], efforts[40] = 8.0, 9.0, 7.0
    assert narrow_points(efforts) == (12, 40)
