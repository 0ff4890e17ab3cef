"""Lets `python -m notereader` do the same as the command."""

from notereader.cli import main

raise SystemExit(main())
