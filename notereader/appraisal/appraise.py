"""Put the parts together: one record in, one appraisal out."""

from datetime import date

from notereader.appraisal import checks_case, checks_suture
from notereader.appraisal.cautions import all_cautions, cautions_about
from notereader.appraisal.checks import piece_of, run_checks
from notereader.appraisal.completeness import SUTURED, completeness_of
from notereader.appraisal.construct import Construct, construct_of
from notereader.appraisal.glide import glide_of
from notereader.appraisal.known import Case, Entry
from notereader.appraisal.margin import load_tables, loads_for, margin_table
from notereader.appraisal.models import Appraisal, Contradiction, TendonAppraisal
from notereader.appraisal.questions import questions_of
from notereader.appraisal.strength import strength_of
from notereader.appraisal.strength_tables import strength_tables
from notereader.appraisal.timeline import day_of, time_line
from notereader.record import Record

# Importing these rooms of checks registers them; named here so that nobody takes the imports for idle.
CHECK_MODULES = (checks_suture, checks_case)

# How far the model may be asked, in days and degrees; beyond that the question is a slip of the pen.
LATEST_DAY = 3650
MOST_BENT_DEG = 270.0


def appraise(record: Record, day: int | None = None, posture_deg: float = 0.0, on: date | None = None) -> Appraisal:
    """Return what the facts of a record mean on a day after the operation, at a bend of the tendon in degrees.

    The day may be given outright or as the date `on` (used where the note's date of operation is known and `day` is
    not given); without either, day 0 is shown. The record is not changed. Raises ValueError for a day before the
    operation or a bend that no finger has.
    """
    case = Case.of(record)
    chosen = day if day is not None or on is None else day_of(case, on)
    _refuse_impossible(chosen, posture_deg)
    found = run_checks(case)
    programme = case.aftercare.known("programme")
    immobilised = programme is not None and "immobilisation" in programme.candidates
    constructs = {e.place.text(): construct_of(e, immobilised) for e in case.repairs if _covered(e)}
    needs = completeness_of(case, _disputed(found))
    standings = [k.standing for e in case.entries() for k in e.live()]
    return Appraisal(
        cautions=all_cautions(),
        note=record.note.name,
        day=chosen or 0,
        day_given=chosen is not None,
        posture_deg=posture_deg,
        facts_confirmed=standings.count("confirmed"),
        facts_proposed=standings.count("proposed"),
        completeness=needs,
        contradictions=found,
        questions=questions_of(case, needs, found, constructs),
        tendons=[_tendon(e, constructs.get(e.place.text()), chosen or 0, posture_deg) for e in case.repairs],
        glide=glide_of(case),
        timeline=time_line(case, chosen),
    )


def _refuse_impossible(day: int | None, posture_deg: float) -> None:
    if day is not None and day < 0:
        raise ValueError(f"Day {day} lies before the operation. Give a day from 0, counted from the operation.")
    if day is not None and day > LATEST_DAY:
        raise ValueError(
            f"Day {day} is more than ten years after the operation. Give the day counted from the operation."
        )
    if not 0 <= posture_deg <= MOST_BENT_DEG:
        raise ValueError(
            f"A bend of {posture_deg:g} degrees is not possible. Give degrees of flexion from 0 to {MOST_BENT_DEG:g}."
        )


def _disputed(found: list[Contradiction]) -> frozenset[str]:
    return frozenset(p.address for hit in found if hit.kind == "contradiction" for p in hit.pieces)


def _covered(repair: Entry) -> bool:
    """True where the strength model covers what was done: sutured end to end with a core stitch, and not in dispute."""
    return not _why_not(repair)


def _why_not(repair: Entry) -> str:
    """Return why no strength is shown for a tendon, '' where one is."""
    words, none = strength_tables().sentences, strength_tables().no_figure
    done, extent = repair.known("treatment"), repair.text("extent")
    if done is None:
        return words.intact if extent == "intact" else words.treatment_unknown
    if len({value in SUTURED for value in done.candidates}) > 1:
        return words.treatment_disputed.format(values=" and ".join(map(str, done.candidates)))
    if done.value not in SUTURED:
        said = words.not_repaired.format(treatment=done.shown())
        return f"{said} {words.part_unsettled}" if extent == "partial" else said
    stitch = repair.known("stitch")
    without = [str(v) for v in stitch.candidates if v in none.stitches] if stitch else []
    return none.words.format(stitch=without[0]) if without else ""


def _tendon(repair: Entry, construct: Construct | None, day: int, posture_deg: float) -> TendonAppraisal:
    tendon = repair.place.part or ""
    loads = loads_for(tendon)
    words = load_tables()
    strength = strength_of(construct, day, posture_deg) if construct else None
    if strength is not None:
        strength.notes += _entry_notes(repair)
    shown = bool(construct and loads)
    return TendonAppraisal(
        address=repair.place.text(),
        where=repair.place.entry_words(),
        facts=[piece_of(k) for k in repair.live()],
        strength=strength,
        reason=_why_not(repair),
        loads=loads if construct else [],
        load_note=(words.allowance.words + " " + words.sentences.method)
        if shown
        else words.sentences.no_load.format(tendon=tendon),
        table=margin_table(construct, loads, posture_deg, day) if construct else [],
        cautions=cautions_about("general", "strength"),
    )


def _entry_notes(repair: Entry) -> list[str]:
    words, notes = strength_tables().sentences, []
    if repair.text("extent") == "partial":
        notes.append(words.partial)
    if repair.place.part in ("FCR", "FCU", "PL"):
        notes.append(words.wrist_tendon)
    return notes
