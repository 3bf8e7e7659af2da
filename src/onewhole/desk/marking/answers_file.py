"""The answers of a class in a file: CSV text, or a workbook (XLSX, ODS)."""

from collections.abc import Sequence
from pathlib import Path

from onewhole.desk.marking.handed_table import is_workbook, table_in_file
from onewhole.errors import InputError
from onewhole.marking.reading.answers_table import read_answers
from onewhole.marking.reading.class_answers import ClassAnswers
from onewhole.marking.reading.workbook_answers import answers_in_table
from onewhole.presses.named_file import TooLarge, content, refused
from onewhole.presses.texts import LARGEST, read_text
from onewhole.problems.problem import Problem

#: What the answers of a night are called in its folder, any of them.
ANSWERS = ("answers.csv", "answers.xlsx", "answers.ods")


def answers_in(path: Path, problems: Sequence[Problem]) -> ClassAnswers:
    """Read a file of answers; what it is says its content and not its name.

    Raises AnswersError with every mistake and its place, and InputError for a file that cannot be read.
    """
    try:
        with refused(path):
            found = content(path, LARGEST)
    except TooLarge:
        found = b""
    if is_workbook(found):
        handed = table_in_file(found, str(path))
        which = f"{path}, sheet {handed.sheet}" if handed.others else str(path)
        return answers_in_table(handed.table, problems, which)
    return read_answers(read_text(path), problems, str(path))


def answers_of_night(folder: Path) -> Path:
    """Return the file of answers in the folder of a night, CSV where there is none yet.

    Raises InputError where there are two or more.
    """
    there = [folder / name for name in ANSWERS if (folder / name).exists()]
    if len(there) > 1:
        raise InputError(
            f"There are {len(there)} files of answers, {' and '.join(one.name for one in there)}",
            file=str(folder),
            remedy="Take the one away that does not count.",
        )
    return there[0] if there else folder / ANSWERS[0]
