"""Menus and keys of the window, made from the table in keys.py."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMainWindow, QMenu, QWidget

from notereader.desktop.keys import BREAKS, FACTS_MENU, HELP_MENU, KEYS, NOTE_MENU, PRACTICE_MENU, VIEW_MENU, Key, Where

_CHECKABLE = frozenset({"thought_first", "every_field", "theme_system", "theme_light", "theme_dark"})


class Menus:
    """The actions of the window by the names of the table."""

    def __init__(self, window: QMainWindow, run: Callable[[str], None]):
        self.actions: dict[str, QAction] = {}
        bar = window.menuBar()
        bar.setAccessibleName("Menus")
        names = (NOTE_MENU, FACTS_MENU, PRACTICE_MENU, VIEW_MENU, HELP_MENU)
        menus: dict[str, QMenu] = {name: bar.addMenu(name) for name in names}
        for key in KEYS:
            action = QAction(key.words, window)
            action.setShortcuts(key.sequences())
            if key.where is not Where.EVERYWHERE:
                # Acts only in the widget it is given to: `attach` does that for each page.
                action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
            action.setCheckable(key.name in _CHECKABLE)
            action.triggered.connect(lambda _=False, name=key.name: run(name))
            if key.name in BREAKS:
                menus[key.menu].addSeparator()
            menus[key.menu].addAction(action)
            self.actions[key.name] = action

    def name(self, name: str, words: str) -> None:
        """Give an action other words."""
        self.actions[name].setText(words.strip())

    def attach(self, widgets: dict[Where, QWidget]) -> None:
        """Let the keys of a part act in these widgets."""
        for key in KEYS:
            widget = widgets.get(key.where)
            if widget is not None:
                widget.addAction(self.actions[key.name])

    def enable(self, can: Callable[[Key], bool]) -> None:
        """Enable what can be done now."""
        for key in KEYS:
            self.actions[key.name].setEnabled(can(key))

    def check(self, **states: bool) -> None:
        """Show which of two states some actions are in."""
        for name, state in states.items():
            self.actions[name].setChecked(state)
