"""Composes dictations whose speaker makes no stops, or says commas for them: one finger after another."""

import random

from composer import Composed

_FINGERS = {"index": "index", "middle": "long", "ring": "ring", "small": "little"}
_COUNTS = {2: "two", 4: "four", 6: "six"}
_THREADS = ["3-0 Ethibond", "4-0 Prolene", "3-0 FiberWire"]


def dictate(seed: int) -> Composed:
    """Return the dictation of a seed; even seeds have no stops, odd ones only commas."""
    chance = random.Random(seed)
    digits = chance.sample(list(_FINGERS), chance.choice([1, 2, 2, 3]))
    digits = [d for d in _FINGERS if d in digits]
    note = Composed(chance, names={d: _FINGERS[d] for d in digits})
    note.say("this is a left hand zone two flexor tendon repair", "right hand cut with a knife in zone two")
    for n, digit in enumerate(digits):
        finger = note.names[digit]
        if n == 0:
            note.say(f"starting with the {finger} finger", f"in the {finger} finger")
        else:
            note.say(f"now the {finger} finger", f"in the {finger} finger", f"going on to the {finger} finger")
        _tell(note, digit)
    mark = " " if seed % 2 == 0 else ", "
    note.sentences = [mark.join(_low(words) for words in note.sentences)]
    return note


def _low(words: str) -> str:
    keeps = words.startswith(("I ", "A2", "A4", "FD"))
    return words if keeps else words[0].lower() + words[1:]


def _tell(note: Composed, digit: str) -> None:
    deep, superficial = note.chance.choice(["FDP", "profundus"]), note.chance.choice(["FDS", "superficialis"])
    fate = _cuts(note, digit, deep, superficial)
    count, thread = note.chance.choice(list(_COUNTS)), note.chance.choice(_THREADS)
    note.say(
        f"I repaired the {deep} with a {_COUNTS[count]} strand core of {thread}",
        f"the {deep} was repaired with {_COUNTS[count]} strands of {thread}",
        f"{_COUNTS[count]} strand repair of the {deep} with {thread}",
    )
    note.know([digit], "strands", count)
    note.know([digit], "size", thread.split()[0])
    note.know([digit], "treatment", "repaired")
    if note.chance.random() < 0.4:
        note.say("no epitendinous suture", "I did not do an epitendinous suture there")
        note.know([digit], "peripheral", "absent")
    if fate == "excised":
        note.say(f"the {superficial} was excised")
    elif fate == "left":
        note.say(f"the {superficial} was left alone", f"I left the {superficial} alone")
    if fate:
        note.know([digit], "treatment", fate, "FDS")
    _end(note, digit)


def _cuts(note: Composed, digit: str, deep: str, superficial: str) -> str:
    """Tell how far both flexors were cut; return what became of the superficial one, '' where nothing is told."""
    extent = note.chance.choice(["complete", "partial", "intact"])
    note.know([digit], "extent", "complete")
    note.know([digit], "extent", extent, "FDS")
    if extent == "complete":
        note.say(f"both the {deep} and the {superficial} were completely divided")
        return note.chance.choice(["excised", "left"])
    note.say(f"the {deep} was completely cut")
    if extent == "partial":
        note.say(f"the {superficial} was cut about 30 percent")
        return "left"
    note.say(f"the {superficial} was intact", f"the {superficial} was not injured")
    return ""


def _end(note: Composed, digit: str) -> None:
    pulley = note.chance.choice(["", "intact", "vented"])
    if pulley == "intact":
        note.say("A2 was intact", "A2 not opened")
    elif pulley == "vented":
        note.say("I vented the distal part of A2", "A2 vented distally")
    if pulley:
        note.know([digit], "finding", pulley, "A2")
    told = note.chance.choice(["", "gap", "glide"])
    if told == "gap":
        note.say("no gap", "there was no gap when I moved it")
        note.know([digit], "gap", "none")
    elif told == "glide":
        note.say("it glided freely", "good free glide")
        note.know([digit], "glide", "free")
