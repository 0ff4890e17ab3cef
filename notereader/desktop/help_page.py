"""Pages of help: every key, and what this program does not do."""

from html import escape

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QTextBrowser, QVBoxLayout, QWidget

from notereader.desktop.keys import (
    FACTS_MENU,
    HELP_MENU,
    KEYS,
    NOTE_MENU,
    PRACTICE_MENU,
    PRACTICE_WORDS,
    VIEW_MENU,
    Where,
    key_named,
    keys_in_words,
)

_INTRODUCTION = (
    "Single letters act only while the list of facts has the focus. In an editor, Return enters the value and Esc "
    "leaves the fact as it is. Tab and Shift+Tab move between controls, F6 between the parts of the window."
)

_WHERE_NOTES_LIE = (
    "<h3>Where your notes lie</h3><p>Notes, records and the casebook lie on this computer, in files that only you can "
    "read, and nothing is sent anywhere. They are not encrypted and there is no passphrase: the disk of this computer "
    "is expected to be encrypted with what its system offers. Ask whoever looks after it.</p>"
)


class TextPage(QDialog):
    """A page of text that can be read, copied and closed by keyboard."""

    def __init__(self, title: str, html: str, parent: QWidget | None = None):
        super().__init__(parent)
        self.setWindowTitle(title)
        self.resize(760, 640)
        self.text = QTextBrowser()
        self.text.setAccessibleName(title)
        self.text.setHtml(html)
        self.text.setOpenLinks(False)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(self.text)
        layout.addWidget(buttons)
        self.text.setFocus()


def keys_page() -> str:
    """Return the page of all keys, made from the table that binds them."""
    parts = [f"<h2>All keys</h2><p>{escape(_INTRODUCTION)}</p>"]
    for menu in (FACTS_MENU, NOTE_MENU, PRACTICE_MENU, VIEW_MENU, HELP_MENU):
        parts.append(f"<h3>{escape(menu.replace('&', ''))}</h3><table cellpadding='3'>")
        for key in KEYS:
            if key.menu == menu and (words := keys_in_words(key)):
                where = "" if key.where is Where.EVERYWHERE else key.where.value
                parts.append(
                    f"<tr><td><b>{escape(words)}</b></td><td>{escape(key.words)}</td><td>{escape(where)}</td></tr>"
                )
        parts.append("</table>")
    parts.append("<h3>While a case is practised</h3><table cellpadding='3'>")
    for name, words in PRACTICE_WORDS.items():
        keys = keys_in_words(key_named(name))
        parts.append(f"<tr><td><b>{escape(keys)}</b></td><td>{escape(words)}</td></tr>")
    parts.append("</table>")
    return "".join(parts)


def cautions_page() -> str:
    """Return the page of cautions."""
    # Imported where used: the tables of the appraisal take time the window needs to appear.
    from notereader.appraisal.cautions import all_cautions

    lines = "".join(f"<li>{escape(line)}</li>" for line in all_cautions())
    return (
        "<h2>What this program does not do</h2><p>It reads one note and proposes facts. It can be wrong and it can "
        f"miss things; that is why every fact stands beside its words.</p><ul>{lines}</ul>{_WHERE_NOTES_LIE}"
    )
