"""The fonts of `fonts/`: how wide their letters are, how they stand beside each other, and their outlines.

In: a name from `fonts/fonts.yaml`. Out: measures per em (1.0 is the type size), y up from the baseline. Layout
measures with it and ink draws with it, so that a line is exactly as long on paper as it was when it was broken.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from errno import EBADMSG, ENOENT
from functools import cache, cached_property, lru_cache
from pathlib import Path
from struct import unpack
from typing import Any, TypeVar

import yaml
from fontTools.pens.basePen import BasePen
from fontTools.pens.boundsPen import BoundsPen
from fontTools.ttLib import TTFont

from bookmaker.display.items import Close, Curve, Move, Point, Segment, Straight
from bookmaker.resources import shipped

SPACES = " \u00a0"
"""The characters that count as a space between words: they take `word_space` and are never kerned."""

_FIGURES = "0123456789"


Key = TypeVar("Key")


class _Made(dict[Key, float]):
    """Numbers that are made where they are asked for, and kept."""

    def __init__(self, make: Callable[[Key], float]) -> None:
        super().__init__()
        self._make = make

    def __missing__(self, key: Key) -> float:
        self[key] = made = self._make(key)
        return made


class Typeface:
    """A TrueType font. Raises OSError, with the file's name, where it is not there or damaged."""

    def __init__(self, name: str, file: Path) -> None:
        damaged = OSError(EBADMSG, "this font is damaged: install bookmaker again", str(file))
        try:
            whole = _is_whole(file.read_bytes())
        except FileNotFoundError:
            raise OSError(ENOENT, "this font is missing: install bookmaker again", str(file)) from None
        if not whole:
            raise damaged
        self.name = name
        self.file = file
        try:
            self._font = TTFont(file, lazy=True, checkChecksums=2)
            self._em: int = self._font["head"].unitsPerEm
            self._glyphs: Any = self._font.getGlyphSet()
            self._names: dict[int, str] = self._font.getBestCmap()
        except Exception:  # words that changed places leave the sum as it was; what fontTools says then is manifold
            raise damaged from None
        self._printable = frozenset(map(chr, self._names))
        self._advances = _Made(self._advance)
        self.kerns: Mapping[tuple[str, str], float] = _Made(self._kern)
        """What `kern` says of two neighbours."""
        self._outlines: dict[str, tuple[Segment, ...]] = {}

    def missing(self, text: str) -> str:
        """The characters of a text that the font cannot print, each once, in order of appearance."""
        if self._printable.issuperset(text):
            return ""
        return "".join(dict.fromkeys(character for character in text if character not in self._printable))

    @lru_cache(maxsize=1000)  # noqa: B019 -- a face lives as long as the program
    def run(self, text: str) -> tuple[float, ...]:
        """Where each letter of a text begins, and last where the text ends."""
        advances, kerns = self._advances, self.kerns
        x = 0.0
        stops = []
        left = ""
        for character in text:
            if left:
                x += kerns[left, character]
            stops.append(x)
            x += advances[character]
            left = character
        return (*stops, x)

    def length(self, text: str, size: float, letter_space: float = 0.0, word_space: float = 0.0) -> float:
        """Length of a run of text, all in points: `letter_space` stands between any two characters (not after the
        last), `word_space` is added to each space."""
        length = self._end(text) * size
        if letter_space and len(text) > 1:
            length += letter_space * (len(text) - 1)
        if word_space:
            length += word_space * sum(text.count(space) for space in SPACES)
        return length

    @lru_cache(maxsize=20_000)  # noqa: B019
    def _end(self, text: str) -> float:
        """Where a text ends."""
        return self.run(text)[-1]

    def advance(self, character: str) -> float:
        """Width of a character."""
        return self._advances[character]

    def _advance(self, character: str) -> float:
        return float(self._glyphs[self._glyph(character)].width) / self._em

    def kern(self, left: str, right: str) -> float:
        """How much the gap between two neighbours changes (mostly negative).

        Nothing is kerned against a space: a line is then as long as its words and its spaces together. Figures are
        not kerned against each other: they stand in columns.
        """
        return self.kerns[left, right]

    def _kern(self, pair: tuple[str, str]) -> float:
        left, right = pair
        apart = left in SPACES or right in SPACES or (left in _FIGURES and right in _FIGURES)
        units = 0 if apart else _pair_adjustment(self._kerning, self._glyph(left), self._glyph(right))
        return units / self._em

    def outline(self, character: str) -> tuple[Segment, ...]:
        """A character's closed outlines, from its origin, y up. Filled by the non-zero winding rule."""
        if character not in self._outlines:
            pen = _OutlinePen(self._glyphs, self._em)
            self._glyphs[self._glyph(character)].draw(pen)
            self._outlines[character] = tuple(pen.segments)
        return self._outlines[character]

    @cached_property
    def postscript(self) -> str:
        """The name by which a PDF calls the font."""
        return _postscript(self._font)

    @cached_property
    def figure_height(self) -> float:
        """Height of a figure without overshoot: the zero reaches as far over its line as under the baseline."""
        low, high = self._reach("0")
        return low + high

    @cached_property
    def cap_height(self) -> float:
        """Height of a flat capital letter."""
        return self._reach("H")[1]

    @cached_property
    def x_height(self) -> float:
        """Height of a flat small letter."""
        return self._reach("z")[1]

    @cached_property
    def ascent(self) -> float:
        """Height of the tall small letters."""
        return self._reach("d")[1]

    @cached_property
    def descent(self) -> float:
        """Depth of letters under the baseline, as a positive number."""
        return -self._reach("p")[0]

    def _glyph(self, character: str) -> str:
        return self._names.get(ord(character), ".notdef")

    def _reach(self, character: str) -> tuple[float, float]:
        pen = BoundsPen(self._glyphs)
        self._glyphs[self._glyph(character)].draw(pen)
        _, low, _, high = pen.bounds
        return low / self._em, high / self._em

    @cached_property
    def _kerning(self) -> tuple[Sequence[Any], ...]:
        """Pair adjustment lookups of the feature “kern”, each as its subtables."""
        if "GPOS" not in self._font:
            return ()
        table = self._font["GPOS"].table
        features = [record.Feature for record in table.FeatureList.FeatureRecord if record.FeatureTag == "kern"]
        lookups = sorted({index for feature in features for index in feature.LookupListIndex})
        return tuple(table.LookupList.Lookup[index].SubTable for index in lookups)


class _OutlinePen(BasePen):  # type: ignore[misc] # fontTools is untyped
    """Records a glyph as segments per em. The base class resolves composites and raises quadratic curves to cubic."""

    def __init__(self, glyphs: Any, em: int) -> None:
        super().__init__(glyphs)
        self.em = em
        self.segments: list[Segment] = []

    def _scaled(self, point: Point) -> Point:
        return point[0] / self.em, point[1] / self.em

    def _moveTo(self, to: Point) -> None:  # noqa: N802 -- fontTools' name
        self.segments.append(Move(self._scaled(to)))

    def _lineTo(self, to: Point) -> None:  # noqa: N802
        self.segments.append(Straight(self._scaled(to)))

    def _curveToOne(self, first: Point, second: Point, to: Point) -> None:  # noqa: N802
        self.segments.append(Curve(self._scaled(first), self._scaled(second), self._scaled(to)))

    def _closePath(self) -> None:  # noqa: N802
        self.segments.append(Close())


def _is_whole(font: bytes) -> bool:
    """Do all words of a font file add up as they must? (OpenType specification, `head`: checkSumAdjustment.)"""
    padded = font + bytes(-len(font) % 4)
    return len(font) > 12 and sum(unpack(f">{len(padded) // 4}L", padded)) & 0xFFFFFFFF == 0xB1B0AFBA


def _pair_adjustment(lookups: tuple[Sequence[Any], ...], left: str, right: str) -> int:
    """Horizontal adjustment of a glyph pair in font units (OpenType specification, GPOS lookup type 2).

    In each lookup the first subtable that covers the left glyph and knows the pair decides; a subtable of glyph
    classes knows every pair.
    """
    total = 0
    for subtables in lookups:
        for subtable in subtables:
            covered = subtable.Coverage.glyphs
            if left not in covered:
                continue
            if subtable.Format == 1:
                pairs = subtable.PairSet[covered.index(left)].PairValueRecord
                known = [record.Value1 for record in pairs if record.SecondGlyph == right]
                if not known:
                    continue
                value = known[0]
            else:
                row = subtable.Class1Record[subtable.ClassDef1.classDefs.get(left, 0)]
                value = row.Class2Record[subtable.ClassDef2.classDefs.get(right, 0)].Value1
            total += getattr(value, "XAdvance", 0)
            break
    return total


@cache
def font_files() -> dict[str, Path]:
    """The fonts that come with bookmaker: name → TrueType file, in the order of `fonts/fonts.yaml`."""
    folder = shipped("fonts")
    listed = folder / "fonts.yaml"
    try:
        names: dict[str, str] = yaml.safe_load(listed.read_text(encoding="utf-8"))
        return {name: folder / file for name, file in names.items()}
    except (OSError, ValueError, TypeError, AttributeError, yaml.YAMLError):
        said = "the list of fonts is missing or damaged: install bookmaker again"
        raise OSError(EBADMSG, said, str(listed)) from None


@cache
def typeface(name: str) -> Typeface:
    """The font of that name. Raises KeyError if there is none."""
    return Typeface(name, font_files()[name])


@cache
def by_postscript() -> dict[str, str]:
    """The names of the fonts by what a PDF calls them, which is read from each file without the rest."""
    found = {}
    for name, file in font_files().items():
        try:
            with TTFont(file, lazy=True) as font:
                called = _postscript(font)
        except Exception:  # what fontTools says of a damaged file is manifold
            called = typeface(name).postscript  # says what is wrong with it
        found[called] = name
    return found


def _postscript(font: TTFont) -> str:
    return str(font["name"].getDebugName(6))
