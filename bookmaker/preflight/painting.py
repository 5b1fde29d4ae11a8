"""Following a page of a finished PDF as a viewer does.

In: a page as pikepdf reads it. Out: what is painted, in order, with the names of the groups it stands in.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import hypot
from typing import Any

import pikepdf

from bookmaker.preflight.painted import (
    IDENTITY,
    Colour,
    Fill,
    Matrix,
    Painted,
    Picture,
    Run,
    Setting,
    Stroke,
    set_out,
    within,
)
from bookmaker.preflight.pdffont import PdfFont, read_font
from bookmaker.preflight.tokens import LINES, MOST, PATH, Line, content, operations, shown

GROUP = "/Bookmaker"
"""The tag of marked content that holds one of our named groups."""

_KEPT = 1000
"""Strings in one font and size whose setting is kept: digits and labels, among many that come once."""

_DEEPEST = 30
"""Forms within forms."""

_STROKE = {"S": b"", "s": b"h\n", "B": b"", "B*": b"", "b": b"h\n", "b*": b"h\n"}
"""What strokes a path, and the segment it adds."""

_FILL = {"f", "F", "f*"}
_BOTH = {"B", "B*", "b", "b*"}
_NOTED = {
    *("q", "Q", "cm", "w", "g", "G", "BMC", "BDC", "EMC"),
    *("BT", "Tf", "Td", "TD", "T*", "Tm", "Tc", "Tw", "Tz", "Ts", "TL"),
}
_COLOURS = {"rg", "RG", "k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", "sh"}


@dataclass(slots=True)
class Memory:
    """What the pages of one file share: its fonts, and how strings that come again are set."""

    fonts: dict[Any, PdfFont] = field(default_factory=dict)
    settings: dict[tuple[Any, ...], dict[bytes, Setting]] = field(default_factory=dict)


def painted(page: pikepdf.Page, memory: Memory | None = None) -> Iterator[Painted]:
    """Everything painted on a page. Raises one of `DAMAGED` where it cannot be read or is too much."""
    return _Painter(memory or Memory()).run(page, page.resources)


class _State:
    """What `q` saves and `Q` brings back."""

    def __init__(self) -> None:
        self.matrix: Matrix = IDENTITY
        self.width = 1.0
        self.fill = self.pen = 0.0
        self.font: PdfFont | None = None
        self.size = 0.0
        self.letter_space = 0.0
        self.word_space = 0.0
        self.stretch = 1.0
        self.rise = 0.0
        self.leading = 0.0

    def copy(self) -> _State:
        twin = _State.__new__(_State)
        twin.__dict__.update(self.__dict__)
        return twin


class _Painter:
    def __init__(self, memory: Memory) -> None:
        self.memory = memory
        self.state = _State()
        self.saved: list[_State] = []
        self.group: tuple[str, ...] = ()
        self.marks: list[bool] = []
        self.path = b""
        self.named: dict[str, PdfFont | None] = {}
        self.chosen: dict[
            tuple[bytes, bytes, tuple[float, ...]], tuple[PdfFont | None, float, dict[bytes, Setting]]
        ] = {}
        self.left = MOST
        self.depth = 0
        self.line: Matrix = IDENTITY
        self.place: Matrix = IDENTITY

    def run(self, holder: Any, resources: Any) -> Iterator[Painted]:
        """Follow the content of a page or a form. An operator with operands it cannot have is passed over, as viewers
        do."""
        before, self.named, self.chosen = self.named, {}, {}
        stream = content(holder)
        self.left -= stream.length
        self.depth += 1
        if self.left < 0 or self.depth > _DEEPEST:
            raise ValueError("too much is drawn on a page")
        for operator, operands in operations(stream):
            if operator == PATH:
                self.path += operands[0]
            elif operator == LINES:
                yield from self._lines(operands[0], resources)
            elif operator in _NOTED:
                self._note(operator, operands, resources)
            elif operator in _STROKE:
                a, b, c, d, _, _ = self.state.matrix
                width = self.state.width * abs(a * d - b * c) ** 0.5
                fill = self.state.fill if operator in _BOTH else None
                path = self.path + _STROKE[operator]
                yield Stroke(width, self.group, path, self.state.matrix, self.state.pen, fill)
                self.path = b""
            elif operator in _FILL:
                yield Fill(self.state.fill, self.group, self.path, self.state.matrix)
                self.path = b""
            elif operator == "n":
                self.path = b""
            elif operator in ("Tj", "TJ", "'", '"'):
                if run := self._show(operator, operands):
                    yield run
            elif operator in _COLOURS:
                self._colour(operator, operands)
                yield Colour(operator, tuple(operands))
            elif operator == "Do":
                yield from self._object(operands, resources)
            elif operator == "BI":
                yield self._inline(*operands)
        self.named, self.chosen = before, {}
        self.depth -= 1

    def _note(self, operator: str, operands: Sequence[Any], resources: Any) -> None:
        """Operators that paint nothing but change what follows."""
        state = self.state
        match operator, operands:  # the most frequent first
            case "EMC", _:
                if self.marks and self.marks.pop():
                    self.group = self.group[:-1]
            case "BDC", [tag, properties]:
                named = tag == GROUP and isinstance(properties, dict) and "/Name" in properties
                if named:
                    self.group = (*self.group, _text_string(properties["/Name"]))
                self.marks.append(named)
            case "q", _:
                self.saved.append(state.copy())
            case "Q", _ if self.saved:
                self.state = self.saved.pop()
            case "cm", [a, b, c, d, e, f]:
                state.matrix = within(state.matrix, (a, b, c, d, e, f))
            case "w", [width]:
                state.width = width
            case "g", [grey]:
                state.fill = grey
            case "G", [grey]:
                state.pen = grey
            case "BT", _:
                self.line = self.place = IDENTITY
            case "Tf", [name, size]:
                state.font, state.size = self._font(name, resources), size
            case "Td", [x, y]:
                self._next_line(x, y)
            case "TD", [x, y]:
                state.leading = -y
                self._next_line(x, y)
            case "T*", _:
                self._next_line(0, -state.leading)
            case "Tm", [a, b, c, d, e, f]:
                self.line = self.place = (a, b, c, d, e, f)
            case "Tc", [value]:
                state.letter_space = value
            case "Tw", [value]:
                state.word_space = value
            case "Tz", [value]:
                state.stretch = value / 100
            case "Ts", [value]:
                state.rise = value
            case "TL", [value]:
                state.leading = value
            case "BMC", _:
                self.marks.append(False)

    def _lines(self, stretch: list[Line], resources: Any) -> list[Run]:
        state, group, settings = self.state, self.group, self._settings()
        face, em, rise, grey = state.font, state.size, state.rise, state.fill
        spacing = state.letter_space, state.word_space, state.stretch
        a, b, c, d, e, f = state.matrix
        runs = []
        x = y = length = 0.0
        for across, up, font, size, written in stretch:
            x, y = float(across), float(up)
            if font:
                key = font, size, spacing
                if key not in self.chosen:
                    state.font, state.size = self._font(f"/{font.decode('ascii')}", resources), float(size)
                    self.chosen[key] = state.font, state.size, self._settings()
                state.font, state.size, settings = face, em, settings = self.chosen[key]
            if face is not None:
                setting = settings.get(written) or self._keep(settings, written, shown(written))
                placed = (a, b, c, d, a * x + c * y + e, b * x + d * y + f)
                runs.append(Run(face, em, setting, placed, rise, group, grey))
                length = setting.length
        if stretch:
            self.line, self.place = (1.0, 0.0, 0.0, 1.0, x, y), (1.0, 0.0, 0.0, 1.0, x + length, y)
        return runs

    def _colour(self, operator: str, operands: Sequence[Any]) -> None:
        """A colour, as the grey that it is about as dark as."""
        match operands:
            case [float(grey)]:
                pass
            case [float(red), float(green), float(blue)]:
                grey = 0.3 * red + 0.59 * green + 0.11 * blue
            case [float(cyan), float(magenta), float(yellow), float(black)]:
                grey = max(0.0, 1 - black - 0.3 * cyan - 0.59 * magenta - 0.11 * yellow)
            case _:
                grey = 0.0
        if operator.islower():
            self.state.fill = grey
        else:
            self.state.pen = grey

    def _next_line(self, x: float, y: float) -> None:
        self.line = self.place = within(self.line, (1, 0, 0, 1, x, y))

    def _show(self, operator: str, operands: Sequence[Any]) -> Run | None:
        state = self.state
        match operator, operands:
            case "'", [text]:
                self._next_line(0, -state.leading)
                parts = [text]
            case '"', [word_space, letter_space, text]:
                state.word_space, state.letter_space = word_space, letter_space
                self._next_line(0, -state.leading)
                parts = [text]
            case "TJ", [[*several]]:
                parts = several
            case "Tj", [text]:
                parts = [text]
            case _:
                return None
        return self._text(parts)

    def _text(self, parts: list[Any]) -> Run | None:
        """Strings and gaps shown from here on; None without a font."""
        state = self.state
        if state.font is None:
            return None
        setting = self._setting(tuple(parts))
        placed = within(state.matrix, self.place)
        run = Run(state.font, state.size, setting, placed, state.rise, self.group, state.fill)
        self.place = within(self.place, (1, 0, 0, 1, setting.length, 0))
        return run

    def _settings(self) -> dict[bytes, Setting]:
        """How strings are set as things stand, by how they are written: digits and rules come again and again."""
        state = self.state
        key = (id(state.font), state.size, state.letter_space, state.word_space, state.stretch)
        return self.memory.settings.setdefault(key, {})

    def _keep(self, settings: dict[bytes, Setting], written: bytes, parts: tuple[bytes | float, ...]) -> Setting:
        if len(settings) > _KEPT:
            settings.clear()
        made = settings[written] = self._setting(parts)
        return made

    def _setting(self, parts: tuple[Any, ...]) -> Setting:
        state = self.state
        font, size = state.font, state.size
        assert font is not None
        along = 0.0
        letters = []
        for part in parts:
            if isinstance(part, float):
                along -= part / 1000 * size * state.stretch
                continue
            for code, character, width in font.shown(part):
                wide = width * size * state.stretch
                letters.append((character, along, wide))
                space = state.letter_space + (state.word_space if code == 32 and not font.wide else 0.0)
                along += wide + space * state.stretch
        return set_out(letters, along)

    def _font(self, name: str, resources: Any) -> PdfFont | None:
        """The font that a name stands for in the stream that is followed."""
        if name not in self.named:
            listed: Any = resources.get("/Font", {})
            self.named[name] = self._known(listed[name]) if name in listed else None
        return self.named[name]

    def _known(self, font: Any) -> PdfFont:
        if not font.is_indirect:
            return read_font(font)
        if font.objgen not in self.memory.fonts:
            self.memory.fonts[font.objgen] = read_font(font)
        return self.memory.fonts[font.objgen]

    def _object(self, operands: Sequence[Any], resources: Any) -> Iterator[Painted]:
        listed = resources.get("/XObject", {})
        if not operands or operands[0] not in listed:
            return
        thing = listed[operands[0]]
        if thing.get("/Subtype") == "/Image":
            yield self._picture(thing["/Width"], thing["/Height"], thing.get("/ColorSpace", "/DeviceGray"))
        elif thing.get("/Subtype") == "/Form":
            before, saved, self.saved = self.state.copy(), self.saved, []
            if "/Matrix" in thing:
                a, b, c, d, e, f = map(float, thing["/Matrix"])
                self.state.matrix = within(self.state.matrix, (a, b, c, d, e, f))
            yield from self.run(thing, thing.get("/Resources", resources))
            self.state, self.saved = before, saved

    def _inline(self, said: dict[str, Any]) -> Picture:
        return self._picture(said.get("/Width", 1), said.get("/Height", 1), said.get("/ColorSpace", "/DeviceGray"))

    def _picture(self, width: Any, height: Any, space: Any) -> Picture:
        a, b, c, d, _, _ = self.state.matrix
        named = space[0] if isinstance(space, list | pikepdf.Array) else space
        return Picture((int(width), int(height)), (hypot(a, b), hypot(c, d)), str(named), self.state.matrix)


def _text_string(value: Any) -> str:
    """A text string as PDF keeps it outside pages."""
    raw = value if isinstance(value, bytes) else str(value).encode("latin-1", "replace")
    return raw[2:].decode("utf-16-be", "replace") if raw.startswith(b"\xfe\xff") else raw.decode("latin-1")
