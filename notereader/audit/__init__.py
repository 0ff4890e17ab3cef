"""Completeness of many notes: rates with intervals, charts over time, reader error, agreement, a report.

`audit` does the whole: Audit, Settings. `sources` opens what is to be audited, `faults` holds what can go wrong,
`command` is the same for the command line. Nothing is imported here, so that the command line's help stays quick.
"""
