"""notereader check-resources: faults of the files that hold the trade's words and figures."""

from argparse import ArgumentParser, Namespace
from collections.abc import Iterator
from pathlib import Path

from pydantic import BaseModel

from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, put, say
from notereader.vocabulary import resource_folder
from notereader.vocabulary.checking import Files, check_resources, read_resources
from notereader.vocabulary.faults import EntryFault, model_faults
from notereader.vocabulary.terms import TERM_FILES

# Words under a heading of this form are matched by the reader.
_MATCHED = ("words", "exact", "aliases")


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument(
        "folder",
        nargs="?",
        type=Path,
        metavar="FOLDER",
        help="folder with the .toml files; without it, the program's own",
    )


def run(arguments: Namespace) -> int:
    """Print each fault on a line of its own. Return the exit status."""
    folder = arguments.folder or resource_folder()
    if not folder.is_dir():
        say(f"{folder} is no folder. Give the one that holds the .toml files.")
        return WRONG_CALL
    faults = resource_faults(folder)
    for fault in faults:
        put(str(fault))
    number = len(read_resources(folder)[0])
    say(f"{number} files in {folder}: {f'{len(faults)} faults' if faults else 'no faults found'}.")
    return REFUSED if faults else DONE


def resource_faults(folder: Path) -> list[EntryFault]:
    """Return every fault of the files: of words and names, of the shape each room asks for, and words never matched."""
    files, _ = read_resources(folder)
    faults = [*check_resources(folder), *_shape_faults(files)]
    # The reader is built from the program's own files; with broken ones there is none to ask.
    return faults or list(_unmatched(files))


def _shape_faults(files: Files) -> Iterator[EntryFault]:
    for name, model in _models().items():
        if name in files:
            yield from model_faults(name, "", model, files[name])


def _models() -> dict[str, type[BaseModel]]:
    """Return the model of each file that a room above the vocabulary reads."""
    from notereader.appraisal.cautions import CautionTables
    from notereader.appraisal.checks import CheckTables
    from notereader.appraisal.completeness import NeedTables, OwedTables
    from notereader.appraisal.glide_tables import GlideTables
    from notereader.appraisal.margin import LoadTables
    from notereader.appraisal.questions import QuestionTables
    from notereader.appraisal.strength_tables import Healing, StrengthTables
    from notereader.appraisal.timeline import TimeTables
    from notereader.audit.tables import AuditTables
    from notereader.practice.words import PracticeTables
    from notereader.sharing.tables import IdentifierTables

    return {
        "audit.toml": AuditTables,
        "cautions.toml": CautionTables,
        "checks.toml": CheckTables,
        "glide.toml": GlideTables,
        "healing.toml": Healing,
        "identifiers.toml": IdentifierTables,
        "load.toml": LoadTables,
        "needs.toml": NeedTables,
        "owed.toml": OwedTables,
        "practice.toml": PracticeTables,
        "questions.toml": QuestionTables,
        "strength.toml": StrengthTables,
        "timeline.toml": TimeTables,
    }


def _unmatched(files: Files) -> Iterator[EntryFault]:
    """Yield the words that the reader splits in another way within a sentence, so that it never finds them."""
    from notereader.reader.pipeline import language

    nlp = language()
    for file, place, word in _words(files):
        alone = [token.text for token in nlp.make_doc(word)]
        within = [token.text for token in nlp.make_doc(f"seen {word} here")]
        if not alone or not any(within[k : k + len(alone)] == alone for k in range(len(within))):
            yield EntryFault(
                file,
                place,
                f"'{word}' is never found in a sentence",
                "write it as a note would, in plain letters and figures",
            )


def _words(files: Files) -> Iterator[tuple[str, str, str]]:
    """Yield file, entry and word for every word that is looked for in notes."""
    for file in TERM_FILES:
        for kind, entries in files[file].items():
            for value, entry in entries.items():
                yield from ((file, f"[{kind}.{value}]", word) for key in _MATCHED for word in entry.get(key, ()))
    for file, table in (("stitches.toml", "stitch"), ("materials.toml", "material")):
        for entry in files[file][table]:
            words = [entry["name"], *(word for key in _MATCHED for word in entry.get(key, ()))]
            yield from ((file, f'{table} "{entry["name"]}"', word) for word in words)
