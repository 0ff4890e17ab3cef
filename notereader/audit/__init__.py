"""Completeness of many notes: rates with intervals, charts, reader error, agreement."""
