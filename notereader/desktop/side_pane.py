"""The pane beside the facts: one tab for each way of looking at the record as a whole."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

LEAST_WIDTH = 300


class SidePane(QWidget):
    """Holds panes that are fed by Session.record_changed and need nothing else of the window."""

    def __init__(self, parent: QWidget | None = None):
        super().__init__(parent)
        self._tabs = QTabWidget()
        self._tabs.setDocumentMode(True)
        self._tabs.tabBar().setDrawBase(False)
        self._tabs.setAccessibleName("Side pane")
        self._tabs.tabBar().setAccessibleName("Panes beside the facts")
        self._tabs.tabBar().setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._tabs)
        self.setMinimumWidth(LEAST_WIDTH)
        self.setFocusProxy(self._tabs.tabBar())

    def add_pane(self, title: str, pane: QWidget) -> None:
        """Add a pane as a further tab."""
        self._tabs.addTab(pane, title)
