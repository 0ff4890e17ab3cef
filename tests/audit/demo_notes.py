"""Invented operative notes with known truth, for audits: written from our own sentences, seeded, any number of them.

Every note says a fact or leaves it out by chance. What it says is kept as the record that a careful person would
confirm, and, apart from that, as a plain list of which facts were put in, so that the audit can be held against both.
"""

import random
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta

from notereader.record import Address, Fact, Interval, Note, Record, Review, Rival, Value
from notereader.vocabulary import stitches

FIRST_DAY = date(2031, 1, 6)
SITES = ("north", "south", "west")

NUMBERS = {2: "two", 4: "four", 6: "six"}
CORES = ("modified kessler", "cruciate", "adelaide", "strickland", "lim-tsai")
CORE_WORDS = {
    "adelaide": "Adelaide",
    "strickland": "Strickland",
    "lim-tsai": "Lim-Tsai",
    "modified kessler": "modified Kessler",
}
THREADS = {"braided polyester": "braided polyester", "polypropylene": "polypropylene", "nylon": "nylon"}


@dataclass
class DemoNote:
    """One note: its text, what is true of it, the facts that were put in, and what to group it by."""

    name: str
    text: str
    truth: Record
    put_in: dict[str, bool]
    site: str
    surgeon: str
    day: date


@dataclass
class _Writer:
    """A note while it is written."""

    chance: random.Random
    record: Record
    complete: float
    put_in: dict[str, bool] = field(default_factory=dict)

    def says(self, what: str, share: float) -> bool:
        """Decide whether a fact is put in; the more complete the place, the likelier."""
        said = self.chance.random() < min(0.97, share * self.complete)
        self.put_in[what] = said
        return said

    def put(self, place: Address, basis: str = "stated", rivals: tuple[Value, ...] = (), **values: Value) -> None:
        """Write down what the note says."""
        for name, value in values.items():
            fact = Fact(value=value, basis=basis, status="confirmed", rivals=[Rival(value=r) for r in rivals])
            self.record.put(place.field_of(name), fact)

    def one_of(self, *sentences: str) -> str:
        """Return one of several ways to say the same."""
        return self.chance.choice(sentences)


def demo_notes(number: int, seed: int = 1) -> list[DemoNote]:
    """Return invented notes; the same seed gives the same notes."""
    return [demo_note(at, seed) for at in range(number)]


def demo_note(at: int, seed: int = 1) -> DemoNote:
    """Return one invented note."""
    chance = random.Random(f"{seed} {at}")
    day = FIRST_DAY + timedelta(days=3 * at % 720)
    site = chance.choice(SITES)
    complete = {"north": 1.15, "south": 0.85, "west": 1.0}[site]
    writer = _Writer(chance, Record(), complete)
    digit = chance.choice(("index", "middle", "ring", "small"))
    tendons = ("FDP", "FDS") if chance.random() < 0.35 else ("FDP",)
    parts = [_head(writer, digit, day), _findings(writer, digit, tendons), _pulleys(writer, digit)]
    parts += [_repairs(writer, digit, tendons, day), _nerve(writer, digit), _end(writer), _aftercare(writer)]
    text = "\n\n".join(part for part in parts if part) + "\n"
    name = f"note-{at:05d}.txt"
    writer.record.note = Note.of(text, name)
    writer.record.review = Review(reviewer="demo", confirmed_at=datetime(2033, 1, 1, tzinfo=UTC))
    return DemoNote(name, text, writer.record, writer.put_in, site, f"S{chance.randint(1, 6)}", day)


def _head(w: _Writer, digit: str, day: date) -> str:
    operation, elements = Address("operation"), Address("elements")
    side = w.chance.choice(("left", "right"))
    lines = []
    if w.says("operation.date", 0.85):
        lines.append(f"Date of operation: {day.day} {day:%B} {day.year}")
        w.put(operation, date=day.isoformat())
    for name, words, share in (
        ("surgeon", "Surgeon: consultant in hand surgery", 0.85),
        ("assistant", "Assistant: registrar", 0.6),
        ("anaesthetist", "Anaesthetist: consultant on call", 0.45),
    ):
        if w.says(f"elements.{name}", share):
            lines.append(words)
            w.put(elements, **{name: True})
    if w.says("operation.anaesthesia", 0.7):
        value = w.chance.choice(("general", "regional"))
        lines.append({"general": "Anaesthesia: general anaesthetic", "regional": "Anaesthesia: axillary block"}[value])
        w.put(operation, anaesthesia=value)
    if w.says("elements.tourniquet", 0.5):
        lines.append("Tourniquet: upper arm, 250 mmHg, 55 minutes")
        w.put(elements, tourniquet=True)
    if w.says("elements.antibiotics", 0.35):
        lines.append("Antibiotics: cefazolin at induction")
        w.put(elements, antibiotics=True)
    if w.says("elements.diagnosis", 0.8):
        lines.append(f"Diagnosis: flexor tendon injury, {side} {digit} finger")
        w.put(elements, diagnosis=True)
    lines.append(f"Procedure: exploration and tendon repair, {side} {digit} finger")
    w.put(elements, procedure=True)
    w.put(operation, side=side)
    return "\n".join(lines)


def _findings(w: _Writer, digit: str, tendons: tuple[str, ...]) -> str:
    said = []
    if w.says("operation.mechanism", 0.5):
        said.append(
            w.one_of(
                "The hand had been cut with a kitchen knife.",
                "The injury was from broken glass.",
                "An oyster shell did it.",
            )
        )
        w.put(Address("operation"), mechanism="sharp")
    both = len(tendons) > 1
    who = "Both FDP and FDS" if both else "The FDP"
    were = "were" if both else "was"
    whole = w.says("repairs.extent", 0.7)
    level = w.says("repairs.zone", 0.5)
    cut = "completely divided" if whole else "found cut"
    said.append(f"{who} {were} {cut}{' in zone II' if level else ''}.")
    for tendon in tendons:
        place = Address("repairs", digit, tendon)
        if whole:
            w.put(place, extent="complete")
        if level:
            w.put(place, zone="II")
    if w.says("repairs.ends", 0.25):
        said.append(w.one_of("The tendon ends were clean.", "Both stumps looked fresh and even."))
        for tendon in tendons:
            w.put(Address("repairs", digit, tendon), ends="clean")
    w.put(Address("elements"), findings=True)
    return "Findings: " + " ".join(said)


def _pulleys(w: _Writer, digit: str) -> str:
    said = []
    if w.says("pulleys.A2", 0.55):
        said.append(w.one_of("The A2 pulley was intact.", "The A2 pulley was preserved.", "A2 was spared."))
        w.put(Address("pulleys", digit, "A2"), finding="intact")
    if w.says("pulleys.A4", 0.5):
        if w.chance.random() < 0.4:
            said.append(w.one_of("The A4 pulley was vented over 5 mm for access.", "A 5 mm slit was made in A4."))
            w.put(Address("pulleys", digit, "A4"), finding="vented", extent_mm=5)
        else:
            said.append("The A4 pulley was preserved.")
            w.put(Address("pulleys", digit, "A4"), finding="intact")
    return " ".join(said)


def _repairs(w: _Writer, digit: str, tendons: tuple[str, ...], day: date) -> str:
    core, facts = _core(w)
    said = [f"{'Both tendons were' if len(tendons) > 1 else 'The FDP was'} repaired with {core}."]
    places = [Address("repairs", digit, tendon) for tendon in tendons]
    for place in places:
        w.put(place, treatment="repaired")
        for basis, rivals, values in facts:
            w.put(place, basis, rivals, **values)
    # From the second year on the theatre's form asks for the gap.
    asked = 0.75 if day.year > FIRST_DAY.year else 0.25
    for what, share, sentences, values in (
        (
            "purchase_mm",
            0.3,
            ("Purchase was 8 mm on each side.", "The bites reached 8 mm into either stump."),
            {"purchase_mm": Interval(low=8, high=8)},
        ),
        (
            "knot",
            0.2,
            ("The knots were buried between the tendon ends.", "Its knots lie inside the join."),
            {"knot": "buried"},
        ),
        (
            "gap",
            asked,
            (
                "There was no gap at the repair.",
                "No gapping was seen at the repair.",
                "No daylight showed at the join.",
            ),
            {"gap": "none"},
        ),
        (
            "glide",
            0.45,
            (
                "The repair glided freely.",
                "The repair ran smoothly through the sheath.",
                "Nothing hindered its excursion.",
            ),
            {"glide": "free"},
        ),
        ("tension", 0.2, ("The repair was free of tension.", "It sat slack at rest."), {"tension": "none"}),
        ("bulk", 0.15, ("The repair was not bulky.", "Its girth was that of the tendon."), {"bulk": "none"}),
    ):
        if w.says(f"repairs.{what}", share):
            said.append(w.one_of(*sentences))
            for place in places:
                w.put(place, **values)
    edge = _edge(w)
    if edge:
        said.insert(1, edge[0])
        for place in places:
            w.put(place, **edge[1])
    return " ".join(said)


Stated = tuple[str, tuple[Value, ...], dict[str, Value]]


def _core(w: _Writer) -> tuple[str, list[Stated]]:
    """Return the words of the core suture and the facts in them."""
    name = w.chance.choice(CORES)
    usual = stitches()[name].strands or 4
    facts: list[Stated] = []
    words = []
    counted, named = w.says("repairs.strands", 0.55), w.says("repairs.stitch", 0.65)
    if counted:
        words.append(w.one_of(f"{NUMBERS[usual]}-strand", f"{usual}-strand", f"{NUMBERS[usual]}fold crossing"))
        facts.append(("stated", (), {"strands": usual}))
    elif named:
        facts.append(("implied", (), {"strands": usual}))
    if named:
        words.append(CORE_WORDS.get(name, name))
        facts.append(("stated", (), {"stitch": name}))
        if stitches()[name].hold:
            facts.append(("implied", (), {"hold": stitches()[name].hold or ""}))
    words.append("core suture")
    thread = []
    if w.says("repairs.size", 0.75):
        size = w.chance.choice(("3-0", "4-0"))
        thread.append(size)
        facts.append(("stated", (), {"size": size}))
    if w.says("repairs.material", 0.65):
        material = w.chance.choice(tuple(THREADS))
        thread.append(THREADS[material])
        facts.append(("stated", (), {"material": material}))
    article = "an" if words[0][0] in "A" else "a"
    return f"{article} {' '.join(words)}{' of ' + ' '.join(thread) if thread else ''}", facts


def _edge(w: _Writer) -> tuple[str, dict[str, Value]] | None:
    if not w.says("repairs.peripheral", 0.65):
        return None
    if w.chance.random() < 0.08:
        return "No epitendinous suture was placed.", {"peripheral": "absent"}
    values: dict[str, Value] = {"peripheral": "present"}
    words = ["epitendinous suture"]
    if w.says("repairs.peripheral_pattern", 0.6):
        words.insert(0, "running")
        values["peripheral_pattern"] = "running"
    thread = ""
    if w.says("repairs.peripheral_size", 0.7):
        thread = " of 6-0 polypropylene"
        values |= {"peripheral_size": "6-0", "peripheral_material": "polypropylene"}
    return f"{w.one_of('A', 'A further')} {' '.join(words)}{thread} was added.", values


def _nerve(w: _Writer, digit: str) -> str:
    if not w.says("nerves", 0.6):
        return ""
    side = w.chance.choice(("radial", "ulnar"))
    place = Address("injuries", digit, "digital nerve", side)
    if w.chance.random() < 0.4:
        w.put(place, extent="complete", treatment="repaired")
        return f"The {side} digital nerve was completely divided and repaired with 9-0 nylon."
    w.put(place, extent="intact")
    return f"The {side} digital nerve was intact."


def _end(w: _Writer) -> str:
    lines: list[str] = []
    for name, words, share in (
        ("closure", "Closure: interrupted 5-0 nylon to skin", 0.7),
        ("dressing", "Dressing: paraffin gauze and wool", 0.5),
        ("complications", "Complications: none", 0.55),
        ("blood_loss", "Estimated blood loss: minimal", 0.4),
        ("specimens", "Specimens: none", 0.25),
    ):
        if w.says(f"elements.{name}", share):
            lines.append(words)
            w.put(Address("elements"), **{name: True})
    return "\n".join(lines)


def _aftercare(w: _Writer) -> str:
    said, place = [], Address("aftercare")
    splint = w.says("aftercare.splint", 0.65)
    if splint:
        at = []
        if w.says("aftercare.wrist_flexion_deg", 0.6):
            at.append("the wrist in 20 degrees of flexion")
            w.put(place, wrist_flexion_deg=Interval(low=20, high=20))
        if w.says("aftercare.mcp_flexion_deg", 0.6):
            at.append("the MCP joints in 60 degrees of flexion")
            w.put(place, mcp_flexion_deg=Interval(low=60, high=60))
        said.append(f"Dorsal blocking splint{' with ' + ' and '.join(at) if at else ''}.")
        w.put(place, splint="dorsal blocking")
        if w.says("aftercare.splint_weeks", 0.5):
            said.append(w.one_of("The splint is to be worn for six weeks.", "Off with it after six weeks."))
            w.put(place, splint_weeks=Interval(low=6, high=6))
    if w.says("aftercare.programme", 0.5):
        words, value = w.chance.choice(
            (("Early active motion", "early active"), ("Early passive motion", "early passive"))
        )
        start = w.says("aftercare.start_day", 0.6)
        said.append(f"{words}{' from day 4' if start else ''}.")
        w.put(place, programme=value)
        if start:
            w.put(place, start_day=Interval(low=4, high=4))
    if not said:
        return ""
    w.put(Address("elements"), instructions=True)
    return "Postoperative instructions: " + " ".join(said)
