"""Nothing that stands in a file, or in its name, steers the terminal that shows it."""

import json
from io import BytesIO, TextIOWrapper
from pathlib import Path
from unicodedata import category

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.cli.main import VERBS
from onewhole.cli.say_json import json_text
from onewhole.cli.screen import UNSEEN, Screen, beneath, plain, plain_line
from onewhole.store.classes import name_pupil
from onewhole.store.opening import open_store
from tests.kit.kept import first_round
from tests.kit.terminal import Terminal

#: A title of the window, a cleared screen, a turned direction, no width, a hidden sign, half a sign.
SIGNS = "\x1b]0;owned\x07\x9b2J\u202egnp\u200b\U000e0041é⅔"
EVIL = f"\udc80{SIGNS}"
#: Verbs that never repeat a text that they refuse.
NOT_REPEATED = {"patterns", "check"}
SHEET = "title: Kites\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n"
YEAR = "first day: 2026-09-08"
ODD_SHEET = f"title: Kites {SIGNS}\nodd {SIGNS}: yes\n\n1. 6 7/8 - {SIGNS}\nno label {SIGNS}\n"


def steers(shown: str) -> set[str]:
    """Return the signs in a text that a terminal obeys or hides."""
    return {
        sign
        for sign in shown
        if sign in UNSEEN or (category(sign) in {"Cc", "Cf", "Cs", "Co", "Zl", "Zp"} and sign not in "\n\t")
    }


@pytest.fixture
def evil(tmp_path: Path) -> Path:
    """A folder with a hostile name, and in it a sheet and answers with hostile names and texts."""
    folder = tmp_path / f"a{SIGNS}"
    folder.mkdir()
    (folder / "sheet.txt").write_text(SHEET)
    (folder / "odd.txt").write_text(ODD_SHEET)
    (folder / "answers.csv").write_text(f"pupil,1,2\nK1{SIGNS},3 5/8,4 7/8\nK2,{SIGNS},5 1/8\n")
    (folder / "q.csv").write_text(f"item,a,b{SIGNS}\n1,1,0\n2{SIGNS},0,1\n")
    (folder / "right.csv").write_text(f"pupil,1,2{SIGNS}\nK1{SIGNS},1,1\nK2,0,1\nK3,1,0\nK4,0,0\n")
    (folder / "odd.csv").write_text(f"pupil,1,{SIGNS},2\nK1,3,4,5\nK1,3,4,5\n")
    (folder / "year.txt").write_text(f"{YEAR}\n")
    (folder / "odd_year.txt").write_text(f"{YEAR}\ngrade: {SIGNS}\nodd {SIGNS}: yes\n{SIGNS}\n")
    return folder


def _asks(folder: Path) -> dict[str, list[list[object]]]:
    """Return what is typed after each verb: what is refused, and where the verb is quick, what is done."""
    sheet, odd, answers, out = (
        folder / "sheet.txt",
        folder / "odd.txt",
        folder / "answers.csv",
        folder / "out",
    )
    return {
        "work": [[EVIL], ["5 1/3 - 2 2/3", "--whole", f"kite {EVIL}"]],
        "check": [[f"5 - 2 = 3 {EVIL}"], ["5 - 2 = 3", "--problem", EVIL]],
        "patterns": [[EVIL]],
        "tell": [[EVIL], ["5 1/3 - 2 2/3", "--kind", EVIL], ["5 1/3 - 2 2/3", "--whole", f"kite {EVIL}"]],
        "compose": [["--not-again", odd], ["--skill", EVIL], ["--to", folder / "no" / "no.txt", EVIL]],
        "audit": [[sheet], [odd], [folder], [folder / "none"]],
        "print": [[odd], [sheet, "--paper", EVIL], [sheet, "--to", out]],
        "film": [[odd], [sheet, "--voice", folder / "none.wav"], [sheet, "--picture", EVIL]],
        "mark": [
            [sheet, answers],
            [sheet, folder / "odd.csv"],
            [sheet, answers, "--pupil", EVIL],
            [sheet, answers, "--pupil", "K2"],
        ],
        "skills": [
            [folder / "right.csv", folder / "q.csv"],
            [folder / "right.csv", folder / "q.csv", "--json"],
            [folder / "odd.csv", folder / "q.csv"],
            [folder / "right.csv", odd],
            [folder / "right.csv", folder / "none"],
            [folder / "right.csv", folder / "q.csv", "--model", EVIL],
        ],
        "plan": [[sheet, folder / "odd.csv"], [sheet, answers, "--pupil", EVIL]],
        "again": [[odd], [folder / "none"]],
        "reached": [[sheet, answers], [sheet, folder / "odd.csv"]],
        "keep": [
            ["show", folder / "my.class"],
            ["show", sheet],
            ["restore", folder / "my.class", "--from", sheet],
            ["until", folder / "my.class", "--day", EVIL],
            ["export", folder / "my.class", "--pupil", EVIL],
        ],
        "read": [
            [odd, folder / "odd.csv"],
            [sheet, folder / "odd.csv", "--to", out],
            [sheet, folder / "none"],
            [sheet, folder / "odd.csv", "--pupils", EVIL],
            [sheet, folder / "odd.csv", "--sure", EVIL],
        ],
        "scores": [[folder / "my.class"], [folder / "my.class", "--from", EVIL], [sheet], [folder / "none"]],
        "year": [
            [folder / "year.txt"],
            [folder / "odd_year.txt"],
            [odd],
            [folder],
            [folder / "none"],
            [folder / "year.txt", "--night", EVIL],
            [folder / "year.txt", "--night", "2026-09-08", "--class", folder / "my.class"],
            [folder / "year.txt", "--night", "2026-09-08", "--class", sheet],
            [folder / "year.txt", "--keep", sheet],
            [folder / "year.txt", "--keep", folder / "my.class", "--room", EVIL],
            [folder / "year.txt", "--to", out],
            [folder / "year.txt", "--to", sheet],
        ],
        "papers": [
            [folder / "my.class", "1"],
            [folder / "my.class", EVIL],
            [sheet, "1"],
            [folder / "none", "1"],
        ],
        "serve": [[folder / "none" / "my.class"], ["--address", EVIL], ["--certificate", folder / "none"]],
        "night": [[folder / "none"], [folder, "--to", sheet]],
        "share": [
            [folder / "my.class", "--school", "Kite School", "--to", out],
            [folder / "my.class", "--school", EVIL, "--to", out],
            [folder / "my.class", "--school", "Kite School", "--to", out, "--from", EVIL],
            [folder / "my.class", "--school", "Kite School", "--to", out, "--key", odd],
            [sheet, "--school", "Kite School", "--to", out],
            [folder / "none", "--school", "Kite School", "--to", out],
        ],
        "district": [[folder / "none", "--to", out], [folder, "--to", out], [sheet, "--to", out]],
        "exchange": _exchanges(folder),
    }


def _exchanges(folder: Path) -> list[list[object]]:
    """Return what is typed after `exchange`: each thing that it does, done or refused."""
    book, out = folder / "my.class", folder / "out"
    return [
        [EVIL, book, "--to", out],
        ["workbook", folder / "sheet.txt", "--to", out, "--class", book],
        ["workbook", folder / "odd.txt", "--to", out],
        ["grades", book, "--to", out, "--from", EVIL],
        ["due", book, "--to", folder / "no" / "due.ics"],
        ["questions", folder / "odd.txt", "--to", out],
        ["questions", folder / "sheet.txt", "--to", folder / "questions.zip"],
        ["page", folder / "odd.csv", "--to", out],
        ["classes", folder / "odd.csv", "--to", book, "--called", EVIL],
        ["classes", folder / "odd.txt", "--to", folder / "new.class", "--called", "Room 12"],
        ["results", book, "--to", out, "--roster", folder / "odd.csv"],
        ["results", book, "--to", out],
    ]


@pytest.mark.asvs("V1.3.3")
@pytest.mark.parametrize("verb", VERBS)
def test_no_verb_lets_a_text_steer_the_terminal(verb: str, evil: Path, onewhole: Terminal) -> None:
    """Names of files and folders, titles, codes, cells and what is refused: all is plain when it is shown."""
    book = open_store(evil / "my.class")
    name_pupil(book, first_round(book).class_number, "K01", SIGNS)
    book.close()
    shown = [onewhole(verb, *typed) for typed in _asks(evil)[verb]]
    assert not set().union(*(steers(one.out + one.err) for one in shown))
    assert verb in NOT_REPEATED or any("é⅔" in one.out + one.err for one in shown)


def test_a_terminal_with_colours_gets_ours_and_no_others(
    evil: Path, onewhole: Terminal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The heads of the table of marks are bold; a code that would set a colour or a title does not."""
    monkeypatch.setenv("FORCE_COLOR", "1")
    monkeypatch.delenv("NO_COLOR", raising=False)
    shown = onewhole("mark", evil / "sheet.txt", evil / "answers.csv").out
    assert "\x1b[1m" in shown
    assert not steers(shown.replace("\x1b[1m", "").replace("\x1b[0m", ""))


@given(st.text())
def test_only_plain_signs_are_shown(text: str) -> None:
    """What is plain stays, sign by sign, and the rest is a ?; a name stands on one line."""
    shown = plain(text)
    assert not steers(shown)
    assert all(after in {sign, "?"} for sign, after in zip(text, shown, strict=True))
    assert plain(shown) == shown
    assert plain_line(text) == shown.replace("\n", "?").replace("\t", "?")


@pytest.mark.parametrize(
    "text", ["é ñ ⅔ ÷ − × “K01” 米 👩🏽 ❤\ufe0f a\u0301 1\u00a0000 1\u2009000", "a\n\tb", ""]
)
def test_what_a_teacher_types_stays(text: str) -> None:
    """Letters of any script, fractions, blanks of any width, lines and tabs."""
    assert plain(text) == text


@given(st.dictionaries(st.text(st.characters(exclude_categories=())), st.text() | st.integers()))
def test_json_loses_nothing_and_steers_nothing(found: dict[str, object]) -> None:
    """What is not plain is escaped by JSON's own rule, half a sign too."""
    written = json_text(found)
    assert not steers(written)
    assert json.loads(written) == found


def test_a_screen_stands_before_any_stream() -> None:
    """It says what the stream beneath says, takes no bytes, and lets our own colours past it."""
    raw = BytesIO()
    under = TextIOWrapper(raw, encoding="ascii", errors="replace")
    screen = Screen(under)
    print("⅔\x1b", file=screen, flush=True)
    print("\x1b[1m", file=beneath(screen), end="", flush=True)
    assert raw.getvalue() == b"??\n\x1b[1m"
    assert (screen.encoding, screen.errors, screen.isatty()) == ("ascii", "replace", False)
    assert beneath(under) is under
    assert not hasattr(screen, "buffer")
