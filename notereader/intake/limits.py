"""The limits at the door. A file beyond one of them is refused in plain words, never cut short in silence."""

from notereader.intake.note import IntakeRefused

# An operative note is a few kilobytes; a whole patient file is still well under these.
MAX_FILE_BYTES = 50_000_000
MAX_TEXT_BYTES = 2_000_000  # of the note's text in UTF-8
MAX_PAGES = 200

# A text can take at most four times its UTF-8 size, in UTF-32; anything longer need not be decoded to be refused.
MAX_RAW_TEXT_BYTES = 4 * MAX_TEXT_BYTES

# A .docx is a zip archive: what its parts may unpack to. A few kilobytes can claim to be gigabytes.
MAX_PARTS = 5_000
MAX_UNPACKED_BYTES = 250_000_000
MAX_XML_BYTES = 60_000_000  # of the parts that become a tree in memory, several times their size

# What a parser working in its own process may take before it is stopped.
PARSE_SECONDS = 8.0  # of work
PARSE_PATIENCE = 3  # times as long by the clock, for a machine that is busy with other things
PARSE_MEMORY_BYTES = 1_000_000_000

# Recognising the words of a picture takes seconds per page, so it has limits of its own.
MAX_SCANNED_PAGES = 20
MAX_PICTURE_PIXELS = 60_000_000
RECOGNITION_SECONDS = 90.0  # of all pages together
PAGE_RECOGNITION_SECONDS = 30.0


def refuse_long(characters: int, size: int) -> None:
    """Raise IntakeRefused where a text is longer than the limit; `size` is its length in bytes of UTF-8."""
    if size > MAX_TEXT_BYTES:
        raise IntakeRefused(
            f"The text is too long for a note: {characters:,} characters; the limit is {MAX_TEXT_BYTES:,} bytes.",
            "Cut out the operative note and read that alone.",
        )
