"""Whether 'middle' or 'small' beside the name of a pulley is a finger, or a part of the pulley."""

from notereader.reader.page import Break, Mention, Page, within

_SHORT_NAMES = frozenset(["long", "middle", "little", "small"])
_PART_NOUNS = frozenset(["third", "half", "part", "portion", "fifth", "segment"])
_ROW_LEADS = frozenset([":", ",", ";", "/", "-"])
_STATES = ("opened", "deed", "extent")
_LONG_ROW = 24  # words


def named_as_digit(page: Page, mention: Mention) -> bool:
    """Tell whether the note names the same finger beyond doubt elsewhere."""
    return any(m.kind == "digit" and m.value == mention.value for m in page.mentions)


def finger_of_pulley(page: Page, mention: Mention) -> bool:
    """Tell whether a short name before or behind a pulley's is the finger it is of."""
    return _before_pulley(page, mention) or _after_pulley(page, mention) or _in_row_of_pulley(page, mention)


def part_of_pulley(page: Page, mention: Mention) -> bool:
    """'A2: middle 3 mm window cut', 'A4 middle third vented': a part, where a measure follows a pulley's name."""
    words, i, j = page.words, mention.i, mention.j
    if words[i] not in ("middle", "mid") or j >= len(words):
        return False
    k = i - (words[i - 1] in (":", "-", "=", ","))
    measured = words[j] in _PART_NOUNS or (
        words[j].isdecimal() and words[j + 1 : j + 2] in (["mm"], ["%"], ["millimetres"])
    )
    return measured and any(m.kind == "pulley" and m.j == k for m in within(page.mentions, k - 3, k))


def _before_pulley(page: Page, mention: Mention) -> bool:
    """'Small A2 preserved', 'the middle A2': a digit before the short name of a pulley, spoken of elsewhere too."""
    if not any(m.i == mention.j and m.kind == "pulley" for m in within(page.mentions, mention.j, mention.j + 1)):
        return False
    if page.words[mention.i] not in ("small", "little", "long", "middle") or page.breaks[mention.j] >= Break.COLUMN:
        return False
    spelt = any(m.i == mention.j and m.j == mention.j + 2 for m in within(page.mentions, mention.j, mention.j + 1))
    if not page.words[mention.j][1:2].isdecimal() and not (spelt and page.words[mention.j] == "a"):
        return False  # 'A2', or as a dictation spells it, 'a two'
    named = {m.value for m in page.mentions if m.kind == "digit"}
    if page.words[mention.i - 1] in ("the", "a") and page.words[mention.i - 2] != "in":
        told = page.words[mention.j + 1 : mention.j + 2]  # 'The middle A2 was vented', but 'the middle A2 third'
        several = len(named) > 1 or told in (["was"], ["is"], ["pulley"], ["had"])
        if page.words[mention.i - 1] == "a" or not several:
            return False
    return mention.value in named


def _after_pulley(page: Page, mention: Mention) -> bool:
    """'A2 of small was torn', 'the A4 of the little': a short name behind a pulley's, spoken of elsewhere too."""
    words, i = page.words, mention.i
    if words[i] not in ("small", "little", "long", "middle") or mention.j - i > 1:
        return False
    k = i - 1 - (words[i - 1] == "the")
    if words[k] not in ("of", "in"):
        return False
    k -= words[k - 1] == "pulley"
    if not any(m.kind == "pulley" and m.j == k for m in within(page.mentions, k - 2, k)):
        return False
    return named_as_digit(page, mention)


def _in_row_of_pulley(page: Page, mention: Mention) -> bool:
    """'A2: middle repaired, small excised', 'A4 ring vented, middle intact': fingers told one by one of a pulley."""
    if page.words[mention.i] not in _SHORT_NAMES or mention.j - mention.i > 1 or not named_as_digit(page, mention):
        return False
    before = [m for m in within(page.mentions, mention.i - _LONG_ROW, mention.i) if m.kind == "pulley"]
    if not before or not _told_in_row(page, mention) or "." in page.words[before[-1].j : mention.i]:
        return False
    row = within(page.mentions, before[-1].j, mention.i + _LONG_ROW)
    others = (m for m in row if m.kind in ("digit", "digit?") and m.value != mention.value)
    return any(
        "." not in page.words[min(m.i, mention.i) : max(m.i, mention.i)]
        and _told_in_row(page, m)
        and named_as_digit(page, m)
        for m in others
    )


def _told_in_row(page: Page, m: Mention) -> bool:
    """Tell whether a name opens an item of a row and a state, or another name, follows at once."""
    pulley = any(p.kind == "pulley" and p.j == m.i for p in within(page.mentions, m.i - 2, m.i))
    if not pulley and page.words[m.i - 1] not in _ROW_LEADS:
        return False
    return page.words[m.j : m.j + 1] == ["/"] or any(s.kind in _STATES for s in within(page.mentions, m.j, m.j + 2))
