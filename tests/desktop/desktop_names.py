"""What every page and dialog owes to screen readers and hands: names, roles, targets (WCAG 2.2 by analogy)."""

from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QComboBox, QLineEdit, QListView, QTextEdit, QWidget

_CONTROLS = (QAbstractButton, QComboBox, QLineEdit, QTextEdit, QAbstractItemView)


def controls(part: QWidget):
    """Return every control a person can reach, also those Qt makes inside of others but hides from the keyboard."""
    for widget in part.findChildren(QWidget):
        inner = isinstance(widget.parentWidget(), QComboBox) or widget.objectName().startswith("qt_")
        if isinstance(widget, _CONTROLS) and not inner and not isinstance(widget.parentWidget(), QListView):
            popup = widget.window() is not part.window()
            if not popup:
                yield widget


def check_names(part: QWidget):
    nameless = []
    for widget in controls(part):
        interface = QAccessible.queryAccessibleInterface(widget)
        assert interface is not None, widget
        if not interface.text(QAccessible.Text.Name).strip():
            nameless.append(widget)
        assert interface.role() != QAccessible.Role.NoRole
    assert nameless == []


def check_targets(part: QWidget):
    """WCAG 2.2, 2.5.8: targets of at least 24 by 24."""
    small = [
        (widget, widget.size())
        for widget in controls(part)
        if isinstance(widget, QAbstractButton | QComboBox | QLineEdit)
        and widget.isVisible()
        and min(widget.width(), widget.height()) < 24
        and not widget.inherits("QToolButton")
    ]
    assert small == []
