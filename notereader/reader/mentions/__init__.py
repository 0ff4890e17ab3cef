"""Steps 3 and 4, mentions and measures: terms of the vocabulary, figures with their units, and dates."""
