"""Contrast of both themes after WCAG 2.2 AA: 4.5 for text (1.4.3), 3 for what is drawn (1.4.11)."""

import pytest

from notereader.desktop.rows import Standing
from notereader.desktop.themes import DARK, LIGHT, UNDERLINES, MarkKind, contrast

TEXT, DRAWN = 4.5, 3.0
BOTH = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)


def test_contrast_is_that_of_the_published_formula():
    # WCAG 2.2: black on white is 21; #767676 is known as the lightest grey on white that passes 4.5.
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.01)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.01)


@BOTH
def test_text(theme):
    for words in (theme.text, theme.muted, theme.trouble):
        for ground in (theme.window, theme.base, theme.row_in_hand, theme.band):
            assert contrast(words, ground) >= TEXT
    assert contrast(theme.on_accent, theme.accent) >= TEXT


@BOTH
def test_edges_and_focus(theme):
    for ground in (theme.window, theme.base, theme.row_in_hand):
        assert contrast(theme.edge, ground) >= DRAWN
        assert contrast(theme.accent, ground) >= DRAWN


@BOTH
@pytest.mark.parametrize("kind", MarkKind, ids=lambda kind: kind.name)
def test_marks(theme, kind):
    mark = theme.marks[kind]
    assert contrast(mark.letters, mark.ground) >= TEXT
    assert contrast(mark.line, mark.ground) >= DRAWN


@BOTH
@pytest.mark.parametrize("standing", Standing)
def test_words_of_standings_on_both_kinds_of_row(theme, standing):
    for doubt in (False, True):
        ink = theme.standing_ink(standing, doubt=doubt)
        assert contrast(ink, theme.base) >= TEXT
        assert contrast(ink, theme.row_in_hand) >= TEXT


@BOTH
def test_picture(theme):
    inks = theme.inks
    for words in (inks.words, inks.faint_words):
        assert contrast(words, inks.paper) >= TEXT
    for line in (inks.outline, inks.tendon_edge, inks.pulley_edge, inks.hatch, inks.suture):
        assert contrast(line, inks.skin) >= DRAWN
        assert contrast(line, inks.paper) >= DRAWN
    assert contrast(inks.suture, inks.tendon) >= DRAWN
    assert contrast(inks.tendon_edge, inks.tendon) >= DRAWN
    assert contrast(inks.pulley_edge, inks.pulley) >= DRAWN


@BOTH
def test_states_in_the_charts_of_an_audit(theme):
    """Stated, implied and contradictory are areas; silence is seen by its edge."""
    stated, implied, contradictory, _ = theme.states
    for shade in (stated, implied, contradictory, theme.muted, theme.trouble):
        assert contrast(shade, theme.base) >= DRAWN


def test_no_two_kinds_of_marks_differ_by_colour_alone():
    told_apart = [UNDERLINES[kind] for kind in MarkKind if kind is not MarkKind.IN_HAND]
    assert len(set(told_apart)) == len(told_apart)
    # The fact in hand shares its line with confirmed facts, but is set in reverse and has an arrow in the margin.
    for theme in (LIGHT, DARK):
        assert contrast(theme.marks[MarkKind.IN_HAND].ground, theme.base) >= DRAWN
        assert contrast(theme.marks[MarkKind.CONFIRMED].ground, theme.base) < DRAWN
