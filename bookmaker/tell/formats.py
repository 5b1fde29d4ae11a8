"""A story as plain text, Markdown or JSON."""

from __future__ import annotations

import json
import textwrap

from bookmaker.tell.model import Mood, Story

HEADINGS = {Mood.CRUX: "The hard moment", Mood.ENDING: "To the end"}
"""Passages that have a heading in Markdown."""

ONWARDS = "On from there"
"""The heading of what follows the hard moment, if not the end."""


def as_text(story: Story, width: int = 88) -> str:
    """Paragraphs wrapped to a width, under the title."""
    head = story.title + (f", set by {story.setter}" if story.setter else "")
    paragraphs = (textwrap.fill(passage.text, width, break_on_hyphens=False) for passage in story.passages)
    return "\n\n".join([head, *paragraphs]) + "\n"


def as_markdown(story: Story) -> str:
    """The same with the title, the hard moment, what follows it and the end as headings."""
    lines = [f"# {story.title}", *([f"*set by {story.setter}*"] if story.setter else [])]
    after_crux = False
    for passage in story.passages:
        heading = HEADINGS.get(passage.mood, ONWARDS if after_crux else "")
        if heading:
            lines.append(f"## {heading}")
        after_crux = passage.mood is Mood.CRUX
        lines.append(passage.text)
    return "\n\n".join(lines) + "\n"


def as_json(story: Story) -> str:
    """Title, setter and passages: each with its mood, its text, the steps of the path that it covers, from the first to
    the last, and those among them that it tells, all counted from 1."""
    passages = [
        {
            "mood": passage.mood.value,
            "text": passage.text,
            "steps": [passage.first + 1, passage.after] if passage.after > passage.first else None,
            "told": [index + 1 for index in passage.told],
        }
        for passage in story.passages
    ]
    whole = {"title": story.title, "setter": story.setter, "passages": passages}
    return json.dumps(whole, ensure_ascii=False, indent=1) + "\n"
