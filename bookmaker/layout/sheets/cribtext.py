"""The words of a crib: passages in rows, cut so that each sentence with a picture begins a line.

In: a story, its scenes by the step they show, a layout, the width of the text in points. Out: `Piece`s, in order.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from bookmaker.display.items import Item, Text
from bookmaker.display.tags import OURS
from bookmaker.layout.setting.text import DROP, Row, paragraph
from bookmaker.layout.spec import Layout
from bookmaker.tell.passages import Passage, Sentence, Story
from bookmaker.tell.scenes import Scene

MARGIN = 2.9
"""Width of the margin for letters and steps, in ems."""


@dataclass(frozen=True, slots=True)
class Piece:
    """Rows of text, and the picture that stands beside them, if any."""

    rows: tuple[Row, ...]
    scene: Scene | None = None


def pieces_of(
    story: Story, start: Scene, scenes: Mapping[int, Scene], layout: Layout, measure: float
) -> Iterator[Piece]:
    """The passages, cut so that a sentence with a picture begins a line, its letter in the margin. What leads up to the
    first picture of a passage stays with it."""
    for at, passage in enumerate(story.passages):
        rows: list[Row] = []
        scene = None if at else start
        for sentences, mine in _cut(passage, scenes):
            if mine and scene:
                yield Piece(tuple(rows), scene)
                rows = []
            scene = mine or scene
            rows += (*_paragraph(sentences, mine.label if mine else "", layout, measure), Row(layout.line / 2))
        yield Piece(tuple(rows), scene)


def _cut(passage: Passage, scenes: Mapping[int, Scene]) -> Iterator[tuple[list[Sentence], Scene | None]]:
    """The sentences of a passage, those with a picture each at the head of a list of its own."""
    gathered: list[Sentence] = []
    scene: Scene | None = None
    for sentence in passage.sentences:
        mine = scenes.get(sentence.told[0]) if sentence.told else None
        if mine and gathered:
            yield gathered, scene
            gathered = []
        scene = mine or (scene if gathered else None)
        gathered.append(sentence)
    yield gathered, scene


def _paragraph(sentences: Sequence[Sentence], letter: str, layout: Layout, measure: float) -> Iterator[Row]:
    """Sentences as a paragraph; in the margin the letter of their picture, and where steps begin the first of them."""
    text, line, label = layout.type.text, layout.line, layout.type.label
    indent = MARGIN * text.size
    words = " ".join(sentence.text for sentence in sentences)
    rows = paragraph(words, text, measure - indent, line, indent, tags=(OURS,))
    begun = _begun(sentences, [_said(row) for row in rows])
    for at, row in enumerate(rows):
        said, margin = [*row.items], list[Item]()
        if letter and at == 0:
            said.insert(0, Text(0.0, (1 - DROP) * line, letter, "sans-bold", label.size * 1.15))
        if at in begun:
            edge = indent - 0.6 * text.size
            margin.append(Text(edge, (1 - DROP) * line, str(begun[at]), label.font, label.size, 0.25, "end"))
        yield replace(row, items=(*margin, *replace(row, items=(*said,)).told), tags=())


def _said(row: Row) -> str:
    return "".join(item.text for item in row.items if isinstance(item, Text))


def _begun(sentences: Sequence[Sentence], lines: Sequence[str]) -> dict[int, int]:
    """By the line, the first step of the sentences that begin there; a line may end in a hyphen of its own."""
    begins: dict[int, int] = {}
    letters = ""
    for sentence in sentences:
        if sentence.told:
            begins[len(letters)] = sentence.told[0]
        letters += sentence.text.replace(" ", "")
    found: dict[int, int] = {}
    start = 0
    for at, line in enumerate(lines):
        said = line.replace(" ", "")
        end = start + len(said) - (letters[start : start + len(said)] != said)
        if steps := [step for place, step in begins.items() if start <= place < end]:
            found[at] = steps[0]
        start = end
    return found
