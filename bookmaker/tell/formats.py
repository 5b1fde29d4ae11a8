"""A story as plain text, Markdown or JSON."""

from __future__ import annotations

import json
import textwrap

from bookmaker.tell.model import Mood, Story

HEADINGS = {
    Mood.OPENING: "On the table",
    Mood.FLOW: "Singles",
    Mood.CARE: "A lone naked single",
    Mood.DEDUCTION: "A step above the singles",
    Mood.CRUX: "The hard moment",
    Mood.ENDING: "To the end",
}


def as_text(story: Story, width: int = 88) -> str:
    """Paragraphs wrapped to a width, under the title."""
    head = story.title + (f", set by {story.setter}" if story.setter else "")
    return "\n\n".join([head, *(textwrap.fill(passage.text, width) for passage in story.passages)]) + "\n"


def as_markdown(story: Story) -> str:
    """A heading for each change of mood."""
    lines = [f"# {story.title}", *([f"*set by {story.setter}*"] if story.setter else [])]
    mood: Mood | None = None
    for passage in story.passages:
        if passage.mood is not mood:
            lines.append(f"## {HEADINGS[passage.mood]}")
            mood = passage.mood
        lines.append(passage.text)
    return "\n\n".join(lines) + "\n"


def as_json(story: Story) -> str:
    """Title, setter and passages: each with its mood, its text and its first and last step, counted from 1."""
    passages = [
        {"mood": p.mood.value, "text": p.text, "steps": [p.first + 1, p.after] if p.after > p.first else None}
        for p in story.passages
    ]
    return (
        json.dumps({"title": story.title, "setter": story.setter, "passages": passages}, ensure_ascii=False, indent=1)
        + "\n"
    )
