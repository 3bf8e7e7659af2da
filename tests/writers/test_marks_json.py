"""Marks, findings and groups as JSON objects."""

import json
from datetime import date

from onewhole.desk.tomorrow.seats import seated
from onewhole.marking.diagnosis.finding import CAUTION, findings
from onewhole.marking.reading.mark import ClassMarks
from onewhole.marking.reading.problem_stats import problem_stats
from onewhole.writers.marks_json import marks_object
from tests.kit.answers import TWELVE, all_right, by_pattern, marked, page
from tests.kit.classes import sat

PAGE = page(TWELVE)


def _object(marks: ClassMarks) -> dict[str, object]:
    found = findings(marks)
    none = ((),) * len(marks.pupils)
    return marks_object(marks, found, seated(marks.pupils, found), problem_stats(marks), ask_next=none)


def test_every_pupil_and_answer_stands_in_it() -> None:
    """One entry a pupil, one answer a problem, in the order of the page, the text as written."""
    rows = {"K01": all_right(PAGE), "K02": by_pattern("A04", PAGE), "K03": [" 3 1/2", *["-"] * 11]}
    found = _object(marked(PAGE, rows))
    pupils = found["pupils"]
    assert isinstance(pupils, list)
    assert [pupil["pupil"] for pupil in pupils] == list(rows)
    for pupil, cells in zip(pupils, rows.values(), strict=True):
        assert [answer["label"] for answer in pupil["answers"]] == [problem.label for problem in PAGE]
        assert [answer["written"] for answer in pupil["answers"]] == cells
    finding = pupils[1]["finding"]
    assert (finding["status"], finding["patterns"], finding["against"]) == ("likely", ["A04"], [])
    assert finding["evidence"] == [
        problem.label
        for problem, cell, right in zip(PAGE, rows["K02"], rows["K01"], strict=True)
        if cell != right
    ]
    assert finding["odds"][0]["patterns"] == ["A04"]
    assert 0.99 < sum(one["probability"] for one in finding["odds"]) <= 1
    assert (finding["ask_next"], finding["caution"]) == ([], CAUTION)
    assert json.loads(json.dumps(found, default=float))["pupils"][0] == pupils[0] | {
        "finding": pupils[0]["finding"]
        | {"odds": [one | {"probability": float(one["probability"])} for one in pupils[0]["finding"]["odds"]]}
        | {"not_listed": float(pupils[0]["finding"]["not_listed"])}
    }


def test_findings_of_a_dated_night_run_out() -> None:
    """The last day on which they are good stands beside each."""
    marks = marked(PAGE, {"K01": all_right(PAGE)})
    found = findings(marks)
    groups, stats = seated(marks.pupils, found), problem_stats(marks)
    made = marks_object(marks, found, groups, stats, ask_next=[()], until=date(2026, 12, 8))["pupils"]
    assert isinstance(made, list)
    assert made[0]["finding"]["good_until"] == "2026-12-08"


def test_every_pupil_is_in_one_group() -> None:
    """The names of the pupils stand in the groups once each, with a reason."""
    rows = {f"K{at:02}": by_pattern(key, PAGE) for at, key in enumerate(["A01"] * 4 + ["A02"] * 4, start=1)}
    found = _object(marked(PAGE, rows))["groups"]
    assert isinstance(found, list)
    assert sorted(pupil for group in found for pupil in group["pupils"]) == list(rows)
    assert all(group["because"] for group in found)
    assert [(group["id"], group["meets"], group["about"]) for group in found] == [
        ("1", True, "opens a whole and still counts it"),
        ("2", True, "takes the smaller number of pieces from the larger"),
    ]
    assert found[1]["ideas"] == [{"pattern": "A01", "pupils": ["K01", "K02", "K03", "K04"]}]


def test_changes_of_kept_groups_are_told() -> None:
    """From which group to which, and why; none where nothing is kept."""
    rows = {f"K{at:02}": by_pattern(key, PAGE) for at, key in enumerate(["A01"] * 3 + ["A02"] * 4, start=1)}
    marks = marked(PAGE, rows)
    found = findings(marks)
    assert _object(marks)["changes"] == []
    first = sat(seated(marks.pupils, found).groups)
    kept = seated(marks.pupils, found, sits={**first, "K04": first["K01"]})
    told = marks_object(marks, found, kept, problem_stats(marks), ask_next=((),) * 7)["changes"]
    assert told == [
        {
            "pupil": "K04",
            "from": first["K01"].name,
            "to": first["K05"].name,
            "because": "answers to 3, 4, 5, 6, 7, 8, 9, 11 and 12 fit “opens a whole and still counts it”",
        }
    ]


def test_a_key_to_look_at_is_marked_only_then() -> None:
    """`check_key` is there when pupils who do well elsewhere miss a problem, and left out otherwise."""
    good, poor = all_right(PAGE), ["9"] * 12
    rows = {f"K{at:02}": ["9", *good[1:]] if at < 8 else [good[0], *poor[1:]] for at in range(1, 13)}
    problems = _object(marked(PAGE, rows))["problems"]
    assert isinstance(problems, list)
    assert [problem.get("check_key") for problem in problems] == [True, *[None] * 11]
