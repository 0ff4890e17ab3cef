"""Plain text: encodings, the one normalisation, and what is no text at all."""

import codecs

import pytest
from hypothesis import given
from hypothesis import strategies as st
from intake_making import NOTE

from notereader.intake import IntakeRefused, clean_text, read_bytes, read_text
from notereader.record import note_hash


@pytest.mark.parametrize("ending", ["\r\n", "\r", "\n", "\u2028", "\u2029", "\x85"])
def test_every_line_end_becomes_a_line_feed(ending: str) -> None:
    # The newline functions of the Unicode Standard, section 5.8, without form feed and vertical tab.
    assert clean_text(f"zone II{ending}FDP") == "zone II\nFDP"


def test_form_feed_and_vertical_tab_are_kept() -> None:
    assert clean_text("page\x0cline\x0b") == "page\x0cline\x0b"


@pytest.mark.parametrize("junk", ["\x00", "\ufdd0", "\ufdd1", "\ud800", "\udfff"])
def test_what_cannot_be_kept_goes(junk: str) -> None:
    assert clean_text(f"4{junk}-0") == "4-0"


@pytest.mark.parametrize("kept", ["\xa0", "\u200b", "\u200f", "\ufb01", "e\u0301", "\ufeff", "\x07", "\ufffc", "😀"])
def test_all_else_is_kept(kept: str) -> None:
    assert clean_text(f"a{kept}b") == f"a{kept}b"


def test_the_mark_at_the_start_goes_even_behind_junk() -> None:
    assert clean_text("\x00\ufeff\ufeffFDP") == "FDP"


def test_a_pair_of_surrogates_becomes_its_character() -> None:
    # The pair of U+1F600, the worked example of UTF-16 (RFC 2781) applied to another character.
    assert clean_text("\ud83d\ude00 \ude00\ud83d") == "😀 "


def test_line_ends_split_by_junk_are_one_line_end() -> None:
    assert clean_text("a\r\x00\nb") == "a\nb"


@given(st.text(st.characters()))
def test_cleaning_twice_changes_nothing(text: str) -> None:
    once = clean_text(text)
    assert clean_text(once) == once
    assert "\r" not in once
    once.encode("utf-8")
    assert note_hash(once) == note_hash(once.encode("utf-8").decode("utf-8"))


@pytest.mark.parametrize(
    "data",
    [
        NOTE.encode("utf-8"),
        codecs.BOM_UTF8 + NOTE.encode("utf-8"),
        codecs.BOM_UTF16_LE + NOTE.encode("utf-16-le"),
        codecs.BOM_UTF16_BE + NOTE.encode("utf-16-be"),
        codecs.BOM_UTF32_LE + NOTE.encode("utf-32-le"),
        NOTE.encode("utf-16-le"),
        NOTE.encode("utf-16-be"),
        NOTE.replace("\n", "\r\n").encode("utf-8"),
        NOTE.replace("\n", "\r").encode("utf-8"),
        NOTE.encode("utf-8") + b"\x00" * 40,
    ],
    ids=["utf8", "utf8-bom", "utf16le", "utf16be", "utf32", "utf16le-bare", "utf16be-bare", "crlf", "cr", "padded"],
)
def test_encodings_give_the_same_text_without_a_warning(data: bytes) -> None:
    note = read_bytes(data, "note.txt")
    assert (note.text, note.kind, note.warnings, note.name) == (NOTE, "txt", [], "note.txt")


def test_windows_1252_is_read_and_said() -> None:
    note = read_bytes("flexed 45° – “free” glide, ½ of A2".encode("cp1252"), "note.txt")
    assert note.text == "flexed 45° – “free” glide, ½ of A2"
    assert note.warnings == [
        "The file is not all UTF-8; 5 characters were read as Windows-1252 (° – “ ” ½). "
        "Check them against the original."
    ]


def test_one_windows_character_in_utf8_leaves_the_rest_alone() -> None:
    note = read_bytes("Größe 45".encode() + b"\xb0 flexion", "note.txt")
    assert note.text == "Größe 45° flexion"
    assert note.warnings[0].startswith("The file is not all UTF-8; 1 character was read as Windows-1252 (°).")


def test_bytes_that_no_encoding_has_are_shown_as_such() -> None:
    note = read_bytes(b"glide free \x81 today", "note.txt")
    assert note.text == "glide free \ufffd today"
    assert note.warnings == ["1 byte was not UTF-8 or Windows-1252 and shown as \ufffd. Check the original."]


def test_half_a_utf16_character_at_the_end_is_said() -> None:
    note = read_bytes(codecs.BOM_UTF16_LE + "repaired".encode("utf-16-le") + b"\x41", "note.txt")
    assert note.text == "repaired\ufffd"
    assert "1 byte was not UTF-16" in note.warnings[0]


@given(st.text(st.characters(codec="utf-8"), min_size=1))
def test_any_utf8_text_comes_through_as_it_is(text: str) -> None:
    try:
        note = read_bytes(("note: " + text).encode("utf-8"), "note.txt")
    except IntakeRefused as refused:
        assert "characters that nobody types" in str(refused)
    else:
        assert note.text == clean_text("note: " + text)


def test_pasted_text_is_cleaned_and_named() -> None:
    note = read_text("FDP repaired\r\nA2 vented")
    assert (note.text, note.name, note.kind) == ("FDP repaired\nA2 vented", "pasted text", "txt")
    assert not note.recognised


@pytest.mark.parametrize("text", ["", "   \n\t ", "\ufeff", "...\n--- ***"])
def test_pasted_nothing_is_refused(text: str) -> None:
    with pytest.raises(IntakeRefused) as refused:
        read_text(text)
    assert str(refused.value) == (
        "pasted text: There is no text in it. Choose the file that holds the note, or paste its text."
    )


def test_too_long_a_text_is_refused_and_the_limit_itself_is_not() -> None:
    assert len(read_text("a" * 2_000_000).text) == 2_000_000
    with pytest.raises(IntakeRefused, match=r"too long for a note: 1,000,001 characters; the limit is 2,000,000 bytes"):
        read_text("é" * 1_000_001)
    with pytest.raises(IntakeRefused, match="Cut out the operative note and read that alone"):
        read_bytes(b"a" * 5_000_000, "long.txt")


def test_a_single_line_of_many_words_is_read() -> None:
    text = "tendon " * 200_000
    assert read_bytes(text.encode(), "line.txt").text == text


def test_a_few_control_characters_are_no_reason_to_refuse() -> None:
    assert read_bytes(b"FDP repaired.\x07 A2 vented.\x1a", "note.txt").text == "FDP repaired.\x07 A2 vented.\x1a"


def test_control_characters_throughout_are_no_text() -> None:
    with pytest.raises(IntakeRefused) as refused:
        read_bytes(bytes(range(1, 9)) * 100, "note.txt")
    assert str(refused.value) == (
        "note.txt: This is not a text document: it holds characters that nobody types. "
        "Choose the file that holds the operative note."
    )
