"""Lets `python -m notereader.intake` be a parsing process."""

from notereader.intake.worker import serve_if_asked

serve_if_asked()
