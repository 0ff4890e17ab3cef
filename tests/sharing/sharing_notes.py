"""Invented notes with planted identifiers, written by hand and made from templates, and how finds are scored on them.

In a marked text an identifier stands as [[kind|words]]. Every word is invented; most names are in no list of the
program, and some are ordinary words.
"""

import random
import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path

from notereader.sharing import Find, find_identifiers

_MARKED = re.compile(r"\[\[([^|\]]+)\|([^\]]+)\]\]")
_FOLDER = Path(__file__).parent / "notes"


@dataclass(frozen=True)
class Planted:
    """An identifier in a note: its place in code points, its kind and its words."""

    start: int
    end: int
    kind: str
    words: str


@dataclass(frozen=True)
class MarkedNote:
    """A note and what is planted in it."""

    name: str
    text: str
    planted: tuple[Planted, ...]


@dataclass
class Score:
    """Of one kind: identifiers planted, covered whole by finds, and finds made, of which so many were right."""

    planted: int = 0
    covered: int = 0
    finds: int = 0
    right: int = 0
    missed: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)


def unmarked(name: str, marked: str) -> MarkedNote:
    """Take the marks out of a text."""
    text, planted, last = "", [], 0
    for match in _MARKED.finditer(marked):
        text += marked[last : match.start()]
        planted.append(Planted(len(text), len(text) + len(match[2]), match[1], match[2]))
        text += match[2]
        last = match.end()
    return MarkedNote(name, text + marked[last:], tuple(planted))


def hand_written(prefix: str = "h") -> list[MarkedNote]:
    """Return the notes written by hand: 'h' first, 'k' and 'm' each after the rules had been mended on those before."""
    return [unmarked(p.stem, p.read_text(encoding="utf-8")) for p in sorted(_FOLDER.glob(f"{prefix}*.txt"))]


def made(count: int = 36, seed: int = 7) -> list[MarkedNote]:
    """Return notes made from the templates, always the same ones for a seed."""
    chance = random.Random(seed)
    return [unmarked(f"made-{n:02d}", _filled(TEMPLATES[n % len(TEMPLATES)], chance)) for n in range(count)]


def score(notes: Iterable[MarkedNote]) -> dict[str, Score]:
    """Return the scores by kind. An identifier counts as covered where every letter and figure of it lies in a find."""
    scores: dict[str, Score] = {}
    for note in notes:
        finds = find_identifiers(note.text)
        hidden = {p for find in finds for p in range(find.start, find.end)}
        wanted = {p for each in note.planted for p in range(each.start, each.end)}
        for each in note.planted:
            row = scores.setdefault(each.kind, Score())
            row.planted += 1
            if all(p in hidden for p in range(each.start, each.end) if note.text[p].isalnum()):
                row.covered += 1
            else:
                row.missed.append(f"{note.name}: {each.words}")
        for find in finds:
            row = scores.setdefault(find.kind, Score())
            row.finds += 1
            letters = [p for p in range(find.start, find.end) if note.text[p].isalnum()]
            if 2 * sum(p in wanted for p in letters) > len(letters):
                row.right += 1
            else:
                row.wrong.append(f"{note.name}: {find.words} ({find.why})")
    return scores


def total(scores: dict[str, Score]) -> Score:
    """Return the sum over all kinds."""
    summed: Counter[str] = Counter()
    for row in scores.values():
        summed.update(planted=row.planted, covered=row.covered, finds=row.finds, right=row.right)
    return Score(**summed)


def share(part: int, whole: int) -> float:
    """Return a share, 1 where there is nothing to share."""
    return part / whole if whole else 1.0


def of_kind(finds: Iterable[Find], kind: str) -> list[str]:
    """Return the words of the finds of a kind."""
    return [find.words for find in finds if find.kind == kind]


_GIVEN = "Thandeka Ysolde Marguerite Olga Rashid Peter Zawadi Ingvild Ahmed Corentin Jane Bartholomew Xiomara Liselotte"
_FAMILY = (
    "Quellborough Tsirelle Brandvold Okonjo-Vale Hargreave Illyes Ferrant Wood Brown Palmer Long M'Bengue O'Dalloran "
    "Lindqvist Vanhoutte Marchetti Mwakasege Underhill Achterberg Pritchard-Nkemelu"
)
_TOWN = ["Fennimore", "Tarnby Falls", "Gannet Sound", "Lower Wexcombe", "Port Mallory", "Ostermoor", "Kestrel Fork"]
_HOSPITAL = [
    "Gannet Sound District Hospital",
    "ALDERWICK MEDICAL CENTER",
    "Royal Ostermoor Infirmary",
    "St Brannoc's Hand Clinic",
    "University Hospital of Lower Velmar",
]
_MONTHS = [
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
]


def _filled(template: str, chance: random.Random) -> str:
    """Fill in the places {name}, each with something new; {same} is the family name of the first."""
    family = chance.choice(_FAMILY.split())

    def fill(match: re.Match[str]) -> str:
        return _FILLERS[match[1]](chance, family)

    return re.sub(r"\{(\w+)\}", fill, template)


def _figures(form: str, chance: random.Random) -> str:
    """Return a form with figures for 9 and capitals for A."""
    letters = "ABCDEFGHJKLMNPRSTUVWXYZ"
    return "".join(chance.choice("0123456789") if c == "9" else chance.choice(letters) if c == "A" else c for c in form)


def _day(chance: random.Random) -> str:
    day, month, year = chance.randint(1, 28), chance.randint(1, 12), chance.randint(2028, 2039)
    name = _MONTHS[month - 1]
    return chance.choice(
        [
            f"{day} {name} {year}",
            f"{name} {day}, {year}",
            f"{day:02d}-{name[:3].upper()}-{year}",
            f"{year}-{month:02d}-{day:02d}",
            f"{day:02d}.{month:02d}.{year}",
            f"{month}/{day}/{year % 100}",
            f"{day}{'st' if day in (1, 21) else 'nd' if day in (2, 22) else 'rd' if day in (3, 23) else 'th'} {name}",
        ]
    )


_FILLERS = {
    "same": lambda c, f: f"[[name|{f}]]",
    "first": lambda c, f: f"[[name|{c.choice(_GIVEN.split())} {f}]]",
    "initial": lambda c, f: f"[[name|{c.choice('ABDEFGHJ')}. {c.choice(_FAMILY.split())}]]",
    "other": lambda c, f: f"[[name|{c.choice(_GIVEN.split())} {c.choice(_FAMILY.split())}]]",
    "family": lambda c, f: f"[[name|{c.choice(_FAMILY.split())}]]",
    "given": lambda c, f: f"[[name|{c.choice(_GIVEN.split())}]]",
    "town": lambda c, f: f"[[place|{c.choice(_TOWN)}]]",
    "hospital": lambda c, f: f"[[place|{c.choice(_HOSPITAL)}]]",
    "street": lambda c, f: (
        f"[[place|{c.randint(1, 240)} {c.choice(_TOWN)} {c.choice(['Street', 'Rd', 'Lane', 'Avenue'])}]]"
    ),
    "zip": lambda c, f: f"[[place|{c.choice(_TOWN)}, {c.choice(['OR', 'ME', 'NV'])} {_figures('99999', c)}]]",
    "date": lambda c, f: f"[[date|{_day(c)}]]",
    "phone": lambda c, f: (
        f"[[telephone|{_figures(c.choice(['(555) 019-9999', '01632 960 999', '+44 1632 960999', '555-019-9999']), c)}]]"
    ),
    "fax": lambda c, f: f"[[fax|{_figures('(555) 018-9999', c)}]]",
    "mail": lambda c, f: (
        f"[[e-mail|{c.choice('abcdef')}.{c.choice(['reyl', 'tarn', 'oss'])}@{c.choice(['mail', 'clinic'])}.example]]"
    ),
    "ssn": lambda c, f: f"[[social security number|{_figures('999-99-9999', c)}]]",
    "mrn": lambda c, f: f"[[record number|{_figures(c.choice(['99999999', 'A999999', '99-99-99', 'AA99/9999']), c)}]]",
    "plan": lambda c, f: f"[[health plan number|{_figures(c.choice(['AAA999999', '9999 9999 99']), c)}]]",
    "account": lambda c, f: f"[[account number|{_figures(c.choice(['99999999', 'A-9999999']), c)}]]",
    "licence": lambda c, f: f"[[licence number|{_figures(c.choice(['9999999', 'A-999999']), c)}]]",
    "plate": lambda c, f: f"[[vehicle|{_figures(c.choice(['AA99 AAA', '9AAA999']), c)}]]",
    "serial": lambda c, f: f"[[device|{_figures(c.choice(['AA99999A', '9999-99999']), c)}]]",
    "url": lambda c, f: (
        f"[[web address|{c.choice(['https://', 'www.'])}{c.choice(['tarn', 'oss'])}.example/{_figures('999', c)}]]"
    ),
    "ip": lambda c, f: (
        f"[[IP address|{c.randint(10, 200)}.{c.randint(0, 255)}.{c.randint(0, 255)}.{c.randint(1, 254)}]]"
    ),
    "print": lambda c, f: f"[[biometric|{_figures(c.choice(['FT99999', 'VP-2031-999']), c)}]]",
    "photo": lambda c, f: f"[[photograph|{_figures(c.choice(['IMG_9999.jpg', 'hand-99-99.png', 'DSC_99999']), c)}]]",
    "code": lambda c, f: f"[[other number|{_figures(c.choice(['A99-9999', '999999', 'AB/99/9999']), c)}]]",
}

TEMPLATES = (
    """OPERATIVE REPORT
{hospital}
PATIENT: {first}    MRN: {mrn}    DOB: {date}
DATE OF SURGERY: {date}
SURGEON: {other}, MD
ASSISTANT: {other}
SSN: {ssn}   ACCT: {account}   MEMBER ID: {plan}

The patient, a 34-year-old potter from {town}, cut the right ring finger on {date}. FDP was divided in zone II and
repaired with a four-strand cruciate of 4-0 FiberWire and a running 6-0 Prolene suture. A2 was intact, A4 was vented.
No gap was seen. Photographs: {photo}. Anchor serial no. {serial}.
Mr. {same} will call {phone} or write to {mail}. Fax {fax}.
Accession {code}.

Electronically signed by {other}, MD
""",
    """Op note {date}
Name: {first}  Unit no: {mrn}
Lives: {street}. GP Dr {family}.
Surg: {family}  Asst: {family}  Anaes: Dr {family}
L MF zone IIC, sharp. FDP 4 str Adelaide 3/0 Ticron, 10 mm purchase, 6/0 epi. FDS slip 4/0. A2 1/2 vented. RDN 9/0.
Glides. No gap. TQ 250, 45 min. DBS, EAM d4. OT 10/7.
NOK {other} {phone}. GMC {licence}. Car reg {plate}.
""",
    """Dear Dr {family},

Re: {first}, born {date}, {street}, {zip}
Our ref: {code}

I operated on this carpenter on {date} at {hospital}. The FPL was cut in zone II and repaired with a modified Kessler
of 3-0 Supramid and a Silfverskiöld stitch of 6-0 Prolene. The oblique pulley was preserved; no gap, no triggering.
{given}, our therapist, starts the Duran programme on {date}. He can be reached at {mail} or {phone}; the exercises
stand at {url}. His wife {given} drives him from {town}.

Yours sincerely
{initial}
""",
    """{hospital}      THEATRE SHEET
Surname: {same}      Hosp no: {mrn}      Visit no: {code}
Date: {date}     List: trauma
Operator: Mr {family}      Supervisor: Miss {family}
Policy no: {plan}     Invoice: {account}
Small finger FDP, zone I, reinserted with Mitek anchor, lot no {serial}. A5 divided, A4 intact. Digital nerves intact.
Place and hold from day 5. Splint 6 weeks. Wrist 20 ext, MCP 60 flex.
Fingerprint template {print}; sent from {ip}.
Signed: {initial} {date}
""",
    """This 47-year-old gardener, {first}, of {town}, was brought in by {given} on {date} with both FDS and FDP of the
index cut in zone III by a hedge saw. On {date} {initial} repaired FDP with six-strand Savage 4-0 Ethibond and FDS with
two mattress stitches of 4-0. Median nerve branch repaired with 9-0. Tourniquet serial {serial}. Claim no. {plan}.
Driving licence no {licence}. Vehicle registration plate {plate}. Bank account no. {account}.
Ms {same} was seen again on {date}; call {phone}. Record kept at {url}. Photo {photo}. Voice print {print}.
""",
    """OP RECORD. PT: {first}. MRN {mrn}. {date}. SSN {ssn}.
DR. {family} / DR. {family}. {hospital}.
THUMB FPL ZONE T2, LIM-TSAI 4-0, EPI 6-0. OBLIQUE PULLEY OK. UDN OK. NO GAP. EBL 5 ML.
F/U {date}, TEL {phone}, FAX {fax}. JOB {code}. IP {ip}. E-MAIL {mail}. NPI {licence}.
""",
)
