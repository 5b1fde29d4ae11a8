"""Sight: is every mark of a puzzle seen, or does something painted later lie on it?

In: what is painted, in order, each shape with the mark that it belongs to. Out: the marks of which too little is left
in sight, and what hides them. The composer asks it of display items, preflight of a finished page.
"""

from __future__ import annotations

from bookmaker.sight.seen import Drawn, Hidden, hidden
from bookmaker.sight.shapes import Shape, shapes

__all__ = ["Drawn", "Hidden", "Shape", "hidden", "shapes"]
