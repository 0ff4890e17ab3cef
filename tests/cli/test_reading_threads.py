"""Reading from several threads at once: the same records as one after another."""

import threading
from concurrent.futures import ThreadPoolExecutor

from cli_running import NO_REPAIR, NOTE

from notereader.reader import read
from notereader.record import dump_record
from notereader.vocabulary import samples_folder

TEXTS = [path.read_text(encoding="utf-8") for path in sorted(samples_folder().glob("*.txt"))] + [NOTE, NO_REPAIR]


def test_threads_read_what_one_thread_reads() -> None:
    alone = [dump_record(read(text, str(number))) for number, text in enumerate(TEXTS)]
    rounds = 4
    with ThreadPoolExecutor(max_workers=8) as pool:
        jobs = [pool.submit(read, text, str(number)) for _ in range(rounds) for number, text in enumerate(TEXTS)]
        together = [dump_record(job.result()) for job in jobs]
    assert together == alone * rounds


def test_the_first_reading_may_come_from_several_threads_at_once() -> None:
    """In a process of its own, for here the reader is loaded already."""
    import subprocess
    import sys

    program = """
import threading
from notereader.reader import read
start, found = threading.Barrier(6), []
def work():
    start.wait()
    found.append(len(list(read("FDP of the ring finger was repaired with 4-0 nylon.").walk())))
threads = [threading.Thread(target=work) for _ in range(6)]
for thread in threads: thread.start()
for thread in threads: thread.join()
assert len(found) == 6 and len(set(found)) == 1 and found[0] > 0, found
"""
    subprocess.run([sys.executable, "-c", program], check=True, timeout=120)


def test_reading_leaves_nothing_behind_in_other_threads() -> None:
    before = threading.active_count()
    read(NOTE)
    assert threading.active_count() == before
