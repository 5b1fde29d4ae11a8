"""A book → an e-book (EPUB 3.3), and what catalogues want to know of a book.

In: a `Book`, the layout and the pages of its printed edition. Out: the bytes of an .epub file, the same every time;
JSON-LD and Dublin Core. The words are those of every edition without pages (`book/reading.py`), the pictures those of
the printed one.
"""

from bookmaker.ebook.catalogue import CATALOGUES, catalogue_bytes
from bookmaker.ebook.checked import check_ebook
from bookmaker.ebook.publication import ebook_bytes
from bookmaker.ebook.record import record_of

__all__ = ["CATALOGUES", "catalogue_bytes", "check_ebook", "ebook_bytes", "record_of"]
