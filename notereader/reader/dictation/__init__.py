"""Dictation without stops: statements are cut where a new subject begins."""
