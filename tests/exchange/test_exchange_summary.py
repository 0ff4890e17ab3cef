"""The printed summary: says what stands, how it stands and what is unknown, and takes no text for HTML."""

import re
from html.parser import HTMLParser

import pytest
from exchange_helpers import HARMFUL, STRANDS, confirmed, example, poisoned
from hypothesis import given
from hypothesis import strategies as st

from notereader.appraisal.cautions import all_cautions
from notereader.exchange import summary_html, summary_text
from notereader.exchange.summary import shown
from notereader.record import Address, Fact, Interval, Record

OWN_TAGS = {"html", "head", "meta", "title", "style", "body", "h1", "h2", "h3", "p", "b", "i", "ul", "li", "br"}
OWN_TAGS |= {"table", "tr", "th", "td"}
OWN_ATTRIBUTES = {"lang", "charset", "http-equiv", "content", "class", "border", "cellspacing", "cellpadding", "width"}


class Page(HTMLParser):
    """Reads a page as a browser would: tags, attributes and text."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[str] = []
        self.attributes: set[str] = set()
        self.texts: list[str] = []
        self.others: list[str] = []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes |= {name for name, _ in attrs}

    def handle_data(self, data: str) -> None:
        self.texts.append(data)

    def handle_comment(self, data: str) -> None:
        self.others.append(data)

    def handle_pi(self, data: str) -> None:
        self.others.append(data)

    def unknown_decl(self, data: str) -> None:
        self.others.append(data)

    @property
    def text(self) -> str:
        return "\n".join(self.texts)


def flat(text: str) -> str:
    return " ".join(text.split())


def both(record: Record) -> list[str]:
    """Return text and page as flat text."""
    return [flat(summary_text(record)), flat(Page(summary_html(record)).text)]


def test_facts_nobody_confirmed_are_said_first_and_marked() -> None:
    for text in both(example()):
        warning = "NOT ALL FACTS ARE CONFIRMED. 2 of 11 were proposed by the program and nobody has confirmed them."
        assert warning in text
        assert text.index(warning) < text.index("Core strands")
        assert "Nobody has confirmed this record as a whole." in text
        assert text.count("proposed, NOT confirmed") == 2
    assert re.search(r"^\? Core suture size: 3-0 +\[proposed, NOT confirmed\]$", summary_text(example()), re.MULTILINE)
    assert "<td>? 3-0</td><td><b>proposed, NOT confirmed</b></td>" in summary_html(example())


def test_who_confirmed_is_said() -> None:
    for text in both(confirmed()):
        assert "NOT ALL FACTS" not in text
        assert "NOT confirmed" not in text
        assert re.search(r"Confirmed as a whole by Hand clinic on 2031-03-2\d \d\d:\d\d \(UTC[+-]\d{4}\)\.", text)


def test_a_confirmation_hides_no_open_fact() -> None:
    record = confirmed()
    record.fact(STRANDS).status = "proposed"
    for text in both(record):
        assert "NOT ALL FACTS ARE CONFIRMED. 1 of 11" in text


def test_all_decided_but_not_confirmed_as_a_whole_is_said() -> None:
    record = confirmed()
    record.review.reviewer = None
    for text in both(record):
        assert "NOT ALL FACTS" not in text
        assert "Nobody has confirmed this record as a whole." in text


@pytest.mark.parametrize(
    "words",
    [
        "“six-strand”",
        "the note also says 4 (“four-strand”)",
        "8 to 10 mm",
        "corrected by a person",
        "added by a person",
        "not from the note: said by the surgeon on 2031-03-20",
        "not said outright: it follows from the words quoted",
        "look twice: thicker than most",
        "the note is silent",
        "Not stated in the note",
        "What the note does not say is not known to be good.",
        "Read by notereader 0.1.0.",
        *all_cautions(),
    ],
)
def test_evidence_rivals_silence_and_cautions_are_printed(words: str) -> None:
    for text in both(example()):
        assert words.lower() in text.lower()


def test_what_is_unknown_is_listed_and_what_is_known_is_not() -> None:
    text = summary_text(example())
    unknown = text[text.index("NOT STATED IN THE NOTE") : text.index("WITHDRAWN")]
    assert "peripheral suture" in unknown
    assert "core strands" not in unknown
    # A withdrawn fact is as unknown as one that was never read.
    assert "gap after repair" in unknown


def test_a_withdrawn_fact_is_no_finding() -> None:
    text = summary_text(example())
    findings, _, withdrawn = text.partition("WITHDRAWN")
    assert "Gap after repair: none" not in text
    assert "No gapping" not in findings
    assert "withdrawn: none" in withdrawn


def test_every_fact_is_printed_once() -> None:
    page = summary_html(example())
    assert page.count("<tr><td>") == len([*example().walk()])


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [
        (-10, -10, "10 degrees of extension"),
        (0, 0, "0 degrees of flexion"),
        (20, 30, "20 to 30 degrees of flexion"),
        (-30, -20, "20 to 30 degrees of extension"),
        (-10, 0, "0 to 10 degrees of extension"),
        (-10, 20, "10 degrees of extension to 20 degrees of flexion"),
        (30, None, "at least 30 degrees of flexion"),
        (None, 30, "at most 30 degrees of flexion"),
        (-30, None, "at most 30 degrees of extension"),
        (None, -30, "at least 30 degrees of extension"),
    ],
)
def test_a_joint_position_never_hangs_on_a_minus_sign(low: float | None, high: float | None, words: str) -> None:
    record = Record()
    place = Address("aftercare", field="wrist_flexion_deg")
    record.put(place, Fact(value=Interval(low=low, high=high), status="confirmed"))
    for text in both(record):
        assert f"Wrist position: {words} [" in text or f"Wrist position {words} confirmed" in text


def test_an_entry_without_facts_is_said_to_be_there() -> None:
    record = example()
    record.ensure(Address("pulleys", "middle", "A3"))
    for text in both(record):
        assert "middle a3 pulley entered, but nothing is recorded of it." in text.lower()


def test_an_empty_record_prints() -> None:
    for text in both(Record()):
        assert "Summary of an operative note" in text
        assert "Nobody has confirmed this record" in text


@pytest.mark.parametrize("harm", HARMFUL)
def test_nothing_in_a_record_is_taken_for_html(harm: str) -> None:
    harmless_page = Page(summary_html(poisoned("plain words")))
    page = Page(summary_html(poisoned(harm)))
    assert page.tags == harmless_page.tags
    assert page.attributes <= OWN_ATTRIBUTES
    assert page.others == []
    # Name, quotes, rival, look twice, said by and reviewer show it as it was written.
    assert page.text.count(shown(harm)) >= 7


@given(harm=st.text(st.characters(exclude_categories=["Cs"]), min_size=1))
def test_no_text_at_all_is_taken_for_html(harm: str) -> None:
    page = Page(summary_html(poisoned(harm)))
    assert set(page.tags) <= OWN_TAGS
    assert page.attributes <= OWN_ATTRIBUTES
    assert page.others == []


def test_characters_that_turn_the_writing_are_made_visible() -> None:
    assert shown("right\u202etfel\0\n end") == "right\ufffdtfel\ufffd end"
    assert "\u202e" not in summary_text(poisoned("a\u202eb")) + summary_html(poisoned("a\u202eb"))


def test_the_page_needs_nothing_from_elsewhere() -> None:
    page = summary_html(example())
    assert re.findall(r"(?:src|href|url)\s*[=(]", page) == []
    assert "http://" not in page
    assert "https://" not in page


def test_lines_of_the_text_fit_on_paper() -> None:
    record = example()
    record.put(Address("operation", field="side"), Fact(value="left", said_by="word " * 80))
    assert max(len(line) for line in summary_text(record).splitlines()) <= 92
