"""How a student types values: in the words of the note, as the command line of practice takes them too."""

from notereader.desktop.editors import USUAL, Typing
from notereader.practice.explain import shown_by
from notereader.practice.typed import hint_of, value_of
from notereader.vocabulary import FieldSpec

_MORE = {
    "whole": "Figures or words: 4, four.",
    "interval": "Also with its unit: 8 mm, 1 cm, day 3, 5 weeks.",
    "date": "Also as the note writes it, where its order is clear: 4 March 2033.",
    "choice": "Or type the word of the note, such as a trade name.",
}


def _hint(spec: FieldSpec) -> str:
    if "degrees" in spec.unit:
        return f"{hint_of(spec)}."
    return f"{USUAL.hint(spec)} {_MORE.get(spec.kind, '')}".rstrip()


STUDENTS = Typing(read=value_of, write=shown_by, hint=_hint, free=True)
