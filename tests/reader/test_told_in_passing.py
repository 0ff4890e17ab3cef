"""Sentences that tell nothing of a repair leave what the note says of it as it was."""

import pytest
from reader_sentences import Shown, told

NOTES = (
    ["Left ring finger, zone II.", "The FDP was completely divided.", "Core: four-strand cruciate, 3-0 Ethibond."],
    [
        "Left ring finger, zone II.",
        "The FDP was cut by 70%.",
        "It was repaired with four strands of 3-0 Ethibond and a running 6-0 Prolene.",
        "A 1 mm gap was seen. It caught at A4.",
    ],
)
DRESSINGS = [
    "The dressing was applied without tension.",
    "There was no gap in the dressing.",
    "The splint was well padded and not tight.",
    "The scar was not tight.",
    "The cast was bulky.",
    "The button sat flat.",
    "There was no gap in the list.",
    "The tape was cut off.",
    "His ring was cut off in the emergency room.",
    "He had read that six strands are best.",
    "The first case was a carpal tunnel release.",
    "My colleague did a similar case with six strands.",
    "Capillary refill was full and free.",
    "The splint did not catch on the dressing.",
    "The thumb web was free.",
    "The traction frame was not used.",
]
COUNTS = ["The count was complete.", "Haemostasis was complete.", "The operation was complete after 90 minutes."]
JOINTS = ["The DIP joint was free.", "Extension was complete.", "The surface of the repair was smooth."]
MUSINGS = [
    "A six-strand repair would have been too bulky here.",
    "Two needles were used, as six strands would have been too bulky.",
    "Most of my repairs glide freely.",
    "With two strands I do not allow active motion.",
    "No resistance for eight weeks.",
]
NOT_PLACED = [
    "The peripheral pulse was present.",
    "Peripheral sensation was normal.",
    "Circumferential dissection of the scar.",
    "The finger was locking before.",
    "He has a grasping hand.",
    "An eight-strand repair could not be fitted in.",
    "The peripheral suture was forgotten.",
    "An epitendinous suture is usual here.",
    "The epitendinous layer was inspected.",
]
HEARSAY = [
    "The emergency doctor thought that the FDS was intact.",
    "The referring surgeon reported that the FDS was whole.",
]
BITTEN = [
    "The dog's bite was 10 mm deep.",
    "The skin sutures took 5 mm bites.",
    "The stump of the finger was clean.",
    "A button hole incision was made.",
]
BEFORE_THE_SUTURE = [
    "The tendon ends were held together with a clip.",
    "The gap was closed by flexing the wrist.",
    "The gap in the sheath was 8 mm.",
    "The wrist was flexed to take tension off.",
    "Two mm of tendon were visible in the window.",
    "The catheter was sutured to the tendon with 4-0 nylon.",
    "The bone end was trimmed by 3 mm.",
]
SEWN_ELSEWHERE = [
    "Median nerve: microscope, epi-perineural suture 9-0 nylon, twelve stitches, no tension.",
    "Suture 5-0 nylon. Vaseline gauze, dorsal splint.",
    "He will see therapy on day four for active flexion of the finger without restriction.",
    "The flap was inset with 5-0 nylon.",
    "The pedicle was ligated with 4-0 silk.",
    "The ligament was repaired with a bone anchor.",
    "The superficial layer was closed with 5-0 nylon.",
    "Closed with 4-0 Ethilon.",
    "There was no gap at the fracture.",
    "The hand was left in a splint.",
    "The fat was trimmed.",
]
OTHER_FINGERS = [
    "A cross-finger flap was raised from the middle finger.",
    "Neighbour strapping to the middle finger.",
    "The thumb was not injured.",
    "The little finger had been stiff for years.",
    "The middle finger was held out of the way.",
    "The ring and middle fingers rest in a normal cascade.",
]
PULLEYS = ["It looks good.", "Everything looks fine."]


def _plain(text: str) -> tuple[Shown, Shown]:
    repairs = told(text)
    for facts in repairs.values():
        facts.pop("test", None)  # how a finger was moved is a test, whatever is then told
    return repairs, told(text, group="pulleys")


@pytest.mark.parametrize("note", NOTES)
@pytest.mark.parametrize(
    "aside",
    [
        *DRESSINGS,
        *COUNTS,
        *JOINTS,
        *MUSINGS,
        *NOT_PLACED,
        *HEARSAY,
        *BITTEN,
        *BEFORE_THE_SUTURE,
        *SEWN_ELSEWHERE,
        *OTHER_FINGERS,
        *PULLEYS,
    ],
)
def test_an_aside_changes_nothing(note: list[str], aside: str) -> None:
    for place in range(2, len(note) + 1):
        assert _plain(" ".join([*note[:place], aside, *note[place:]])) == _plain(" ".join(note))


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("The repair was tight.", "tension", "present"),
        ("There was no gap on full extension.", "gap", "none"),
        ("No gap when the joint was moved.", "gap", "none"),
        ("The gap was closed with one more stitch.", "gap", "none"),
        ("On moving the DIP joint the tendon ran freely.", "glide", "free"),
        ("The tendon ran smoothly.", "glide", "free"),
        ("Glide was tight.", "glide", "restricted"),
    ],
)
def test_what_is_told_of_the_repair_is_still_read(text: str, field: str, value: str) -> None:
    assert told(" ".join([*NOTES[0], text]), field) == {"ring FDP": {field: value}}


@pytest.mark.parametrize("text", ["We then turned to the index finger.", "The index finger was explored next."])
def test_a_finger_that_a_note_turns_to_takes_what_follows(text: str) -> None:
    note = f"{' '.join(NOTES[0])} {text} The FDP was completely divided. Core: two strands."
    assert told(note, "strands") == {"ring FDP": {"strands": 4}, "index FDP": {"strands": 2}}


@pytest.mark.parametrize(
    "looked_at",
    [
        "had lost its cascade",
        "lay in a poor posture",
        "was stiff and numb",
        "had its nerves not injured",
        "had A2 not opened",
    ],
)
def test_a_finger_that_was_worked_on_is_turned_to_whatever_is_told_first(looked_at: str) -> None:
    fingers = [
        f"The {name} finger {looked_at}. FDP complete. Core: {n} strands." for name, n in (("index", 4), ("ring", 2))
    ]
    note = "Left index and ring fingers, zone II. " + " ".join(fingers)
    assert told(note, "strands") == {"index FDP": {"strands": 4}, "ring FDP": {"strands": 2}}
