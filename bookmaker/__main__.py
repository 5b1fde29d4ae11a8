"""The way in from a shell: `bookmaker`, and `python -m bookmaker`."""

from bookmaker import stopping


def run() -> None:
    """Run the command that the shell's words name; ends with SystemExit. A signal ends it quietly at every moment."""
    stopping.at_once()
    from bookmaker.cli import main  # takes the better part of a second

    try:
        stopping.in_order()
        main(prog_name="bookmaker")
    finally:
        stopping.no_more()


if __name__ == "__main__":  # not in a worker, which imports this file under another name
    run()
