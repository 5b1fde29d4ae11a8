"""Puzzles in a browser: a page to review them by, and a desk that shows a book while it is typed.

In: the same proofs, stories and display items as the print. Out: HTML that asks nothing of any other place. `facts`
alone knows how paths are told, `pictures` how grids are drawn; `static/` holds plain CSS and JavaScript modules, which
need no build.
"""
