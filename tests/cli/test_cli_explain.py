"""notereader explain: words, rule, reasons to look twice and rivals of every fact, as a person reads them."""

import re
from pathlib import Path

import pytest
from cli_running import NO_REPAIR, NOTE, saved_note

from notereader.cli import main
from notereader.commands.explaining import explained
from notereader.intake import NoteText, WordConfidence
from notereader.reader import read
from notereader.reading import read_note
from notereader.record import Evidence, Fact, Interval, Note, Record, Remark, Rival, dump_record

Output = pytest.CaptureFixture[str]


def explanation(tmp_path: Path, capsys: Output, text: str = NOTE) -> str:
    """Return what the command prints of a note."""
    assert main(["explain", str(saved_note(tmp_path, text=text))]) == 0
    return capsys.readouterr().out


def test_every_fact_stands_with_its_words_line_and_rule(tmp_path: Path, capsys: Output) -> None:
    out = explanation(tmp_path, capsys)
    record = read(NOTE)
    lines = NOTE.split("\n")
    quoted = re.findall(r"line (\d+): “(.*?)”", out)
    assert len(quoted) >= len([fact for _, fact in record.walk()])
    for number, words in quoted:
        # A quote that goes over a line's end is shown on one line.
        rest = " ".join(lines[int(number) - 1 :])
        assert words in rest, f"'{words}' does not begin in line {number}"
    assert out.count("decided by: ") == sum(fact.rule is not None for _, fact in record.walk())


def test_rivals_are_shown_with_their_words_and_the_fact_is_marked(tmp_path: Path, capsys: Output) -> None:
    out = explanation(tmp_path, capsys)
    # The heading says two strands, the text four; the weaker one is proposed.
    assert re.search(r"^! Core strands: 2$", out, re.MULTILINE)
    assert re.search(r"the note also states: 4\n +line 4: “four-strand”", out)


def test_what_only_follows_from_a_name_is_called_implied(tmp_path: Path, capsys: Output) -> None:
    text = "The FPL of the thumb was completely divided and repaired with a modified Kessler of 3-0 nylon."
    out = explanation(tmp_path, capsys, text)
    assert "Core strands: 2 (implied, not said outright)" in out
    assert "look twice: the note gives no count" in out


def test_a_note_without_a_repair_says_so(tmp_path: Path, capsys: Output) -> None:
    out = explanation(tmp_path, capsys, NO_REPAIR)
    assert "REMARKS ON THE NOTE" in out
    assert "No repair of a flexor tendon was found in this note." in out


def test_the_cautions_stand_first(tmp_path: Path, capsys: Output) -> None:
    out = explanation(tmp_path, capsys)
    assert out.index("CAUTIONS") < out.index("INDEX FDP" if "INDEX FDP" in out else "RING FDP")
    assert "judgement of a licensed clinician decide" in " ".join(out.split())
    assert "does not mean that it was not done" in " ".join(out.split())


def test_extension_is_not_shown_as_a_minus(tmp_path: Path, capsys: Output) -> None:
    assert "Wrist position: 20 degrees of extension" in explanation(tmp_path, capsys)


@pytest.mark.parametrize(
    ("angle", "words"),
    [
        (Interval(low=-30, high=-20), "20 to 30 degrees of extension"),
        (Interval(low=None, high=-20), "at least 20 degrees of extension"),
        (Interval(low=0, high=0), "0 degrees of flexion"),
        (Interval(low=30, high=45), "30 to 45 degrees of flexion"),
    ],
)
def test_angles_in_words(angle: Interval, words: str) -> None:
    record = Record(aftercare={"wrist_flexion_deg": Fact(value=angle)})
    assert f"Wrist position: {words}\n" in explained(record)


def test_a_record_is_explained_with_where_it_stands(tmp_path: Path, capsys: Output) -> None:
    record = read(NOTE, "ring.txt")
    first = next(fact for _, fact in record.walk())
    first.status = "corrected"
    path = tmp_path / "ring.json"
    path.write_text(dump_record(record), encoding="utf-8")
    assert main(["explain", str(path)]) == 0
    out = capsys.readouterr().out
    assert out.count("[corrected by a person]") == 1
    count = len(list(record.walk()))
    assert f"{count} facts, {count - 1} of them proposed" in out


def test_a_record_without_text_gives_positions(tmp_path: Path, capsys: Output) -> None:
    path = tmp_path / "ring.json"
    path.write_text(dump_record(read(NOTE), text=False), encoding="utf-8")
    assert main(["explain", str(path)]) == 0
    assert f"character {NOTE.index('four-strand')}: “four-strand”" in capsys.readouterr().out


def test_what_could_play_tricks_on_a_terminal_is_shown_as_a_mark() -> None:
    text = "\x1b[2Jno \u202egap\n"
    quote = Evidence.at(text, 0, len(text), "")
    record = Record(
        note=Note.of(text, "a\x1b[31m.txt"),
        remarks=[Remark(text="said\x07 so", evidence=[quote])],
        operation={"side": Fact(value="left", evidence=[quote], rivals=[Rival(value="right")], rule="a\x9brule")},
    )
    out = explained(record)
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e]", out)
    assert "“\ufffd[2Jno \ufffdgap”" in out


def test_a_word_that_was_hardly_legible_is_a_reason_to_look_twice() -> None:
    start = NOTE.index("4-0")
    words = [WordConfidence(start, start + 3, 41), WordConfidence(start + 4, start + 11, 96)]
    record = read_note(NoteText(NOTE, "scan.pdf", "pdf", ["Recognised from a picture."], words))
    doubtful = [place.field for place, fact in record.walk() if any("guess" in reason for reason in fact.look_twice)]
    assert doubtful == ["size"]
    assert "'4-0' is little more than a guess" in explained(record)
    assert "Recognised from a picture." in [remark.text for remark in record.remarks]


def test_a_sure_word_is_none() -> None:
    words = [WordConfidence(k, k + 1, 95) for k in range(len(NOTE))]
    record = read_note(NoteText(NOTE, "scan.pdf", "pdf", [], words))
    assert not any("guess" in reason for _, fact in record.walk() for reason in fact.look_twice)


def test_a_word_that_may_be_another_is_a_reason_to_look_twice() -> None:
    start = NOTE.index("4-0")
    record = read_note(NoteText(NOTE, "scan.pdf", "pdf", [], [WordConfidence(start, start + 3, 84)]))
    reasons = {place.field: fact.look_twice for place, fact in record.walk()}
    assert "the picture is hard to read here: '4-0' may be another word" in reasons["size"]
