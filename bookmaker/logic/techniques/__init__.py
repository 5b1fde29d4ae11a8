"""Solving techniques above the singles, one file each; `logic/technique.py` finds them."""
