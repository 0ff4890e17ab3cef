"""What is drawn, and the same in words: unknown is never absent and never intact."""

from xml.etree import ElementTree

import pytest
from desktop_samples import sample_record
from PySide6.QtGui import QImage

from notereader.desktop.finger import PULLEYS, digits_to_draw, drawing_of, first_to_draw
from notereader.desktop.finger_painter import WIDTH, draw_picture, height_of
from notereader.desktop.finger_shape import SHAPES
from notereader.desktop.picture_view import image_of, png_of, save_picture, svg_of
from notereader.desktop.themes import DARK, LIGHT
from notereader.record import Address, Fact, Record
from notereader.vocabulary import field_specs

RING = Address("repairs", "ring", "FDP")
SAMPLES = ("02-terse-ring", "03-thumb-fpl", "13-saw-respectively", "16-wrist-many-tendons")


def record_with(**facts):
    record = Record()
    for name, value in facts.items():
        record.put(RING.field_of(name), Fact(value=value, status="confirmed"))
    return record


def with_pulley(finding, status="confirmed", **more):
    record = record_with(treatment="repaired", zone="II")
    for name, value in {"finding": finding, **more}.items():
        if value is not None:
            record.put(Address("pulleys", "ring", "A2", None, name), Fact(value=value, status=status))
    return record


def image(record, digit="ring"):
    return image_of(drawing_of(record, digit), 2)


def test_unknown_is_called_unknown_never_absent_and_never_intact():
    words = drawing_of(record_with(treatment="repaired"), "ring").words()
    assert "Not mentioned, so unknown: A5, C3, A4, C2, A3, C1, A2, A1." in words
    assert "intact" not in words and "absent" not in words
    assert "core strands: not stated" in words
    assert "peripheral suture: not stated" in words
    assert "gap after repair: not stated" in words
    assert "level not stated" in words


def test_the_first_picture_is_the_digit_that_was_sewn():
    """Not a finger that was only looked at, and not the wrist because a tendon there was seen intact."""
    assert first_to_draw(sample_record("03-thumb-fpl")) == "thumb"
    assert first_to_draw(sample_record("13-saw-respectively")) == "middle"
    assert first_to_draw(record_with(extent="intact")) == "ring"
    assert first_to_draw(Record()) is None


def test_proposed_values_are_called_proposed():
    record = record_with(treatment="repaired")
    record.put(RING.field_of("strands"), Fact(value=4))
    record.put(Address("pulleys", "ring", "A2", None, "finding"), Fact(value="intact"))
    words = drawing_of(record, "ring").words()
    assert "core strands: 4 (proposed)" in words
    assert "A2 pulley: intact (proposed)." in words


@pytest.mark.parametrize(("status", "mark"), [("proposed", " (proposed)"), ("confirmed", "")])
def test_each_figure_of_a_cut_is_marked_by_itself(status, mark):
    record = record_with(extent="partial")
    record.put(RING.field_of("extent_percent"), Fact(value=40, status=status))
    assert f"partial cut, 40 %{mark};" in drawing_of(record, "ring").words()
    record.put(RING.field_of("extent"), Fact(value="partial", status="proposed"))
    assert f"partial cut (proposed), 40 %{mark};" in drawing_of(record, "ring").words()


def test_withdrawn_and_silent_facts_are_unknown():
    record = record_with(treatment="repaired")
    record.put(RING.field_of("strands"), Fact(value=4, status="withdrawn"))
    record.put(Address("pulleys", "ring", "A2", None, "finding"), Fact(value=None, basis="silent", status="confirmed"))
    words = drawing_of(record, "ring").words()
    assert "core strands: not stated" in words
    assert "A2" in words.split("Not mentioned, so unknown:")[1]


@pytest.mark.parametrize("finding", field_specs()["pulleys"]["finding"].values)
def test_every_state_of_a_pulley_is_drawn_unlike_every_other_and_unlike_unknown(qapp, finding):
    states = (None, *field_specs()["pulleys"]["finding"].values)
    mine = image(with_pulley(finding))
    part = mine.copy(0, 0, mine.width() * 68 // 100, mine.height())  # without the words beside it
    for other in states:
        if other != finding:
            theirs = image(with_pulley(other))
            assert part != theirs.copy(0, 0, theirs.width() * 68 // 100, theirs.height()), (
                f"{finding} looks like {other}"
            )


def test_proposed_and_confirmed_are_drawn_unlike(qapp):
    for finding in field_specs()["pulleys"]["finding"].values:
        assert image(with_pulley(finding)) != image(with_pulley(finding, status="proposed"))


def test_how_much_and_where_a_pulley_was_opened_is_drawn(qapp):
    proximal = image(with_pulley("vented", part="proximal", extent_percent=30))
    assert proximal != image(with_pulley("vented", part="distal", extent_percent=30))
    assert proximal != image(with_pulley("vented", part="proximal", extent_percent=60))
    assert (
        "A2 pulley: vented, proximal, 30 %."
        in drawing_of(with_pulley("vented", part="proximal", extent_percent=30), "ring").words()
    )
    assert "how much is not stated" in drawing_of(with_pulley("vented"), "ring").words()


def test_strands_and_peripheral_suture_are_drawn(qapp):
    base = dict(treatment="repaired", zone="II", peripheral="present")
    pictures = [image(record_with(**base, strands=count)) for count in (1, 2, 4, 6, 8, 16)]
    pictures.append(image(record_with(**base)))
    pictures.append(image(record_with(**{**base, "peripheral": "absent"}, strands=4)))
    pictures.append(image(record_with(treatment="repaired", zone="II", strands=4)))
    pictures.append(image(record_with(**base, strands=4, gap="seen")))
    for number, one in enumerate(pictures):
        assert all(one != other for other in pictures[number + 1 :])


@pytest.mark.parametrize("zone", field_specs()["repairs"]["zone"].values)
def test_the_cut_is_drawn_at_the_level_of_every_zone(qapp, zone):
    known = image(record_with(treatment="repaired", zone=zone))
    assert known != image(record_with(treatment="repaired"))
    thumb = Record()
    thumb.put(Address("repairs", "thumb", "FPL", None, "treatment"), Fact(value="repaired"))
    thumb.put(Address("repairs", "thumb", "FPL", None, "zone"), Fact(value=zone))
    assert f"zone {zone}" in drawing_of(thumb, "thumb").words()
    assert not image(thumb, "thumb").isNull()


def test_levels_run_from_the_tip_to_the_forearm():
    for kind, shape in SHAPES.items():
        zones = list(shape.zones.values())
        assert zones == sorted(zones), kind
        assert all(top < bottom for top, bottom in zones)
        assert set(shape.pulleys) == set(PULLEYS[kind])
    finger = SHAPES["finger"]
    levels = [finger.level(zone) for zone in ("IA", "IB", "IC", "IIA", "IIB", "IIC", "IID", "III", "IV", "V")]
    assert levels == sorted(levels)


@pytest.mark.parametrize("sample", SAMPLES)
def test_svg_and_png_of_every_digit(qapp, tmp_path, sample):
    record = sample_record(sample)
    assert digits_to_draw(record)
    for digit in digits_to_draw(record):
        drawing = drawing_of(record, digit)
        root = ElementTree.fromstring(svg_of(drawing))
        assert root.tag.endswith("svg")
        described = [element.text for element in root.iter() if element.tag.endswith("desc")]
        assert drawing.words() in described
        assert QImage.fromData(png_of(drawing)).width() == round(WIDTH * 3)
        for name in ("finger.svg", "finger.png"):
            save_picture(drawing, tmp_path / name)
            assert (tmp_path / name).stat().st_size > 1000


def test_both_themes_draw_within_the_picture(qapp):
    from PySide6.QtGui import QPainter

    drawing = drawing_of(sample_record("13-saw-respectively"), "middle")
    for inks in (LIGHT.inks, DARK.inks):
        canvas = QImage(round(WIDTH) + 40, round(height_of(drawing)) + 40, QImage.Format.Format_RGB32)
        canvas.fill(0x123456)
        painter = QPainter(canvas)
        painter.translate(20, 20)
        draw_picture(painter, drawing, inks)
        painter.end()
        edge = [canvas.pixel(x, y) & 0xFFFFFF for x in (5, canvas.width() - 6) for y in range(canvas.height())]
        edge += [canvas.pixel(x, y) & 0xFFFFFF for y in (5, canvas.height() - 6) for x in range(canvas.width())]
        assert set(edge) == {0x123456}


def test_saving_where_nothing_can_be_saved_raises_oserror(qapp, tmp_path):
    with pytest.raises(OSError):
        save_picture(drawing_of(record_with(treatment="repaired"), "ring"), tmp_path / "missing" / "finger.svg")
