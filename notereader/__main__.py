"""Lets `python -m notereader` do the same as the command."""

from notereader.cli import main

if __name__ == "__main__":
    raise SystemExit(main())
