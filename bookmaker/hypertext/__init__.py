"""A book in words → HTML elements, for the web page and for the e-book.

In: the blocks of `book/reading.py`. Out: elements with headings, lists and tables, and links between a puzzle, its
hints and its key; a whole web page.
"""
