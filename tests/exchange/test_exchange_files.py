import json
import multiprocessing
import os
import random
import stat
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import exchange_workers
import jsonschema
import pytest
from exchange_helpers import TEXT, confirmed, example, poisoned
from hypothesis import given
from hypothesis import strategies as st

from notereader.exchange import ExportFault, read_record, write_file, write_record
from notereader.record import RecordRefused, record_schema

AS_ROOT = sys.platform == "linux" and os.geteuid() == 0


def test_an_exported_record_opens_again_with_its_note(tmp_path: Path) -> None:
    for record in (example(), confirmed()):
        write_record(record, tmp_path / "Übung 1.json")
        assert read_record(tmp_path / "Übung 1.json") == record


def test_the_note_can_be_left_out(tmp_path: Path) -> None:
    write_record(example(), tmp_path / "record.json", text=False)
    again = read_record(tmp_path / "record.json")
    assert again.note.text is None
    assert again.note.sha256 == example().note.sha256
    assert TEXT not in (tmp_path / "record.json").read_text(encoding="utf-8")
    assert [*again.walk()] == [*example().walk()]


@pytest.mark.parametrize("text", [True, False])
def test_the_file_meets_the_published_schema(tmp_path: Path, text: bool) -> None:
    """JSON Schema, draft 2020-12."""
    write_record(confirmed(), tmp_path / "record.json", text=text)
    schema = record_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(json.loads((tmp_path / "record.json").read_bytes()))


@given(harm=st.text(st.characters(exclude_categories=["Cs"]), min_size=1))
def test_any_text_comes_back_as_it_was(tmp_path_factory: pytest.TempPathFactory, harm: str) -> None:
    path = tmp_path_factory.getbasetemp() / "any.json"
    write_record(poisoned(harm), path)
    assert read_record(path) == poisoned(harm)


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_files_are_readable_by_their_owner_only(tmp_path: Path) -> None:
    path = tmp_path / "record.json"
    path.write_text("old")
    path.chmod(0o666)
    write_record(example(), path)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert [place.name for place in tmp_path.iterdir()] == ["record.json"]


@pytest.mark.skipif(sys.platform == "win32", reason="links need rights there")
def test_a_link_is_followed_and_stays(tmp_path: Path) -> None:
    (tmp_path / "real.json").write_text("old")
    (tmp_path / "link.json").symlink_to("real.json")
    write_record(example(), tmp_path / "link.json")
    assert (tmp_path / "link.json").is_symlink()
    assert read_record(tmp_path / "real.json") == example()


@pytest.mark.parametrize("place", ["missing/folder/x.json", "file/x.json", "folder"])
def test_a_place_that_cannot_be_written_is_said_so(tmp_path: Path, place: str) -> None:
    (tmp_path / "file").write_text("in the way")
    (tmp_path / "folder").mkdir()
    with pytest.raises(ExportFault, match=r"could not be written.*Nothing there was changed"):
        write_record(example(), tmp_path / place)
    assert sorted(found.name for found in tmp_path.rglob("*")) == ["file", "folder"]


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 64 kilobytes."""
    if not AS_ROOT or subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", tmp_path]).returncode:
        pytest.skip("no small disk can be mounted here")
    yield tmp_path
    subprocess.run(["umount", "-l", tmp_path], check=True)


def test_a_full_disk_leaves_the_old_file_whole(small_disk: Path) -> None:
    write_file(small_disk / "old.txt", "old")
    with pytest.raises(ExportFault, match="No space left"):
        write_file(small_disk / "old.txt", "new" * 100_000)
    assert (small_disk / "old.txt").read_text() == "old"
    assert [place.name for place in small_disk.iterdir()] == ["old.txt"]


def test_a_process_killed_while_exporting_leaves_a_whole_file(tmp_path: Path) -> None:
    methods = multiprocessing.get_all_start_methods()
    context = multiprocessing.get_context("forkserver" if "forkserver" in methods else "spawn")
    context.set_forkserver_preload(["notereader.exchange"])
    path = tmp_path / "record.json"
    chance = random.Random(5)
    for _ in range(20):
        ours, theirs = context.Pipe(duplex=False)
        worker = context.Process(target=exchange_workers.export_until_killed, args=(path, theirs))
        worker.start()
        ours.recv()
        time.sleep(chance.random() * 0.02)
        worker.kill()
        worker.join()
        assert len([*read_record(path).walk()]) == 11


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "no readable JSON"),
        (b"\xff\xfe\x00", "no readable JSON"),
        (b"[" * 200_000, "no readable JSON"),
        (b'{"a": ' * 100_000 + b"1" + b"}" * 100_000, "no readable JSON"),
        (b"[]", "no record"),
        (b"{}", "no notereader record"),
        (b'{"format": "notereader-record", "format_version": 2}', "newer notereader"),
    ],
)
def test_a_file_that_is_no_record_is_refused_by_name(tmp_path: Path, content: bytes, words: str) -> None:
    (tmp_path / "odd.json").write_bytes(content)
    with pytest.raises(RecordRefused, match=words) as caught:
        read_record(tmp_path / "odd.json")
    assert "odd.json" in str(caught.value)


def test_a_record_changed_by_hand_is_refused(tmp_path: Path) -> None:
    write_record(example(), tmp_path / "record.json")
    raw = json.loads((tmp_path / "record.json").read_bytes())
    raw["note"]["text"] = raw["note"]["text"].replace("six-strand", "ten-strand")
    (tmp_path / "record.json").write_text(json.dumps(raw))
    with pytest.raises(RecordRefused, match="checksum differs"):
        read_record(tmp_path / "record.json")


def test_a_missing_or_huge_file_is_refused_by_name(tmp_path: Path) -> None:
    with pytest.raises(RecordRefused, match=r"none\.json could not be read"):
        read_record(tmp_path / "none.json")
    with (tmp_path / "huge.json").open("wb") as stream:
        stream.truncate(200 * 2**20)
    with pytest.raises(RecordRefused, match="larger than"):
        read_record(tmp_path / "huge.json")
