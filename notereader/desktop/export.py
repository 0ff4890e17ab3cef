"""The record as it leaves the window: as JSON and in words, always saying what nobody confirmed. Knows no Qt."""

from notereader.record import Record, Remark, dump_record

# How the remark begins that says so in the exported record; an older one is replaced, never added to.
_OPENING = "Not everything is confirmed:"


def open_facts(record: Record) -> tuple[int, int]:
    """Return how many facts are only proposed, and of how many."""
    facts = [fact for _, fact in record.walk()]
    return sum(fact.status == "proposed" for fact in facts), len(facts)


def how_settled(record: Record) -> str:
    """Say whether everything was settled by a person, and who confirmed the record."""
    unsettled, every = open_facts(record)
    if unsettled:
        return f"{_OPENING} {unsettled} of {every} facts are only proposed by the program; nobody has checked them."
    if record.review.confirmed_at is None:
        return "Every fact was settled by a person, but the record as a whole has not been confirmed."
    return f"Confirmed by {record.review.reviewer} on {record.review.confirmed_at.astimezone():%Y-%m-%d %H:%M}."


def exported(record: Record) -> Record:
    """Return the record as it is exported: with a remark where not everything is confirmed, and with the caution."""
    # Imported where used: it brings the tables of the appraisal, which the window does not wait for.
    from notereader.exchange import with_caution

    remarks = [remark for remark in record.remarks if not remark.text.startswith(_OPENING)]
    if open_facts(record)[0]:
        remarks.append(Remark(text=how_settled(record)))
    return with_caution(record.model_copy(update={"remarks": remarks}, deep=True))


def taken_in(record: Record) -> Record:
    """Return a record that was exported once, without the remarks that an export adds."""
    from notereader.exchange import without_caution

    remarks = [remark for remark in record.remarks if not remark.text.startswith(_OPENING)]
    return without_caution(record.model_copy(update={"remarks": remarks}))


def json_of(record: Record, *, text: bool) -> str:
    """Return the exported record as JSON, with or without the note's text."""
    return dump_record(exported(record), text=text)
