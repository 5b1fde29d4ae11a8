"""What can be done to a puzzle: its elements, how they are arranged, single changes to them, and those in its file.

The rooms `mend` and `draft` build on it.
"""
