"""The JSON that other programs read has the shapes that docs/json.md promises."""

import json
from pathlib import Path

import pytest

from onewhole.marking.diagnosis.finding import CAUTION
from tests.kit.terminal import Terminal


def test_work(onewhole: Terminal) -> None:
    """A working has its problem, answer, exact value, strategy and lines, each with its reason."""
    found = onewhole("work", "7 2/6 - 3 5/6", "--strategy", "regroup_first", "--json")
    assert found.code == 0
    assert list(found.data) == ["problem", "answer", "value", "strategy", "lines"]
    lines = found.data.pop("lines")
    assert {key: found.data[key] for key in ("problem", "answer", "value", "strategy")} == {
        "problem": "7 2/6 - 3 5/6",
        "answer": "3 3/6",
        "value": "7/2",
        "strategy": "regroup_first",
    }
    assert isinstance(lines, list)
    assert all(list(line) == ["text", "value", "because", "aside"] for line in lines)
    assert {line["value"] for line in lines} == {"7/2"}
    assert [line["text"] for line in lines if not line["aside"]] == [
        "7 2/6 - 3 5/6",
        "6 8/6 - 3 5/6",
        "3 3/6",
    ]
    assert all(line["because"] for line in lines)


def test_work_by_every_strategy(onewhole: Terminal) -> None:
    """`--strategy all` gives a list of the same objects, all with one value."""
    shown = onewhole("work", "7 2/6 - 3 5/6", "--strategy", "all", "--json")
    found = json.loads(shown.out)
    assert shown.code == 0
    assert isinstance(found, list)
    assert [working["strategy"] for working in found] == [
        "regroup_first",
        "wholes_first",
        "to_fractions",
        "count_up",
        "from_whole",
        "equal_shift",
    ]
    assert {working["value"] for working in found} == {"7/2"}


@pytest.mark.parametrize("problem", ["5/6 ? 7/8", "7 2/6 = 6 ?/6"])
def test_every_strategy_is_a_list_even_of_one(onewhole: Terminal, problem: str) -> None:
    """A comparison and a missing number are worked in one way only."""
    assert len(json.loads(onewhole("work", problem, "--strategy", "all", "--json").out)) == 1


def test_a_name_in_the_trades_words_chooses_a_strategy(onewhole: Terminal) -> None:
    """`--strategy` takes a key or a name, however it is capitalised."""
    asked = onewhole("work", "7 2/6 - 3 5/6", "--strategy", "count UP from the smaller number", "--json")
    assert asked.data["strategy"] == "count_up"


def test_check(onewhole: Terminal) -> None:
    """A false line gives 1 and says where, what would be true, and which pattern it fits."""
    found = onewhole("check", "9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8", "--json")
    assert found.code == 1
    assert found.data == {
        "true": False,
        "chains": [
            {
                "text": "9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8",
                "true": False,
                "false": [
                    {
                        "line": 1,
                        "column": 17,
                        "left": "9 5/8 - 4 6/8",
                        "right": "9 13/8 - 4 6/8",
                        "would_be": "8 13/8 - 4 6/8",
                        "runs_on": False,
                        "patterns": ["A02"],
                    }
                ],
                "separate": [],
            }
        ],
    }


def test_check_of_what_is_true(onewhole: Terminal) -> None:
    """All true gives 0."""
    found = onewhole("check", "7 2/6 = 6 8/6", "--json")
    assert (found.code, found.data["true"]) == (0, True)


def test_patterns(onewhole: Terminal) -> None:
    """Only the ids that show here, each with the raw answer."""
    found = onewhole("patterns", "9 5/8 - 4 6/8", "--json")
    assert found.code == 0
    assert list(found.data) == ["problem", "answer", "shows"]
    assert (found.data["problem"], found.data["answer"]) == ("9 5/8 - 4 6/8", "4 7/8")
    shows = found.data["shows"]
    assert isinstance(shows, dict)
    assert (shows["A01"], shows["A04"], shows["A35"]) == ("5 1/8", "4 9/8", "39/8")
    assert "A10" not in shows
    assert "P01" not in shows


def test_audit(onewhole: Terminal, sheet: Path) -> None:
    """The page, each problem and what is found."""
    found = onewhole("audit", sheet, "--json")
    assert found.code == 0
    assert list(found.data) == [
        "title",
        "minutes",
        "climbs",
        "problems",
        "twins",
        "alike",
        "findings",
    ]
    problems = found.data["problems"]
    assert isinstance(problems, list)
    assert [problem["label"] for problem in problems] == ["1", "2", "3a"]
    assert list(problems[1]) == [
        "label",
        "problem",
        "answer",
        "standard",
        "regroupings",
        "difficulty",
        "minutes",
        "shows",
        "traps",
    ]
    assert (problems[1]["answer"], problems[1]["regroupings"], problems[1]["minutes"]) == ("4 7/8", 1, "3/2")
    assert problems[2]["traps"]["lucky"] == ["A06", "A36"]
    assert {"answer": "4 3/8", "patterns": ["A01", "A16", "A20"]} in problems[2]["traps"]["alike"]


def test_print(onewhole: Terminal, sheet: Path, tmp_path: Path) -> None:
    """The files by name and path; each is there and is a PDF."""
    found = onewhole("print", sheet, "--to", tmp_path / "out", "--json")
    assert found.code == 0
    files = found.data["files"]
    assert isinstance(files, list)
    assert [file["page"] for file in files] == ["pupil", "key", "workings", "family"]
    assert all(Path(file["path"]).read_bytes().startswith(b"%PDF-") for file in files)


def test_mark(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """Problems, pupils and groups, and the caution that goes with them."""
    found = onewhole("mark", sheet, answers, "--json").data
    assert list(found) == ["problems", "pupils", "groups", "changes", "caution"]
    assert (found["changes"], found["caution"]) == ([], CAUTION)
    assert found["problems"] == [
        {"label": "1", "right": 2, "tried": 2},
        {"label": "2", "right": 1, "tried": 2},
        {"label": "3a", "right": 1, "tried": 2},
    ]
    pupils = found["pupils"]
    assert isinstance(pupils, list)
    assert pupils[1] == {
        "pupil": "K02",
        "answers": [
            {"label": "1", "written": "3 5/8", "verdict": "right", "patterns": []},
            {"label": "2", "written": "5 1/8", "verdict": "wrong", "patterns": ["A01"]},
            {"label": "3a", "written": "4 3/8", "verdict": "wrong", "patterns": ["A01", "A16", "A20"]},
        ],
        "finding": pupils[1]["finding"],
    }
    finding = pupils[1]["finding"]
    keys = ["status", "patterns", "evidence", "against", "odds", "not_listed", "ask_next", "caution"]
    assert list(finding) == keys
    assert (finding["status"], finding["patterns"], finding["evidence"]) == ("likely", ["A01"], ["2", "3a"])
    assert (finding["against"], finding["ask_next"], finding["caution"]) == ([], [], CAUTION)
    assert finding["odds"][0] == {"patterns": ["A01"], "probability": finding["odds"][0]["probability"]}
    assert 0.9 < finding["odds"][0]["probability"] < 1
    assert [answer["verdict"] for answer in pupils[2]["answers"]] == ["blank", "unreadable", "blank"]
    assert [answer["written"] for answer in pupils[2]["answers"]] == ["-", "smudge", ""]
    groups = found["groups"]
    assert isinstance(groups, list)
    keys = ["id", "name", "about", "meets", "pupils", "ideas", "because"]
    assert all(list(group) == keys for group in groups)
    assert sorted(pupil for group in groups for pupil in group["pupils"]) == ["K01", "K02", "K03"]


def test_the_form_that_a_teacher_asks_for(onewhole: Terminal, sheet: Path, answers: Path) -> None:
    """With `mixed form: yes` a right amount in another form has a verdict of its own."""
    sheet.write_text(sheet.read_text().replace("\n\n", "\nmixed form: yes\n\n"))
    pupils = onewhole("mark", sheet, answers, "--json").data["pupils"]
    assert isinstance(pupils, list)
    assert pupils[0]["answers"][1]["verdict"] == "form"
