"""`python -m bookmaker` is `bookmaker`."""

from bookmaker.cli import main

if __name__ == "__main__":  # not in a worker, which imports this file under another name
    main(prog_name="bookmaker")
