"""A story as plain text, Markdown or JSON."""

from __future__ import annotations

import json
import textwrap
from typing import Any

from bookmaker.language import catalogue
from bookmaker.phrases import Phrasebook
from bookmaker.tell.passages import Mood, Passage, Sentence, Story

HEADINGS = {Mood.CRUX: "story-crux", Mood.ENDING: "story-ending"}
"""The messages of passages that have a heading in Markdown."""

ONWARDS = "story-onwards"
"""The heading of what follows the hard moment, if not the end."""

MARGIN = 9
"""Width of the column for step numbers in plain text."""


def as_text(story: Story, numbered: bool = False, width: int = 88) -> str:
    """Paragraphs wrapped to a width, under the title. `numbered` gives every sentence a line of its own, the numbers of
    its steps in the margin."""
    words = catalogue(story.language)
    head = words.say("story-set-by", title=story.title, setter=story.setter) if story.setter else story.title
    paragraph = _numbered if numbered else _wrapped
    return "\n\n".join([head, *(paragraph(passage, width) for passage in story.passages)]) + "\n"


def as_markdown(story: Story, numbered: bool = False) -> str:
    """The same with the title, the hard moment, what follows it and the end as headings."""
    words = catalogue(story.language)
    lines = [f"# {story.title}"]
    if story.setter:
        lines.append(f"*{words.say('story-setter', setter=story.setter)}*")
    after_crux = False
    for passage in story.passages:
        heading = HEADINGS.get(passage.mood, ONWARDS if after_crux else "")
        if heading:
            lines.append(f"## {words.say(heading)}")
        after_crux = passage.mood is Mood.CRUX
        lines.append(passage.text if not numbered else " ".join(_bracketed(said) for said in passage.sentences))
    return "\n\n".join(lines) + "\n"


def as_json(story: Story, numbered: bool = False) -> str:
    """Title, setter, steps and passages. A step has its number, which pictures and the crib share, and its number in
    the path, as the proof has it; a passage its mood, its text, and its sentences with the numbers of the steps they
    tell."""
    passages = [
        {
            "mood": passage.mood.value,
            "text": passage.text,
            "sentences": [{"text": said.text, "steps": list(said.told)} for said in passage.sentences],
        }
        for passage in story.passages
    ]
    whole = {"title": story.title, "setter": story.setter, "steps": _steps(story), "passages": passages}
    return json.dumps(whole, ensure_ascii=False, indent=1) + "\n"


def steps_said(told: tuple[int, ...]) -> str:
    """“12”, “12–15”: the numbers of the steps of a sentence, which follow each other."""
    if not told:
        return ""
    return str(told[0]) if len(told) == 1 else f"{told[0]}–{told[-1]}"


def _steps(story: Story) -> list[dict[str, Any]]:
    if not story.steps:
        return []
    words = Phrasebook(story.steps[0].before.grid, story.language)
    return [
        {
            "number": told.number,
            "in_path": told.index + 1,
            "technique": words.technique(told.reason),
            "placed": [[words.grid.name(cell), digit] for cell, digit in told.placed],
            "removed": [[words.grid.name(cell), digit] for cell, digit in told.removed],
        }
        for told in story.steps
    ]


def _wrapped(passage: Passage, width: int) -> str:
    return textwrap.fill(passage.text, width, break_on_hyphens=False)


def _numbered(passage: Passage, width: int) -> str:
    lines = (
        textwrap.fill(
            said.text,
            width,
            initial_indent=f"{steps_said(said.told):<{MARGIN}}",
            subsequent_indent=" " * MARGIN,
            break_on_hyphens=False,
        )
        for said in passage.sentences
    )
    return "\n".join(lines)


def _bracketed(said: Sentence) -> str:
    return f"[{steps_said(said.told)}] {said.text}" if said.told else said.text
