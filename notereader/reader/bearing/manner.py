"""How a group of tendons stands in its sentence: spoken of, only compared with, left out, or named in passing."""

from notereader.reader.bearing.left_out import excepted_behind, is_left_out, is_set_against
from notereader.reader.bearing.likened import is_likened_to, is_measured_by, is_told_apart, likens_all, opens_likeness
from notereader.reader.bearing.named_for_place import is_a_place, is_between_slips, is_only_reached
from notereader.reader.groups import Group
from notereader.reader.page import Page, Sentence
from notereader.reader.standing.lending import NEIGHBOURING, lends_itself
from notereader.reader.standing.none_but import is_the_only_one


def mark_manner(page: Page, group: Group, sentence: Sentence) -> None:
    """Note where a group is only compared with, left out or named in passing."""
    lead = _led_up_by(page, group, sentence)
    if opens_likeness(lead):
        group.reference = likens_all(page, group, sentence, lead)
    if (
        is_likened_to(page, group, sentence, lead)
        or is_measured_by(page, group, sentence, lead)
        or is_told_apart(page, group, sentence, lead)
        or is_set_against(page, group, sentence, lead)
        or (bool(group.tendons or group.generic) and is_only_reached(page, group, sentence))
        or (bool(group.tendons) and not group.digits and is_a_place(page, group, sentence, lead))
        or (bool(group.tendons) and is_between_slips(page, group, sentence))
        or lends_itself(page, group, sentence)
        or (bool(group.tendons) and _has_no_answer(page, group, sentence))
    ):
        group.reference = True
    if excepted_behind(page, group, sentence):
        group.excepted = group.reference = True
    elif is_left_out(page, group, sentence, lead):
        group.excepted = True
    left_out = group.tendons and (group.excepted or group.reference)
    if left_out and is_the_only_one(page, group.i, sentence.i, sentence.j):
        group.excepted = group.reference = False


def _has_no_answer(page: Page, group: Group, sentence: Sentence) -> bool:
    """'FDP off the bone; FDS n/a': nothing is told of it, here or in what follows."""
    k = group.j + (page.words[group.j : group.j + 1] in ([":"], ["-"], ["="]))
    return k < sentence.j and any(page.words[k : k + len(said)] == said for said in _NOT_APPLICABLE)


_NOT_APPLICABLE = (["n", "/", "a"], ["n.a"], ["n", ".", "a"], ["not", "applicable"])


def _led_up_by(page: Page, group: Group, sentence: Sentence) -> list[str]:
    """Return the two or three words that lead up to a group, but for 'the', 'in the neighbouring'."""
    lead = page.words[max(sentence.i, group.i - 3) : group.i]
    if lead[-1:] != [] and lead[-1] in NEIGHBOURING:
        lead = page.words[max(sentence.i, group.i - 4) : group.i - 1]  # 'tighter than the neighbouring ring finger'
    return lead[:-1] if lead[-1:] in (["the"], ["its"], ["in"], ["for"], ["on"], ["with"]) else lead
