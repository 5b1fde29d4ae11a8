"""Page labels: how stretches spell the labels, and pypdf reading them back from a file."""

from __future__ import annotations

from io import BytesIO

from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from bookmaker.display.items import Document, Page
from bookmaker.ink.labels import Stretch, stretches
from bookmaker.ink.pdf import pdf_bytes

BOOK = ("", "i", "ii", "iii", "iv", "1", "2", "3", "A-1", "A-2", "12", "Plate", "Plate", "X", "XI", "007", "c", "ci")


def test_a_run_is_one_stretch() -> None:
    assert stretches(("i", "ii", "1", "2", "3", "", "")) == [
        Stretch(0, "", "ROMAN_LOWER", 1),
        Stretch(2, "", "ARABIC", 1),
        Stretch(5, "", None, None),
    ]


def labels_read_back(labels: tuple[str, ...]) -> list[str]:
    pages = tuple(Page(10, 10, (), label) for label in labels)
    return PdfReader(BytesIO(pdf_bytes(Document("t", "", "", pages)))).page_labels


def test_labels_read_back() -> None:
    assert labels_read_back(BOOK) == list(BOOK)


@settings(derandomize=True, deadline=None, max_examples=30)
@given(st.lists(st.sampled_from(BOOK), min_size=1, max_size=12))
def test_any_order_of_labels_reads_back(labels: list[str]) -> None:
    assert labels_read_back(tuple(labels)) == labels
