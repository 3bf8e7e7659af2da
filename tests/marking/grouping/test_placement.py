"""Where one pupil belongs tomorrow, and the reason with its labels."""

import pytest

from onewhole.desk.marking.mark import mark
from onewhole.findings.attendance import PaperWord
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import NoPaper, NothingWritten, Wrong
from onewhole.languages.english.placing import placed_because
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.grouping.placement import Placement, placement
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.marking.reading.mark import mark_class
from onewhole.misconceptions.pattern import Family
from onewhole.notations.sentences.text import text_of
from onewhole.sentences.sentence import End
from onewhole.working.form import FormWanted
from tests.kit.answers import all_right, by_pattern, marked, page, right, written_by

PAGE = page()


def _placed(cells: list[str], wanted: FormWanted | None = None) -> Placement:
    answers = written_by(PAGE, {"K01": cells})
    marks = mark_class(answers, wanted) if wanted else mark_class(answers)
    return placement(marks.pupils[0], findings(marks)[0])


def _said(placed: Placement) -> str:
    return text_of(placed_because(placed.because, End.TYPED))


def _with(changes: dict[str, str]) -> list[str]:
    return [changes.get(problem.label, right(problem)) for problem in PAGE]


@pytest.mark.parametrize(
    ("changes", "place", "because"),
    [
        ({}, GroupKind.EXTENSION, "all 12 right"),
        ({"3": "?!"}, GroupKind.EXTENSION, "all 11 right; not readable: 3"),
        ({"3": ""}, GroupKind.EXTENSION, "all 11 right; nothing written in 3"),
        (dict.fromkeys("123", ""), GroupKind.EXTENSION, "all 9 right; nothing written in 1, 2 and 3"),
        (dict.fromkeys("1234", ""), GroupKind.SLIPS, "all 8 right; nothing written in 1, 2, 3 and 4"),
        (
            dict.fromkeys("1234567", ""),
            GroupKind.INTERVIEW,
            "nothing written in 1, 2, 3, 4, 5, 6 and 7",
        ),
        ({"2": "3 4/8"}, GroupKind.SLIPS, "one step beside right, perhaps a slip, in 2"),
        (
            {"2": "3 4/8", "10": "4 3/5", "12": "-"},
            GroupKind.SLIPS,
            "one step beside right, perhaps a slip, in 2 and 10; nothing written in 12",
        ),
        ({"7": "5 1/8"}, GroupKind.INTERVIEW, "wrong in 7"),
        ({"7": "1 1/7", "2": "9 1/7"}, GroupKind.INTERVIEW, "wrong in 2 and 7; no steady pattern"),
    ],
)
def test_the_first_rule_that_holds_places_a_pupil(
    changes: dict[str, str], place: GroupKind, because: str
) -> None:
    """The reason names the labels it comes from."""
    placed = _placed(_with(changes))
    assert (placed.place, _said(placed), placed.families) == (place, because, ())


def test_a_likely_pattern_places_by_its_family() -> None:
    """The family of the pattern, with the labels that fit and those that speak against it."""
    cells = by_pattern("A02", PAGE)
    cells[10] = right(PAGE[10])
    placed = _placed(cells)
    assert (placed.place, placed.families) == (GroupKind.FAMILY, (Family.REGROUPING,))
    assert (
        _said(placed)
        == "answers to 3, 4, 5, 6, 7, 8, 9 and 12 fit “opens a whole and still counts it”; against it: 11"
    )


@pytest.mark.parametrize("cells", [[""] * 12, ["-"] * 12])
def test_nothing_written_is_absent(cells: list[str]) -> None:
    """A pupil without an answer is absent, or wrote nothing: the teacher knows which."""
    assert _placed(cells) == Placement("K01", GroupKind.ABSENT, (NothingWritten(),))


def test_a_paper_that_is_not_there_has_the_teachers_word() -> None:
    """Absent, excused, late: it is told instead of that nothing was written, and nothing else changes."""
    texts = PupilTexts("K01", ("",) * len(PAGE), PaperWord.EXCUSED)
    marks = mark_class(read_texts((texts,), PAGE))
    placed = placement(marks.pupils[0], findings(marks)[0])
    assert placed == Placement("K01", GroupKind.ABSENT, (NoPaper(PaperWord.EXCUSED),))
    assert _said(placed) == "excused"


def test_nothing_readable_is_a_talk() -> None:
    """Twelve cells that cannot be read say nothing about the pupil."""
    placed = _placed(["see me"] * 12)
    assert placed.place is GroupKind.INTERVIEW
    assert _said(placed) == "not readable: 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 and 12"


def test_another_form_is_still_right() -> None:
    """The amount decides; the form that is wanted is named."""
    cells = all_right(PAGE)
    cells[6] = "39/8"
    placed = _placed(cells, FormWanted(mixed=True))
    assert (placed.place, _said(placed)) == (
        GroupKind.EXTENSION,
        "all 12 right; another form is wanted in 7",
    )


def test_the_kit_marks_as_the_room_does() -> None:
    """The short way to mark a class in tests is the one that is under test."""
    assert marked(PAGE, {"K01": all_right(PAGE)}) == mark_class(written_by(PAGE, {"K01": all_right(PAGE)}))


def test_many_answers_one_step_beside_right_are_no_slips() -> None:
    """Four of ten, each one unit too many where one was opened: a talk, and never “slips only”."""
    night = mark(
        "1. 9 1/4 - 4 2/4\n2. 7 2/6 - 3 5/6\n3. 52 - 27\n4. 403 - 158\n5. 9 5/8 - 4 2/8\n6. 1/2 + 1/3\n"
        "7. 85 - 32\n8. 3 4/6 + 2 1/6\n9. 5.2 - 2.7\n10. 3/4 - 1/8",
        "pupil,1,2,3,4,5,6,7,8,9,10\nK05,5 3/4,4 3/6,35,345,5 3/8,5/6,53,5 5/6,2.5,5/8\n"
        "K06,5 3/4,3 3/6,25,245,5 3/8,5/6,53,5 5/6,2.5,5/8",
    )
    place = {pupil: group.place for group in night.groups for pupil in group.pupils}
    assert (place["K05"], place["K06"]) == (GroupKind.INTERVIEW, GroupKind.SLIPS)


def test_one_wrong_answer_is_not_called_without_a_pattern() -> None:
    """It is too little to say so."""
    night = mark("1. 52 - 27\n2. 85 - 32\n3. 41 - 20", "pupil,1,2,3\nK26,36,53,21")
    (group,) = night.groups
    assert group.placings[0].because == (Wrong(("1",)),)
