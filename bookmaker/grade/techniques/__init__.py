"""Solving techniques above the singles, one file each; `grade/technique.py` finds them."""
