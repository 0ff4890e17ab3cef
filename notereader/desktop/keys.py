"""Every key of the window in one table: it binds them, fills the menus and the page that lists them.

Qt's StandardKey is used wherever the platform has a key for a thing. Single letters act only while the list of facts
has the focus (WCAG 2.2, 2.1.4).
"""

from dataclasses import dataclass
from enum import Enum

from PySide6.QtGui import QKeySequence

Standard = QKeySequence.StandardKey


class Where(Enum):
    """Where a key acts."""

    EVERYWHERE = "everywhere"
    FACTS = "in the list of facts"
    NOTE = "in the note"


@dataclass(frozen=True)
class Key:
    """One thing to do: its name in the code, its words, its keys and where they act.

    `own` keys stand beside the platform's `standard` ones, and for them where the platform has none.
    """

    name: str
    words: str
    menu: str
    own: tuple[str, ...] = ()
    standard: Standard | None = None
    where: Where = Where.EVERYWHERE
    with_case: bool = True

    def sequences(self) -> list[QKeySequence]:
        """Return the keys; our own stand in where the platform names none."""
        found = QKeySequence.keyBindings(self.standard) if self.standard is not None else []
        own = [QKeySequence(keys) for keys in self.own]
        return [*found, *(keys for keys in own if keys not in found)]


NOTE_MENU, FACTS_MENU, PRACTICE_MENU, VIEW_MENU, HELP_MENU = "&Note", "&Facts", "&Practice", "&View", "&Help"
# A line is drawn in the menu before each of these.
BREAKS = frozenset({"export", "quit", "confirm", "words", "undo", "next_part", "theme_system"})

KEYS = (
    Key("new", "New note: back to the first page", NOTE_MENU, standard=Standard.New, own=("Ctrl+N",), with_case=False),
    Key("open", "Open a note or record …", NOTE_MENU, standard=Standard.Open, own=("Ctrl+O",), with_case=False),
    Key("paste", "Paste a note", NOTE_MENU, standard=Standard.Paste, own=("Ctrl+V",), with_case=False),
    Key("export", "Export …", NOTE_MENU, own=("Ctrl+E",)),
    Key("share", "Share without identifiers …", NOTE_MENU, own=("Ctrl+Shift+E",)),
    Key("summary", "Summary as PDF …", NOTE_MENU, standard=Standard.Print, own=("Ctrl+P",)),
    Key("history", "History of this case", NOTE_MENU, own=("Ctrl+H",)),
    Key("audit", "Audit of many notes", NOTE_MENU, own=("F9",), with_case=False),
    Key("reviewer", "Name of the reviewer …", NOTE_MENU, own=("Ctrl+Shift+R",), with_case=False),
    Key("quit", "Quit", NOTE_MENU, own=("Ctrl+Q",), with_case=False),
    Key("undo", "Undo", FACTS_MENU, standard=Standard.Undo, own=("Ctrl+Z",)),
    Key("redo", "Redo", FACTS_MENU, standard=Standard.Redo, own=("Ctrl+Shift+Z",)),
    Key("confirm", "Confirm and bring the next", FACTS_MENU, own=("Return", "Enter", "Space"), where=Where.FACTS),
    Key(
        "confirm_heading",
        "Show all under this heading; once shown, confirm the unremarkable",
        FACTS_MENU,
        own=("Shift+Return", "Shift+Enter"),
        where=Where.FACTS,
    ),
    Key("correct", "Enter what the note says …", FACTS_MENU, own=("E", "F2"), where=Where.FACTS),
    Key("answer", "Enter what the surgeon answered …", FACTS_MENU, own=("Shift+E",), where=Where.FACTS),
    Key("rival", "Take the other value the note states", FACTS_MENU, own=("R",), where=Where.FACTS),
    Key("silent", "The note is silent here", FACTS_MENU, own=("S",), where=Where.FACTS),
    Key("withdraw", "Withdraw: not of this operation", FACTS_MENU, own=("W", "Del"), where=Where.FACTS),
    Key("words", "Take the words selected in the note as proof", FACTS_MENU, own=("Ctrl+T",)),
    Key("add", "Add a missed tendon, pulley or injury …", FACTS_MENU, own=("A",), where=Where.FACTS),
    Key("move", "Enter under another digit …", FACTS_MENU, own=("M",), where=Where.FACTS),
    Key("withdraw_entry", "Withdraw this tendon, pulley or injury", FACTS_MENU, own=("Shift+W",), where=Where.FACTS),
    Key("next_unsettled", "Next unsettled fact", FACTS_MENU, own=("N",), where=Where.FACTS),
    Key("confirm_case", "Confirm the whole record", FACTS_MENU, own=("Ctrl+Return", "Ctrl+Enter")),
    Key("thought_first", "What needs thought comes first", VIEW_MENU, own=("T",), where=Where.FACTS),
    Key("every_field", "List every field, also those not found", VIEW_MENU, own=("L",), where=Where.FACTS),
    Key("practise", "Practise reading notes", PRACTICE_MENU, own=("F8",), with_case=False),
    Key(
        "silent_rest",
        "The note is silent on all that is open under this heading",
        PRACTICE_MENU,
        own=("Shift+S",),
        where=Where.FACTS,
    ),
    Key("contradiction", "Name a contradiction …", PRACTICE_MENU, own=("C",), where=Where.FACTS),
    Key("ask", "Ask the surgeon about this fact", PRACTICE_MENU, own=("Q",), where=Where.FACTS),
    Key("find", "Find in the note", VIEW_MENU, standard=Standard.Find, own=("Ctrl+F",)),
    Key("find_next", "Find next", VIEW_MENU, standard=Standard.FindNext, own=("F3",)),
    Key(
        "choose_mark",
        "Bring the fact of these words",
        VIEW_MENU,
        own=("Return", "Enter"),
        where=Where.NOTE,
    ),
    Key("side_pane", "Show or hide the side pane: picture, strength, weeks, questions", VIEW_MENU, own=("F7",)),
    Key("next_part", "Go to the next part of the window", VIEW_MENU, own=("F6",)),
    Key("previous_part", "Go to the previous part of the window", VIEW_MENU, own=("Shift+F6",)),
    Key("zoom_in", "Larger letters", VIEW_MENU, standard=Standard.ZoomIn, own=("Ctrl++", "Ctrl+="), with_case=False),
    Key("zoom_out", "Smaller letters", VIEW_MENU, standard=Standard.ZoomOut, own=("Ctrl+-",), with_case=False),
    Key("zoom_usual", "Usual letters", VIEW_MENU, own=("Ctrl+0",), with_case=False),
    Key("theme_system", "Colours of the system", VIEW_MENU, with_case=False),
    Key("theme_light", "Light colours", VIEW_MENU, with_case=False),
    Key("theme_dark", "Dark colours", VIEW_MENU, with_case=False),
    Key("keys", "All keys", HELP_MENU, standard=Standard.HelpContents, own=("F1",), with_case=False),
    Key("cautions", "What this program does not do", HELP_MENU, with_case=False),
)

# What some keys mean while a case is practised.
PRACTICE_WORDS = {
    "confirm": "Enter what the note says …",
    "rival": "Put the other value you entered first",
    "withdraw": "Take back what was entered",
    "withdraw_entry": "Take back this tendon, pulley or structure",
    "add": "Add a tendon, pulley or other structure …",
    "next_unsettled": "Next fact that is open",
    "confirm_case": "Hand in",
    "side_pane": "Show or hide the side pane: task, contradictions, questions",
}


def key_named(name: str) -> Key:
    """Return the entry of the table with that name."""
    return next(key for key in KEYS if key.name == name)


def keys_in_words(key: Key) -> str:
    """Return its main keys as the platform writes them, 'Return or Space'."""
    shown = dict.fromkeys(keys.toString(QKeySequence.SequenceFormat.NativeText) for keys in key.sequences())
    # Keypads say Enter and some keyboards have a key called 'Undo': true, but noise on a page to learn from.
    shown_first = [words for words in shown if "+" in words][:1]
    plain = dict.fromkeys([*shown_first, *(words for words in shown if words in key.own)])
    return " or ".join([words for words in plain if not words.endswith("Enter")][:2])
