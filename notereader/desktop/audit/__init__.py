"""The audit in the window: choose what to read, watch it, look at figures and notes, confirm a sample, save the report.

`page` is the page of the window, the other files its parts. `desk` does the work and knows no Qt; it is loaded and
used in a thread of its own, so that nothing here loads the audit's libraries before they are needed.
"""
