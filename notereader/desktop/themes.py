"""Colours of the window, dark and light. Every pair that is read together meets WCAG 2.2 AA; a test computes it.

No meaning hangs on a colour alone: marks differ by underline, rows by sign and word, the picture by line and hatching.
"""

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette, QTextCharFormat
from PySide6.QtWidgets import QApplication

from notereader.desktop.rows import Standing

Underline = QTextCharFormat.UnderlineStyle


class MarkKind(Enum):
    """Why words of the note are marked."""

    PROPOSED = "proposed"
    LOOK_TWICE = "proposed, look twice"
    CONFIRMED = "confirmed"
    CORRECTED = "corrected"
    ADDED = "added"
    RIVAL = "the note also says"
    IN_HAND = "the fact in hand"


UNDERLINES = {
    MarkKind.PROPOSED: Underline.DashUnderline,
    MarkKind.LOOK_TWICE: Underline.WaveUnderline,
    MarkKind.CONFIRMED: Underline.SingleUnderline,
    MarkKind.CORRECTED: Underline.DashDotLine,
    MarkKind.ADDED: Underline.DashDotDotLine,
    MarkKind.RIVAL: Underline.DotLine,
    MarkKind.IN_HAND: Underline.SingleUnderline,
}


@dataclass(frozen=True)
class Mark:
    """How marked words look: letters on ground, with an underline."""

    ground: str
    letters: str
    line: str


@dataclass(frozen=True)
class Inks:
    """Colours of the picture."""

    paper: str
    skin: str
    outline: str
    words: str
    faint_words: str
    tendon: str
    tendon_edge: str
    suture: str
    pulley: str
    pulley_edge: str
    hatch: str


@dataclass(frozen=True)
class Theme:
    """One set of colours, each as #rrggbb."""

    name: str
    window: str
    base: str
    text: str
    muted: str
    edge: str
    accent: str
    on_accent: str
    row_in_hand: str
    band: str
    trouble: str
    # In the charts of an audit: stated, implied, contradictory, silent.
    states: tuple[str, str, str, str]
    marks: dict[MarkKind, Mark]
    inks: Inks

    def standing_ink(self, standing: Standing, *, doubt: bool) -> str:
        """Return the colour of a sign and its word: that of the marks of the same standing in the note."""
        if doubt:
            return self.marks[MarkKind.LOOK_TWICE].line
        kind = _MARK_OF.get(standing)
        return self.marks[kind].line if kind else self.muted


_MARK_OF = {
    Standing.PROPOSED: MarkKind.PROPOSED,
    Standing.CONFIRMED: MarkKind.CONFIRMED,
    Standing.CORRECTED: MarkKind.CORRECTED,
    Standing.ADDED: MarkKind.ADDED,
}


LIGHT = Theme(
    name="light",
    window="#ECEFEA",
    base="#FCFCF8",
    text="#18211D",
    muted="#4B5751",
    edge="#75827B",
    accent="#0B5566",
    on_accent="#FFFFFF",
    row_in_hand="#D6E8EA",
    band="#FFF1CF",
    trouble="#98200F",
    states=("#1F5F8B", "#5B93B8", "#C46A00", "#ECEFEA"),
    marks={
        MarkKind.PROPOSED: Mark("#E2EBF8", "#18211D", "#2A5AA3"),
        MarkKind.LOOK_TWICE: Mark("#FBE6C4", "#18211D", "#964600"),
        MarkKind.CONFIRMED: Mark("#E3F0E1", "#18211D", "#2A682D"),
        MarkKind.CORRECTED: Mark("#E3F0E1", "#18211D", "#2A682D"),
        MarkKind.ADDED: Mark("#E3F0E1", "#18211D", "#2A682D"),
        MarkKind.RIVAL: Mark("#F4E2F1", "#18211D", "#812D77"),
        MarkKind.IN_HAND: Mark("#0B5566", "#FFFFFF", "#FFFFFF"),
    },
    inks=Inks(
        paper="#FCFCF8",
        skin="#F6E9DD",
        outline="#6F5A49",
        words="#18211D",
        faint_words="#4B5751",
        tendon="#FFFFFF",
        tendon_edge="#3D5A66",
        suture="#0B3F8F",
        pulley="#B9D3C4",
        pulley_edge="#2D5B45",
        hatch="#7A6A5C",
    ),
)

DARK = Theme(
    name="dark",
    window="#1D2322",
    base="#141817",
    text="#E7ECE9",
    muted="#ABB7B1",
    edge="#77877F",
    accent="#7FCFDE",
    on_accent="#05222A",
    row_in_hand="#1F3A40",
    band="#40330F",
    trouble="#FF9C8A",
    states=("#7AB8DE", "#3F7396", "#E8933A", "#1D2322"),
    marks={
        MarkKind.PROPOSED: Mark("#1D2E47", "#E7ECE9", "#90B9F1"),
        MarkKind.LOOK_TWICE: Mark("#46300C", "#E7ECE9", "#F3B75C"),
        MarkKind.CONFIRMED: Mark("#1A3520", "#E7ECE9", "#88D08E"),
        MarkKind.CORRECTED: Mark("#1A3520", "#E7ECE9", "#88D08E"),
        MarkKind.ADDED: Mark("#1A3520", "#E7ECE9", "#88D08E"),
        MarkKind.RIVAL: Mark("#3F233A", "#E7ECE9", "#E49EDA"),
        MarkKind.IN_HAND: Mark("#7FCFDE", "#05222A", "#05222A"),
    },
    inks=Inks(
        paper="#141817",
        skin="#2E2823",
        outline="#B79F8B",
        words="#E7ECE9",
        faint_words="#ABB7B1",
        tendon="#1B2A30",
        tendon_edge="#A9CEDB",
        suture="#9CC3FF",
        pulley="#2F4F40",
        pulley_edge="#8FCBAA",
        hatch="#A9927F",
    ),
)


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours after WCAG 2.2, from 1 to 21."""
    bright, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    parts = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def system_theme() -> Theme:
    """Return the theme the system asks for; light where it does not say."""
    dark = QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark
    return DARK if dark else LIGHT


def palette_of(theme: Theme) -> QPalette:
    """Return the Qt palette of a theme."""
    palette = QPalette()
    role = QPalette.ColorRole
    for which, colour in (
        (role.Window, theme.window),
        (role.WindowText, theme.text),
        (role.Base, theme.base),
        (role.AlternateBase, theme.window),
        (role.Text, theme.text),
        (role.PlaceholderText, theme.muted),
        (role.Button, theme.window),
        (role.ButtonText, theme.text),
        (role.BrightText, theme.trouble),
        (role.Highlight, theme.accent),
        (role.HighlightedText, theme.on_accent),
        (role.Link, theme.accent),
        (role.LinkVisited, theme.accent),
        (role.ToolTipBase, theme.base),
        (role.ToolTipText, theme.text),
        (role.Mid, theme.edge),
        (role.Accent, theme.accent),
    ):
        palette.setColor(which, QColor(colour))
    for which in (role.Text, role.WindowText, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(theme.muted))
    return palette


def style_of(theme: Theme) -> str:
    """Return the style sheet: a focus ring that cannot be missed, and targets of at least 24 pixels."""
    return f"""
    *:focus {{ outline: none; }}
    QTextEdit, QPlainTextEdit, QListView, QTableView, QLineEdit, QComboBox {{
        background: {theme.base}; border: 2px solid {theme.edge}; border-radius: 3px; }}
    QTextEdit:focus, QPlainTextEdit:focus, QListView:focus, QTableView:focus, QLineEdit:focus, QComboBox:focus {{
        border: 2px solid {theme.accent}; }}
    QLineEdit, QComboBox {{ min-height: 24px; padding: 1px 6px; }}
    QComboBox::drop-down {{ border: none; width: 24px; }}
    QPushButton {{ min-height: 24px; padding: 2px 10px; border: 2px solid {theme.edge}; border-radius: 3px;
        background: {theme.base}; color: {theme.text}; }}
    QPushButton:focus {{ border: 2px solid {theme.accent}; }}
    QPushButton:pressed, QPushButton:checked {{ background: {theme.accent}; color: {theme.on_accent}; }}
    QPushButton:disabled {{ color: {theme.muted}; border: 1px dashed {theme.edge}; }}
    QCheckBox, QRadioButton {{ min-height: 24px; }}
    QCheckBox::indicator, QListView::indicator {{ width: 12px; height: 12px; border: 2px solid {theme.edge};
        border-radius: 2px; background: {theme.base}; }}
    QCheckBox::indicator:checked, QListView::indicator:checked {{ background: {theme.accent};
        border-color: {theme.text}; }}
    QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {theme.accent}; border-radius: 3px; }}
    QScrollArea[part="chart"] {{ background: {theme.base}; border: 2px solid {theme.edge}; border-radius: 3px; }}
    QScrollArea[part="chart"]:focus {{ border: 2px solid {theme.accent}; }}
    QTabBar::tab {{ min-height: 22px; padding: 2px 10px; border: 1px solid {theme.edge};
        border-top-left-radius: 3px; border-top-right-radius: 3px; background: {theme.window}; color: {theme.text}; }}
    QTabBar::tab:!selected {{ margin-top: 4px; }}
    QTabBar::tab:selected {{ background: {theme.base}; border-bottom: 3px solid {theme.accent}; }}
    QTabBar::tab:disabled {{ color: {theme.muted}; }}
    QTabBar::tab:focus {{ border: 2px solid {theme.accent}; }}
    QLabel[part="muted"] {{ color: {theme.muted}; }}
    QLabel[part="trouble"] {{ color: {theme.trouble}; }}
    QFrame[part="band"] {{ background: {theme.band}; border: 1px solid {theme.edge}; border-radius: 3px; }}
    QSplitter::handle {{ background: {theme.window}; }}
    QSplitter::handle:focus {{ background: {theme.accent}; }}
    """


def wear(app: QApplication, theme: Theme) -> None:
    """Give the whole program a theme."""
    app.setPalette(palette_of(theme))
    app.setStyleSheet(style_of(theme))


def mark_format(theme: Theme, kind: MarkKind) -> QTextCharFormat:
    """Return how marked words of that kind look."""
    mark = theme.marks[kind]
    look = QTextCharFormat()
    look.setBackground(QColor(mark.ground))
    look.setForeground(QColor(mark.letters))
    look.setUnderlineColor(QColor(mark.line))
    look.setUnderlineStyle(UNDERLINES[kind])
    return look


def larger(font: QFont, share: float, *, bold: bool = False) -> QFont:
    """Return a copy of a font scaled by a share, bold if asked."""
    copy = QFont(font)
    copy.setPointSizeF(max(1.0, font.pointSizeF() * share))
    copy.setBold(bold)
    return copy
