"""The commands, one file each, which has the command's name; `group.py` finds them by looking into this folder."""
