"""Where the built program begins: the command line, or the window where it is started under the window's name."""

import sys
from pathlib import Path

from notereader.cli import main, window

if __name__ == "__main__":
    raise SystemExit(window() if Path(sys.executable).stem == "notereader-window" else main())
