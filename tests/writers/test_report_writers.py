"""What is told about one pupil: in sentences, as plain lines, as JSON, and as a page."""

import json
import re
from datetime import date
from fractions import Fraction
from typing import Any

import pytest

from onewhole.desk.marking.mark import mark
from onewhole.desk.pupil.report import report
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight
from onewhole.marking.diagnosis.report import Report
from onewhole.marking.diagnosis.report import report as put_together
from onewhole.misconceptions.catalogue import by_id, patterns
from onewhole.sheets.header import Header
from onewhole.writers.marks_json import odds
from onewhole.writers.report_json import report_object
from onewhole.writers.report_lines import report_lines
from onewhole.writers.report_words import beside, found, idea, in_words, known, odds_moved, talked
from onewhole.writers.talks_page import talks_page
from tests.kit.answers import by_pattern, page

PAGE = "1. 9 5/8 - 4 6/8\n2. 7 1/6 - 3 5/6\n3. 6 3/10 - 2 7/10\n4. 6 7/8 - 3 2/8\n"
#: Each pupil shows one thing: A04, two of A01 with a right answer, scattered, a slip, all right, nothing.
ANSWERS = """pupil,1,2,3,4
K01,4 9/8,3 6/6,3 6/10,3 5/8
K02,5 1/8,4 4/6,3 6/10,3 5/8
K03,1 1/7,9 9/11,3/7,11
K04,4 7/8,3 2/6,3 6/10,3 4/8
K05,4 7/8,see me,,3 5/8
K06,,,,
K07,5 1/8,3 2/6,,
"""
NIGHT = mark(PAGE, ANSWERS)
UNTIL = date(2026, 12, 8)


def _of(pupil: str) -> Report:
    return report(NIGHT, pupil)


@pytest.mark.parametrize("pupil", [f"K0{at}" for at in range(1, 8)])
def test_the_caution_stands_wherever_a_finding_is_shown(pupil: str) -> None:
    """At the end of the lines, beside the finding in JSON, at the head and foot of the page."""
    told = _of(pupil)
    assert report_lines(told)[-1] == CAUTION
    made = report_object(told)
    assert made["caution"] == CAUTION
    finding = made["finding"]
    assert isinstance(finding, dict)
    assert finding["caution"] == CAUTION
    printed = talks_page(Header(), [told])
    assert printed.data["caution"] == CAUTION
    assert "never a label" in str(printed.data["footer"])


@pytest.mark.parametrize("pupil", [f"K0{at}" for at in range(1, 8)])
def test_answers_fit_and_a_child_never_has(pupil: str) -> None:
    """The words are those of the cautions."""
    told = " ".join(report_lines(_of(pupil))).casefold()
    assert not any(word in told for word in (" has ", " suffers", " misconception", " bug ", "diagnos"))


def test_the_first_sentence_says_how_much_it_is() -> None:
    """Likely, likely against one, steady but not listed, a slip, nothing wrong, nothing read, possible."""
    assert [found(_of(f"K0{at}"))[0] for at in range(1, 8)] == [
        "Answers fit “a whole always gives ten pieces”.",
        "Answers fit “takes the smaller number of pieces from the larger”.",
        "Steady, and not one of ours: ask the child to show it.",
        "What is wrong may be slips.",
        "No wrong answer was read.",
        "No answer could be read, so nothing can be said.",
        "The answer to 1 may fit “takes the smaller number of pieces from the larger”.",
    ]
    assert "One more answer would tell: talk with the child." in found(_of("K07"))


def test_lines_lay_what_would_be_written_beside_what_was() -> None:
    """Right by luck says nothing; where the pattern cannot show nothing would be written."""
    lines = report_lines(_of("K01"))
    assert lines[:2] == ("K01", "Answers fit “a whole always gives ten pieces”.")
    table = [" ".join(line.split()) for line in lines[3:8]]
    assert table == [
        "problem written this idea writes what it says",
        "1. 9 5/8 - 4 6/8 4 9/8 4 9/8 fits",
        "2. 7 1/6 - 3 5/6 3 6/6 3 6/6 fits",
        "3. 6 3/10 - 2 7/10 3 6/10 - right by this idea too: says nothing",
        "4. 6 7/8 - 3 2/8 3 5/8 - right; cannot show it",
    ]


def test_what_speaks_against_is_told() -> None:
    """With its label, and with what would have been written."""
    told = _of("K02")
    assert beside(told)[0] == "Against it: 3."
    row = next(line for line in report_lines(told) if line.startswith("3."))
    assert "right, so it speaks against" in row
    assert "4 4/10" in row


def test_without_a_pattern_the_table_says_what_each_answer_fits() -> None:
    """And has no column for what an idea would write."""
    lines = report_lines(_of("K03"))
    assert not any("this idea writes" in line for line in lines)
    assert any(line.endswith("fits nothing known") for line in lines)
    assert any(line.endswith("one step beside right, perhaps a slip") for line in report_lines(_of("K04")))
    unread = [" ".join(line.split()) for line in report_lines(_of("K05"))]
    assert "2. 7 1/6 - 3 5/6 see me not readable" in unread
    assert "3. 6 3/10 - 2 7/10 - nothing written" in unread


def test_what_to_ask_next_stands_where_something_is_open() -> None:
    """A problem, or that no problem tells."""
    traps = mark("1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4", "pupil,1,2\nK01,3 4/8,4 2/4")
    told = report_lines(report(traps, "K01"))
    [ask] = [line for line in told if line.startswith("Ask next: ")]
    assert ask.endswith("The answers would tell most.")
    typed = "\n".join(f"{problem.label}. {problem.typed}" for problem in page())
    wholes = [
        ",".join(row) for row in (["pupil", *map(str, range(1, 13))], ["K01", *by_pattern("A12", page())])
    ]
    same = report_lines(report(mark(typed, "\n".join(wholes)), "K01"))
    assert "No problem that we know tells these apart: ask how it was done." in same


def test_a_question_for_each_pattern_found() -> None:
    """Two that cannot be told apart have a question each."""
    traps = mark("1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4", "pupil,1,2\nK01,3 4/8,4 2/4")
    asked = [line for line in report_lines(report(traps, "K01")) if line.startswith("Ask the child, ")]
    assert [line.split("“")[1].split("”")[0] for line in asked] == [by_id("A01").name, by_id("A02").name]


def test_odds_and_ids_stand_by_themselves_at_the_end() -> None:
    """What a page shows on demand; all before them are words that a teacher uses."""
    for pupil in ("K01", "K02", "K03", "K07"):
        told = _of(pupil)
        lines = report_lines(told)
        assert lines[-1 - len(known(told)) : -1] == known(told)
        before = " ".join((*found(told), *beside(told)))
        assert not re.search(r"[A-H][0-9]{2}|in 100|odds", before)
    assert known(_of("K01")) == (
        "The odds that this is a steady idea: more than 99 in 100.",
        "The odds that there is no steady pattern: less than 1 in 100.",
        "In the list of patterns: A04 “a whole always gives ten pieces”.",
    )


def test_one_wrong_answer_is_too_little_and_has_no_odds() -> None:
    """Never “too little to tell” beside odds of what there is not."""
    told = report(mark(PAGE, "pupil,1,2,3,4\nK26,1 1/7,3 2/6,3 6/10,3 5/8\n"), "K26")
    assert found(told) == (
        "One answer is wrong, too little to tell an idea from a slip: ask the child about it.",
    )
    assert not any("odds" in line for line in report_lines(told))


def test_earlier_findings_and_the_last_good_day_are_told() -> None:
    """Only where a night has a date."""
    night = NotebookNight(date(2026, 11, 20), "Kites", {}, {}, (KeptFinding("K01", ("A01", "A10")),))
    nights = Notebook((night,)), date(2026, 11, 24)
    told = put_together(NIGHT.marks, NIGHT.weighed, NIGHT.findings[0], (), nights)
    lines = report_lines(told, UNTIL)
    fitted = f"{idea('A01')} and {idea('A10')}"
    assert f"On 2026-11-20 answers to “Kites” fitted {fitted}; that is good until 2026-12-04." in lines
    assert "Good until 2026-12-08; look again then." in lines
    assert not any("Good until" in line for line in report_lines(_of("K03"), UNTIL))
    made = report_object(told, UNTIL)
    assert made["earlier"] == [
        {"date": "2026-11-20", "page": "Kites", "patterns": ["A01", "A10"], "good_until": "2026-12-04"}
    ]


def _nights(*found: PupilNight) -> tuple[Notebook, date]:
    """Nights of K01 one day after another; A04 was likely on the first."""
    first = date(2026, 11, 20)
    days = [date.fromordinal(first.toordinal() + at) for at in range(len(found))]
    kept = [(KeptFinding("K01", ("A04",)),), *[()] * len(found)]
    nights = zip(days, kept, found, strict=False)
    return Notebook(
        tuple(NotebookNight(on, "Kites", {}, {}, said, {"K01": left}) for on, said, left in nights)
    ), days[-1]


def test_since_when_an_idea_fits_and_how_often_is_told() -> None:
    """In words and as JSON, for what is found tonight."""
    fits, none = PupilNight({"A04": 950_000}, {"A04": 2}), PupilNight({"A04": 900_000}, {"A04": 0})
    told = put_together(NIGHT.marks, NIGHT.weighed, NIGHT.findings[0], (), _nights(fits, none, fits))
    assert told.finding.patterns == ("A04",)
    line = "Answers fit it since 20 November, on 2 of the last 3 nights that could show it."
    assert line in report_lines(told, UNTIL)
    assert report_object(told)["held_since"] == {"on": "2026-11-20", "shown": 2, "of": 3}
    assert report_object(told)["withdrawn"] == []


def test_what_answers_withdrew_is_told() -> None:
    """Since which night; it is no earlier finding any more."""
    fits, gone = PupilNight({"A04": 950_000}, {"A04": 2}), PupilNight({"sound": 900_000}, {"A04": 0})
    told = put_together(NIGHT.marks, NIGHT.weighed, NIGHT.findings[0], (), _nights(fits, gone))
    assert told.earlier == ()
    [line] = [line for line in report_lines(told, UNTIL) if "is gone since" in line]
    assert line.startswith(idea("A04"))
    assert line.endswith("is gone since 21 November: the answers of that night speak against it.")
    assert report_object(told)["withdrawn"] == [{"patterns": ["A04"], "on": "2026-11-21"}]


def test_two_that_share_a_pattern_name_it_once() -> None:
    """One with this or with that: the one is told once."""
    told = report(mark("1. 9 5/8 - 4 6/8\n2. 5 ft 2 in - 2 ft 7 in", "pupil,1,2\nK01,5 1/8,2 ft 5 in"), "K01")
    assert told.sets == (("A01", "G02"), ("A01", "G05"))
    first = found(told)[0]
    assert f"{idea('A01')} together with {idea('G02')} or {idea('G05')}" in first
    assert first.count(idea("A01")) == 1


@pytest.mark.parametrize(
    ("odds", "words"),
    [
        (Fraction(1), "more than 99 in 100"),
        (Fraction(991, 1000), "more than 99 in 100"),
        (Fraction(99, 100), "about 99 in 100"),
        (Fraction(1, 2), "about 50 in 100"),
        (Fraction(1, 100), "about 1 in 100"),
        (Fraction(0), "less than 1 in 100"),
    ],
)
def test_odds_in_words_are_never_certain(odds: Fraction, words: str) -> None:
    """Rounded to hundredths."""
    assert in_words(odds) == words


def test_every_pattern_can_be_told() -> None:
    """Its plain name."""
    for pattern in patterns():
        assert idea(pattern.id) == f"“{pattern.name}”"


def test_the_object_has_the_rows_and_is_json() -> None:
    """One problem each, with what would be written and what that says."""
    made = report_object(_of("K01"))
    text = json.loads(json.dumps(made, default=float))
    assert list(text) == [
        *("pupil", "finding", "sets", "together", "no_steady_pattern", "rule", "problems", "earlier"),
        *("held_since", "withdrawn", "caution"),
    ]
    assert text["sets"] == [["A04"]]
    assert text["problems"][2] == {
        "label": "3",
        "problem": "6 3/10 - 2 7/10",
        "written": "3 6/10",
        "verdict": "right",
        "would_write": [],
        "speaks": "neither",
        "right_by_luck": True,
    }
    assert 0 < text["no_steady_pattern"] < text["together"] < 1


def test_the_page_has_a_row_for_what_says_something() -> None:
    """Answers that cannot show what was found are named in a line; typed lines stand as they are."""
    [talk] = _talks("K01")
    assert [row["label"] for row in talk["rows"]] == ["1.", "2.", "3."]
    assert talk["others"] == "Right, and saying nothing more: 4."
    [nothing] = _talks("K06")
    assert (nothing["rows"], nothing.get("others"), nothing["ask"]) == ([], None, [])
    lines = mark("1. 9 5/8 - 4 6/8", 'pupil,1\nK01,"9 13/8 - 4 6/8\n= 5 7/8"')
    talks = talks_page(Header(), [report(lines, "K01")]).data["talks"]
    assert isinstance(talks, list)
    assert talks[0]["rows"][0]["wrote"] == "“9 13/8 - 4 6/8 = 5 7/8”"


def _talks(*pupils: str) -> list[dict[str, Any]]:
    talks = talks_page(Header(), [_of(pupil) for pupil in pupils]).data["talks"]
    assert isinstance(talks, list)
    return talks


def test_a_talk_also_moves_the_odds_of_an_idea_that_is_not_ours() -> None:
    """A child who writes the larger number of pieces whatever is asked, and is asked once more."""
    page = "1. 9 5/8 - 4 6/8\n2. 6 7/8 - 3 2/8\n3. 8 1/6 - 3 5/6\n4. 5 1/4 - 2 3/4\n"
    answers = "pupil,1,2,3,4\nK01,5 6/8,3 7/8,,2 2/4\n"
    night = mark(page, answers, asked="pupil,asked,wrote,word\nK01,7 1/5 - 2 4/5,5 4/5,\n")
    told = report(night, "K01")
    assert told.talk
    assert told.finding.status is Status.UNLISTED
    moved = told.talk.unlisted
    assert Fraction(1, 4) < moved.before < moved.after == told.unlisted
    assert f"a steady idea that no pattern describes {in_words(moved.before)} before, " in odds_moved(told)
    made: Any = report_object(told)["talk"]
    assert made["not_listed"] == {"before": odds(moved.before), "after": odds(moved.after)}
    listed = report(mark(PAGE, ANSWERS, asked="pupil,asked,wrote,word\nK01,8 2/8 - 6 3/8,1 9/8,\n"), "K01")
    assert "no pattern describes" not in odds_moved(listed)


def test_what_was_asked_since_is_told_with_the_odds_before_and_after() -> None:
    """In lines, on the page of the talks and in JSON; a pupil who was asked nothing has none of it."""
    asked = "pupil,asked,wrote,word\nK07,8 2/8 - 6 3/8,2 1/8,this idea\nK07,9 - 4,-,\nK07,9 - 4,smudge,\n"
    night = mark(PAGE, ANSWERS, asked=asked)
    told = report(night, "K07")
    said = talked(told)
    assert said[0] == "Asked 8 2/8 - 6 3/8: wrote 2 1/8; fits."
    assert said[1] == "Asked 9 - 4: wrote -; nothing written."
    assert said[2] == "Asked 9 - 4: wrote smudge; not readable."
    assert said[3:] == (f"Your word on the talk: this idea ({idea('A01')}). It counts, but not as certain.",)
    moved = odds_moved(told)
    assert moved.startswith(f"What the talk changed in the odds: {idea('A01')} about ")
    assert moved.endswith(" in 100 with it.")
    assert {*said, moved} <= set(report_lines(told))
    assert odds_moved(_of("K07")) == ""
    printed: Any = talks_page(Header(), [told]).data["talks"]
    assert set(said) <= set(printed[0]["beside"])
    found_talk = report_object(told)["talk"]
    assert isinstance(found_talk, dict)
    assert [one["verdict"] for one in found_talk["asked"]] == ["wrong", "blank", "unreadable"]
    assert found_talk["word"] == "this idea: A01"
    assert all(0 < one[key] < 1 for one in found_talk["odds"] for key in ("before", "after"))
    assert talked(_of("K07")) == ()
    assert "talk" not in report_object(_of("K07"))


def test_a_missing_last_unit_is_told_beside_what_the_answer_says() -> None:
    """The amount counts, and the teacher sees that its last unit was left away."""
    night = mark("1. 5 ft 2 in - 2 ft 7 in\n2. 1 h 50 min - 15 min\n", "pupil,1,2\nK01,3 ft 5,1 h 35\n")
    told = report_lines(report(night, "K01"))
    assert sum("; the last unit is missing" in line for line in told) == 2
    assert any(line.startswith("2.") and "right; cannot show it; the last" in line for line in told)
