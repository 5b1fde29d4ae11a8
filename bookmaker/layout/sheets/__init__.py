"""What is printed besides the pages of a book: handouts, contest forms, covers, cribs, the chart, single pictures,
and finished pages on other sheets, for the press or for folding.
"""
