"""The reader's pipeline: one spaCy Language of our own components, built once and shared by all threads."""

import gc
import os
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache, partial

from spacy.language import Language
from spacy.tokens import Doc
from spacy.vocab import Vocab

from notereader import __version__
from notereader.reader.bearing import bearing
from notereader.reader.desk import Desk
from notereader.reader.dictation import breaths
from notereader.reader.drafting.drafting import draft
from notereader.reader.layout import answer_lines, as_above, boxes, labels, layout, legends, row_references, tables
from notereader.reader.layout.parted_names import with_names_whole
from notereader.reader.mentions import measures, mentions
from notereader.reader.page import page_of
from notereader.reader.rules.cuts.bare_cuts import bare_cuts
from notereader.reader.rules.cuts.counted_whole import counted_whole
from notereader.reader.rules.cuts.cut_likeness import same_as_there
from notereader.reader.rules.cuts.cut_lists import listed_below, listed_beside, listed_whole, listed_with_share
from notereader.reader.rules.cuts.every_flexor import every_flexor
from notereader.reader.rules.cuts.lying_apart import found_apart
from notereader.reader.rules.cuts.misstated_shares import misstated_shares
from notereader.reader.rules.cuts.tendon_extents import extents
from notereader.reader.rules.cuts.ticked_columns import ticked_columns
from notereader.reader.rules.cuts.told_shortly import told_shortly
from notereader.reader.rules.cuts.told_then_listed import told_then_listed
from notereader.reader.rules.cuts.wrongly_whole import wrongly_whole
from notereader.reader.rules.cuts.zones import zones
from notereader.reader.rules.deeds.lost_repairs import lost_repairs
from notereader.reader.rules.deeds.not_sewn import not_sewn
from notereader.reader.rules.deeds.short_fates import short_fates
from notereader.reader.rules.deeds.spoken_of_repairs import spoken_of_repairs
from notereader.reader.rules.deeds.tendon_treatments import treatments
from notereader.reader.rules.orders.aftercare import aftercare
from notereader.reader.rules.pulleys.edges_taken_off import edges_taken_off
from notereader.reader.rules.pulleys.pulley_totals import opened_in_all
from notereader.reader.rules.pulleys.pulleys import pulleys
from notereader.reader.rules.pulleys.pulleys_rebuilt import rebuilt_before
from notereader.reader.rules.results.quality import quality
from notereader.reader.rules.structures.injuries import injuries
from notereader.reader.rules.sutures.figures_put_right import figures_put_right
from notereader.reader.rules.sutures.references import references, take_over
from notereader.reader.rules.sutures.renamed import renamed
from notereader.reader.rules.sutures.sutures import sutures
from notereader.reader.rules.ticks import ticks
from notereader.reader.rules.whole_note.elements import elements
from notereader.reader.rules.whole_note.operation import operation
from notereader.reader.scene import Scene, make_scenes
from notereader.reader.standing import standing
from notereader.reader.text.bracketed_answers import without_answer_brackets
from notereader.reader.text.chosen_options import without_offers
from notereader.reader.text.circled_options import without_uncircled
from notereader.reader.text.code_keys import code_keys
from notereader.reader.text.delimited import delimited
from notereader.reader.text.ditto_names import ditto_names
from notereader.reader.text.filled_brackets import without_brackets
from notereader.reader.text.label_counts import label_counts
from notereader.reader.text.line_codes import line_codes
from notereader.reader.text.misprints import misprints, read_put_right
from notereader.reader.text.numbered_options import without_options_left
from notereader.reader.text.shared_titles import shared_titles
from notereader.reader.text.sheet import sheet_marks
from notereader.reader.text.slashed_rows import slashed_rows
from notereader.reader.text.slashed_sides import slashed_sides
from notereader.reader.text.starred_notes import starred_notes
from notereader.reader.text.struck_through import without_struck
from notereader.reader.text.tokens import NoteTokenizer
from notereader.reader.text.typed_choices import without_typed_choices
from notereader.reader.text.wrapped_cells import wrapped_cells
from notereader.reader.text.writing_out import read_written_out
from notereader.record import Record
from notereader.vocabulary.terms import terms

COMPONENTS = (
    "notereader_mentions",
    "notereader_layout",
    "notereader_tables",
    "notereader_answer_lines",
    "notereader_as_above",
    "notereader_boxes",
    "notereader_labels",
    "notereader_legends",
    "notereader_row_references",
    "notereader_breaths",
    "notereader_measures",
    "notereader_standing",
    "notereader_bearing",
    "notereader_findings",
)
_MODULES = (
    answer_lines,
    as_above,
    bearing,
    boxes,
    breaths,
    labels,
    layout,
    legends,
    measures,
    mentions,
    row_references,
    standing,
    tables,
)  # importing them registers their components
_lock = threading.Lock()
STRICT = "NOTEREADER_STRICT"
# What tells of the state of a tendon, before any other rule asks for it.
_STATES = (
    misstated_shares,
    wrongly_whole,
    extents,
    found_apart,
    bare_cuts,
    every_flexor,
    same_as_there,
    told_shortly,
    counted_whole,
    listed_below,
    listed_beside,
    listed_with_share,
    listed_whole,
    told_then_listed,
    treatments,
    short_fates,
    not_sewn,
)


@Language.component("notereader_findings")
def findings(doc: Doc) -> Doc:
    """Run every rule over the scenes; the desk is left in the Doc's user_data. RETURNS the same Doc."""
    page = page_of(doc)
    scenes = [scene for scene in make_scenes(page) if not _is_empty_answer(scene)]
    desk = Desk(page, scenes)
    for scene in scenes:
        for rule in _STATES:
            _heed(rule, desk, scene)
    _heed(ticks, desk)
    _heed(ticked_columns, desk)
    for scene in scenes:
        _heed(spoken_of_repairs, desk, scene)
    desk.settled = True
    for scene in scenes:
        for rule in (
            zones,
            sutures,
            figures_put_right,
            lost_repairs,
            quality,
            pulleys,
            edges_taken_off,
            opened_in_all,
            rebuilt_before,
            injuries,
            references,
        ):
            _heed(rule, desk, scene)
    for whole in (take_over, renamed, operation, aftercare, elements):
        _heed(whole, desk)
    doc.user_data["desk"] = desk
    return doc


def _is_empty_answer(scene: Scene) -> bool:
    """Tell whether a cell is nothing but a colon, 'Graft (if any)   :', or a choice that nobody made, 'Gap   Y / N'."""
    return bool(scene.sentence.prefix) and scene.words(scene.sentence.i, scene.sentence.j) in _EMPTY


_EMPTY = ([":"], ["y", "/", "n"], ["yes", "/", "no"], ["n", "/", "y"])


def _heed(rule: Callable[..., None], desk: Desk, scene: Scene | None = None) -> None:
    """Run a rule; where it fails, what else the note says is read all the same, and the draft says what is missing.

    Under NOTEREADER_STRICT, which the tests set, the failure ends the reading.
    """
    try:
        rule(desk, scene) if scene is not None else rule(desk)
    except Exception:
        if STRICT in os.environ:
            raise
        desk.failed.append((rule.__name__, scene))


@cache
def language() -> Language:
    """Return the pipeline, built on first use."""
    # A vocabulary without attributes of words: the matcher compares spellings only, and each new word would cost ten.
    nlp = Language(Vocab(), create_tokenizer=lambda nlp: NoteTokenizer(nlp.vocab, _joinable()))
    for name in COMPONENTS:
        nlp.add_pipe(name)
    # The vocabulary lives as long as the program: the collector of unused objects need not go through it at each note.
    gc.freeze()
    return nlp


def _joinable() -> frozenset[str]:
    phrases = (phrase for term in terms() for phrase in (*term.words, *term.exact))
    return frozenset(word for phrase in phrases for word in phrase.lower().replace("-", " ").split())


@contextmanager
def _uncollected() -> Iterator[None]:
    """Keep the collector of unused objects still for one reading.

    What a reading makes it holds until its draft is done, and leaves no cycles: the collector would only go through it
    again and again, for 3 % of the time of a usual note and 8 % of that of 50,000 words.
    """
    running = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if running:
            gc.enable()


def read(text: str, name: str | None = None) -> Record:
    """Read a note text into a draft record; every fact is `proposed`. Safe to call from several threads.

    `text` must already be clean (one kind of line end, no lone surrogates); positions count its code points.
    """
    marks = list(sheet_marks(text))
    reading = partial(_read_mended, name=name)
    return read_written_out(text, marks, reading) if marks else reading(text)


def _read_mended(text: str, name: str | None) -> Record:
    """Read a note with its misprints put right, where it has any."""
    found = misprints(text)
    reading = partial(_read_in_full, name=name)
    return read_put_right(text, found, reading) if found else reading(text)


def _read_in_full(text: str, name: str | None) -> Record:
    """Read a note with its codes and the marks between its fields written out, where it has any."""
    parts = [part for step in _WRITTEN_OUT for part in step(text)]
    return read_written_out(text, parts, partial(_read, name=name)) if parts else _read(text, name)


# What is written out before a note is read.
_WRITTEN_OUT = (
    line_codes,
    wrapped_cells,
    delimited,
    slashed_rows,
    starred_notes,
    ditto_names,
    shared_titles,
    slashed_sides,
    code_keys,
    label_counts,
)


def _prepared(text: str) -> str:
    """Return a text of the same length without the marks and blanks of a form that would mislead the steps."""
    chosen = without_uncircled(without_offers(without_struck(without_options_left(text))))
    return with_names_whole(without_answer_brackets(without_brackets(without_typed_choices(chosen))))


def _read(text: str, name: str | None) -> Record:
    with _lock:
        nlp = language()
        with _uncollected(), nlp.memory_zone():
            desk: Desk = nlp(_prepared(text)).user_data["desk"]
            desk.page.text = text  # quotes are of the note as it stands
            return draft(desk, name, __version__)
