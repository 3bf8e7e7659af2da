"""One answer marked: verdicts, the tiers of patterns, remarks, and the two settings of form."""

import pytest

from onewhole.findings.in_answer import Remark, Tier
from onewhole.marking.reading.mark import Verdict
from onewhole.notations.text import text
from onewhole.working.form import FormWanted
from tests.kit.answers import marked, one_mark, page

HEART = "9 5/8 - 4 6/8"


@pytest.mark.parametrize(
    ("problem", "written", "verdict"),
    [
        (HEART, "4 7/8", Verdict.RIGHT),
        (HEART, "39/8", Verdict.RIGHT),
        (HEART, "4.875", Verdict.RIGHT),
        (HEART, "4 14/16", Verdict.RIGHT),
        (HEART, "5 1/8", Verdict.WRONG),
        (HEART, "4 7/0", Verdict.WRONG),
        (HEART, "<", Verdict.WRONG),
        (HEART, "-", Verdict.BLANK),
        (HEART, "see me", Verdict.UNREADABLE),
        ("5/6 ? 7/8", "<", Verdict.RIGHT),
        ("5/6 ? 7/8", ">", Verdict.WRONG),
        ("7 2/6 = 6 ?/6", "8", Verdict.RIGHT),
        ("7 2/6 = 6 ?/6", "12", Verdict.WRONG),
    ],
)
def test_verdicts(problem: str, written: str, verdict: Verdict) -> None:
    """Right in any equal form, wrong, blank, or not readable."""
    assert one_mark(problem, written).verdict is verdict


@pytest.mark.parametrize(
    ("written", "tier", "patterns"),
    [
        ("5 1/8", Tier.EXACT, ("A01",)),
        ("5 7/8", Tier.EXACT, ("A02", "A33")),
        ("4 9/8", Tier.EXACT, ("A04",)),
        ("5", Tier.EXACT, ("A11", "A12", "A18", "A26", "A32")),
        ("4 1/4", Tier.AMOUNT, ("A06",)),
        ("41/8", Tier.AMOUNT, ("A01", "A04")),
        ("1 1/8", Tier.WITH_SLIP, ("A13",)),
        ("100 1/3", None, ()),
    ],
)
def test_patterns_come_in_tiers(written: str, tier: Tier | None, patterns: tuple[str, ...]) -> None:
    """Exactly that answer before the same amount before one fact slip beside; every pattern of the tier."""
    mark = one_mark(HEART, written)
    assert (mark.verdict, mark.tier, mark.patterns) == (Verdict.WRONG, tier, patterns)


@pytest.mark.parametrize(
    ("problem", "written", "patterns", "remark"),
    [
        ("5 4/6 - 2 1/6", "2 9/6", ("A34",), Remark.OVERFULL),
        (HEART, "39/8", ("A35",), Remark.ONE_FRACTION),
        ("2 4/5 + 1 3/5", "3 7/5", ("P10",), Remark.OVERFULL),
        ("5 ft 2 in - 2 ft 7 in", "1 ft 19 in", (), Remark.OVERFULL),
    ],
)
def test_a_form_keeps_its_remark_and_stays_right(
    problem: str, written: str, patterns: tuple[str, ...], remark: Remark
) -> None:
    """Patterns of form are no errors: the answer is right and the form is remarked on."""
    mark = one_mark(problem, written)
    assert (mark.verdict, mark.tier, mark.patterns) == (Verdict.RIGHT, None, patterns)
    assert remark in mark.remarks


@pytest.mark.parametrize(
    ("written", "renamed"),
    [
        ("3 3/6", ["3 1/2", "21/6"]),
        ("3 1/2", ["7/2"]),
        ("21/6", ["3 3/6", "3 1/2"]),
        ("2 9/6", ["3 3/6", "3 1/2", "21/6"]),
        ("3.5", []),
    ],
)
def test_other_forms_are_named_and_never_demanded(written: str, renamed: list[str]) -> None:
    """A right answer may be renamed; that changes nothing about its verdict."""
    mark = one_mark("7 2/6 - 3 5/6", written)
    assert mark.verdict is Verdict.RIGHT
    assert [text(form) for form in mark.renamed] == renamed
    assert (Remark.MAY_BE_RENAMED in mark.remarks) == bool(renamed)


MIXED = FormWanted(mixed=True)
SIMPLEST = FormWanted(simplest=True)


@pytest.mark.parametrize(
    ("problem", "written", "mixed", "simplest"),
    [
        ("7 2/6 - 3 5/6", "3 3/6", Verdict.RIGHT, Verdict.FORM),
        ("7 2/6 - 3 5/6", "3 1/2", Verdict.RIGHT, Verdict.RIGHT),
        ("7 2/6 - 3 5/6", "7/2", Verdict.FORM, Verdict.RIGHT),
        ("7 2/6 - 3 5/6", "2 9/6", Verdict.FORM, Verdict.FORM),
        ("7 2/6 - 3 5/6", "3.5", Verdict.RIGHT, Verdict.RIGHT),
        ("7 2/6 - 3 2/6", "4 0/6", Verdict.RIGHT, Verdict.FORM),
        ("5 ft 2 in - 2 ft 7 in", "1 ft 19 in", Verdict.FORM, Verdict.RIGHT),
        ("7 2/6 - 3 5/6", "4 3/6", Verdict.WRONG, Verdict.WRONG),
        ("7 2/6 = 6 ?/6", "6 8/6", Verdict.RIGHT, Verdict.RIGHT),
        ("5/6 ? 7/8", "<", Verdict.RIGHT, Verdict.RIGHT),
        ("3/4 - 1/4", "-1/-2", Verdict.FORM, Verdict.FORM),
    ],
)
def test_the_two_settings_of_form(problem: str, written: str, mixed: Verdict, simplest: Verdict) -> None:
    """Each setting asks for one thing: the right amount in another form is "form"; wrong stays wrong."""
    assert one_mark(problem, written, MIXED).verdict is mixed
    assert one_mark(problem, written, SIMPLEST).verdict is simplest


@pytest.mark.parametrize(
    ("problem", "written", "patterns"),
    [
        ("1/2 - 2/5", "-1/-3", ("B02",)),
        ("3/4 - 1/6", "2/-2", ("B02",)),
        ("3/4 - 1/6", "-1", ("B02",)),  # as much as 2/-2
        ("7 2/6 - 3 5/6", "-3 3/6", ()),
        ("3/5 + 1/2", "-1/2", ()),  # one beside 4/8, but no slip makes a number go below zero
        ("5/6 ? 7/8", "-3", ()),
        ("5 ft 2 in - 2 ft 7 in", "-2 ft 7 in", ()),
    ],
)
def test_a_negative_answer_is_wrong_and_fits_what_writes_it(
    problem: str, written: str, patterns: tuple[str, ...]
) -> None:
    """It is read as it stands, never unreadable, and never one fact off something."""
    mark = one_mark(problem, written)
    assert (mark.verdict, mark.patterns) == (Verdict.WRONG, patterns)
    assert Remark.MAY_BE_SLIP not in mark.remarks


@pytest.mark.parametrize(("written", "tier"), [("2/4", Tier.EXACT), ("2/2", Tier.EXACT), ("1/4", None)])
def test_beside_a_fact_that_is_off_no_other_slip_is_looked_for(written: str, tier: Tier | None) -> None:
    """B13 writes 2/2 and 2/4 for 3/5 - 1/2; 1/4 is a piece beside 2/4, and nothing explains it."""
    mark = one_mark("3/5 - 1/2", written)
    assert (mark.tier, "B13" in mark.patterns) == (tier, tier is not None)


def test_two_minus_signs_are_the_right_amount() -> None:
    """-1/-2 is 1/2, in a form that nobody asks for."""
    assert one_mark("3/4 - 1/4", "-1/-2").verdict is Verdict.RIGHT


@pytest.mark.parametrize(
    ("problem", "written", "remarks"),
    [
        ("5 ft 2 in - 2 ft 7 in", "31", (Remark.UNIT_MISSING,)),
        ("5 ft - 2 ft", "3", (Remark.UNIT_MISSING,)),
        ("5 ft - 2 ft", "3 lb", (Remark.OTHER_UNIT,)),
        (HEART, "4 ft", (Remark.OTHER_UNIT,)),
        ("5/6 ? 7/8", "7/8", (Remark.SIGN_ASKED,)),
        ("5/6 ? 7/8", ">", ()),
        (HEART, "<", (Remark.NUMBER_ASKED,)),
        (HEART, "4 6/8", (Remark.MAY_BE_SLIP,)),
        ("2 4/5 + 1 3/5", "4 3/5", (Remark.MAY_BE_SLIP,)),
        ("52 - 27", "35", (Remark.MAY_BE_SLIP,)),
        (HEART, "4 5/8", ()),
    ],
)
def test_wrong_answers_with_a_remark(problem: str, written: str, remarks: tuple[Remark, ...]) -> None:
    """What a teacher would say at once: the unit is missing, a sign was asked for, one piece beside right."""
    mark = one_mark(problem, written)
    assert (mark.verdict, mark.remarks) == (Verdict.WRONG, remarks)


def test_a_class_is_marked_pupil_by_pupil_in_the_order_of_the_page() -> None:
    """One mark a problem, labelled, and what was written stays beside it."""
    marks = marked(page((HEART, "4 - 1 3/8")), {"K02": ["", "2 5/8"], "K01": ["4 7/8", "x"]})
    assert [(pupil.pupil, [mark.label for mark in pupil.marks]) for pupil in marks.pupils] == [
        ("K02", ["1", "2"]),
        ("K01", ["1", "2"]),
    ]
    assert [mark.verdict.value for pupil in marks.pupils for mark in pupil.marks] == [
        "blank",
        "right",
        "right",
        "unreadable",
    ]
    assert marks.pupils[1].marks[1].written.text == "x"
