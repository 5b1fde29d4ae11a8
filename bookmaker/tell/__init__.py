"""Telling a solving path aloud. In: a proof. Out: a `Story` of passages, and its text in three formats."""

from bookmaker.tell.passages import Passage, Story
from bookmaker.tell.story import tell

__all__ = ["Passage", "Story", "tell"]
