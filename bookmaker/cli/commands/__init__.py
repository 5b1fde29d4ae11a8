"""The commands, one in each file and called like it; `group.py` finds them by looking into this folder."""
