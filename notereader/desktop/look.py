"""How the window looks now: theme and size of letters, following the system unless told otherwise."""

from typing import Literal

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QFont, QGuiApplication
from PySide6.QtWidgets import QApplication

from notereader.desktop.themes import DARK, LIGHT, Theme, system_theme, wear

Choice = Literal["system", "light", "dark"]
SMALLEST, LARGEST, STEP = 0.6, 3.0, 0.1


class Look(QObject):
    """Holds the theme and the size of letters, and tells every part when one changes."""

    changed = Signal()

    def __init__(self, app: QApplication, choice: Choice = "system", scale: float = 1.0):
        super().__init__(app)
        self._app = app
        self._font = QFont(app.font())
        self.choice: Choice = choice
        self.scale = scale
        self.theme: Theme = LIGHT
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._system_changed)
        # Drawn alike on every platform, so that the measured contrast holds on every platform.
        app.setStyle("Fusion")
        self._wear()
        self._size()

    def choose(self, choice: Choice) -> None:
        """Follow the system, or stay light or dark."""
        self.choice = choice
        self._wear()
        self.changed.emit()

    def zoom(self, steps: int) -> None:
        """Make all letters larger or smaller; 0 brings the usual size back."""
        scale = 1.0 if steps == 0 else self.scale + steps * STEP
        scale = min(LARGEST, max(SMALLEST, round(scale, 2)))
        if scale == self.scale:
            return
        self.scale = scale
        self._size()
        # Under a style sheet Qt hands a new font on to new widgets only; worn afresh it reaches those that stand.
        self._app.setStyleSheet(self._app.styleSheet())
        self.changed.emit()

    def _system_changed(self) -> None:
        if self.choice == "system":
            self._wear()
            self.changed.emit()

    def _wear(self) -> None:
        self.theme = system_theme() if self.choice == "system" else {"light": LIGHT, "dark": DARK}[self.choice]
        wear(self._app, self.theme)

    def _size(self) -> None:
        font = QFont(self._font)
        font.setPointSizeF(self._font.pointSizeF() * self.scale)
        self._app.setFont(font)
        # Menus keep the letters of the platform unless they are told by name.
        for part in ("QMenuBar", "QMenu"):
            self._app.setFont(font, part)  # type: ignore[arg-type]  # PySide6 asks for bytes and refuses them.
