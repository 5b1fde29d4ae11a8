"""The way in from a shell: `bookmaker`, and `python -m bookmaker`."""

import gc

from bookmaker import stopping

COLLECT_AFTER = 1_000_000
"""Objects made before Python looks for garbage that refers to itself. There is next to none: a book is values that live
to the end and refer to nothing above them. To look through them all after every 700 took a fifth of the time."""


def run() -> None:
    """Run the command that the shell's words name; ends with SystemExit. A signal ends it quietly at every moment."""
    stopping.at_once()
    gc.set_threshold(COLLECT_AFTER)
    from bookmaker.cli import main  # takes a while

    try:
        stopping.in_order()
        main(prog_name="bookmaker")
    finally:
        stopping.no_more()
        gc.freeze()  # Python ends by looking for garbage once more, for nothing: the process ends with all it has


if __name__ == "__main__":  # not in a worker, which imports this file under another name
    run()
