"""Files and folders that cannot be used: told what, where and what next, and nothing half-written."""

from pathlib import Path

import pytest

from tests.kit.terminal import Shown, Terminal

READ_SHEETS = ["audit", "print"]


def refused_at(shown: Shown, what: str, where: str) -> None:
    """What is wrong, its place and the next thing to do are told, and nothing else."""
    assert (shown.code, shown.out) == (2, "")
    lines = shown.err.splitlines()
    assert lines[0].startswith(what)
    assert lines[1] == f"  where: {where}"
    assert lines[2].startswith("  next:  ")


@pytest.mark.parametrize("verb", READ_SHEETS)
@pytest.mark.parametrize(
    ("content", "what", "where"),
    [
        (b"\xff\xfe1\x00.\x00", "The file is not plain text in UTF-8", ", line 1, column 1"),
        (b"title: caf\xe9\n\n1. 52 - 27\n", "The file is not plain text in UTF-8", ", line 1, column 11"),
        (b"1. 52 - 27\n\x00\x01\x02\n", "A hidden sign stands here", ", line 2, column 1"),
        (b"", "There is no problem on this sheet", ", line 1, column 1"),
        (b"1. 7 2/0 - 3\n", "A whole cannot be cut into 0 equal parts", ", line 1, column 8"),
    ],
)
def test_a_sheet_that_cannot_be_read(
    onewhole: Terminal, tmp_path: Path, verb: str, content: bytes, what: str, where: str
) -> None:
    """It is refused with the file's name, line, column and the next thing to do; the file is as it was."""
    path = tmp_path / "monday.txt"
    path.write_bytes(content)
    shown = onewhole(verb, path, *(["--to", tmp_path / "out"] if verb == "print" else []))
    refused_at(shown, what, f"{path}{where}")
    assert path.read_bytes() == content
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.parametrize("verb", ["audit", "print", "mark", "plan", "night"])
def test_a_file_that_is_not_there(onewhole: Terminal, tmp_path: Path, verb: str) -> None:
    """Every verb names the file that it looked for."""
    files = [tmp_path / "kites.txt"] + [tmp_path / "answers.csv"] * (verb in {"mark", "plan"})
    shown = onewhole(verb, *files)
    missing = files[0] / "sheet.txt" if verb == "night" else files[0]
    assert (shown.code, shown.out) == (2, "")
    assert shown.err.splitlines() == [
        "There is no such file",
        f"  where: {missing}",
        "  next:  See how the name is spelt and in which folder it is.",
    ]


@pytest.mark.parametrize("verb", ["audit", "print"])
def test_a_folder_is_no_sheet(onewhole: Terminal, tmp_path: Path, verb: str) -> None:
    """A folder where a file is wanted is named."""
    shown = onewhole(verb, tmp_path)
    assert shown.code == 2
    assert f"  where: {tmp_path}\n" in shown.err


@pytest.mark.parametrize(
    ("content", "what", "where"),
    [
        (b"", "There are no answers here", ", line 1"),
        (b"pupil,1,2,3a\n", "There is no pupil here", ", line 1"),
        (b'pupil,1,2,3a\nK01,"3 3/6\nK02,3\n', "From here on this is no table", ", line 2"),
        (b"pupil,1,2,3a\nK01,3,4,5,6\n", "This row is longer than the first line", ", line 2, column 5"),
        (b"pupil,1,2,3a\nK01,3\nK01,4\n", "Pupil “K01” is here a second time", ", line 3, column 1"),
        (b"pupil,1,2\nK01,3,4\n", "There is no column for problem “3a”", ", line 1"),
        (b"pupil,1,2,3a\nK\xff,3,4,5\n", "The file is not plain text in UTF-8", ", line 2, column 2"),
    ],
)
def test_answers_that_cannot_be_used(
    onewhole: Terminal, sheet: Path, tmp_path: Path, content: bytes, what: str, where: str
) -> None:
    """Marking and planning refuse alike, and nothing is made."""
    path = tmp_path / "tuesday.csv"
    path.write_bytes(content)
    for verb in ("mark", "plan"):
        shown = onewhole(verb, sheet, path, *(["--to", tmp_path / "out"] if verb == "plan" else []))
        refused_at(shown, what, f"{path}{where}")
    assert path.read_bytes() == content
    assert not (tmp_path / "out").exists()


def test_every_mistake_of_a_sheet_is_told_at_once(onewhole: Terminal, tmp_path: Path) -> None:
    """A teacher corrects all of them before the next try."""
    path = tmp_path / "monday.txt"
    path.write_text("titel: Kites\n\n1. 7 2/0 - 3\n1. 52 - 27\n")
    told = onewhole("audit", path).err
    assert told.startswith("3 things on this sheet need a change:\n")
    assert told.count(str(path)) == 3


def test_a_folder_that_cannot_be_made(onewhole: Terminal, sheet: Path, tmp_path: Path) -> None:
    """A file stands where the folder should be: it stays, and nothing is written beside it."""
    blocked = tmp_path / "out"
    blocked.write_text("a file of mine")
    before = sorted(tmp_path.iterdir())
    shown = onewhole("print", sheet, "--to", blocked)
    assert shown.code == 2
    assert shown.err.startswith(f"The folder cannot be made: File exists\n  where: {blocked}\n  next:  ")
    assert sorted(tmp_path.iterdir()) == before
    assert blocked.read_text() == "a file of mine"


@pytest.mark.parametrize(
    ("options", "told"),
    [
        (["--paper", "a5"], "“a5” is none of the choices here\n  where: the paper asked for\n"),
        (["--print", "huge"], "“huge” is none of the choices here\n  where: the print asked for\n"),
    ],
)
def test_a_setting_of_the_moment(
    onewhole: Terminal, sheet: Path, tmp_path: Path, options: list[str], told: str
) -> None:
    """A paper or size that there is not is told before anything is made."""
    shown = onewhole("print", sheet, "--to", tmp_path / "out", *options)
    assert shown.code == 2
    assert shown.err.startswith(told)
    assert not (tmp_path / "out").exists()


def test_a_night_is_read_whole_before_anything_is_written(
    onewhole: Terminal, sheet: Path, tmp_path: Path
) -> None:
    """Answers that cannot be used stop the night before its first page is on the disk."""
    (tmp_path / "answers.csv").write_text("pupil,9\nK01,3\n")
    assert onewhole("night", tmp_path, "--to", tmp_path / "out").code == 2
    assert sheet.exists()
    assert not (tmp_path / "out").exists()


def test_groups_that_nobody_can_meet(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """No groups at all are refused."""
    shown = onewhole("mark", sheet, answers, "--meets", "0")
    assert shown == (
        2,
        "",
        "A teacher meets at least one group, not 0\n  next:  Give a number from 1 up; 4 is usual.\n",
    )
