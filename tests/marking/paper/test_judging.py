"""A cell judged: the picture's own reading, confirmed at most, and never turned into what was expected."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.paper.foreseen import OTHER, Foreseen
from onewhole.marking.paper.ink_reading import SURE, InkReading
from onewhole.marking.paper.judging import STRUCK_FROM, judged
from onewhole.marking.paper.read_cell import ReadCell, by_limit
from onewhole.marking.paper.sureness import Sureness
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.marking.reading.expected import expect
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement
from tests.kit.inks import inks, says

USUAL = Sureness.USUAL.limit
TYPED = ("7 2/6 - 3 5/6", "52 - 27", "5.2 - 2.7", "5 ft 2 in - 2 ft 7 in", "3/4 ? 5/6", "7 2/6 = 6 ?/6")
ASKED = {typed: Foreseen(expect(Problem("1", read_statement(typed), typed))) for typed in TYPED}
MIXED = ASKED["7 2/6 - 3 5/6"]
LIMITS = st.one_of(st.sampled_from([one.limit for one in Sureness]), st.integers(0, SURE))
READ_BY_DOUBT = {PaperWhy.ALONE, PaperWhy.CONFIRMED, PaperWhy.NOTHING, PaperWhy.DOUBTFUL}


@given(ink=inks(), foreseen=st.sampled_from([*ASKED.values()]), limit=LIMITS)
def test_the_text_is_always_the_picture_s_own(ink: InkReading, foreseen: Foreseen, limit: int) -> None:
    """Whatever is expected: no digit is changed, no doubt is raised, and no hostile reading crashes."""
    cell = judged(ink, foreseen, limit)
    assert cell.text in {ink.text, ""}
    if cell.verdict is PaperVerdict.READ:
        assert cell.text == ink.text
        assert ink.likelihood > max(ink.empty, ink.not_an_answer)
        assert all(ink.likelihood >= parts for _, parts in ink.readings)
        assert ink.likelihood > SURE // 2 or cell.why is PaperWhy.ALONE
    assert cell.doubt <= cell.alone
    assert cell.choices == (foreseen.signs or tuple(text for text, _ in ink.readings[:3]))


@given(ink=inks(), foreseen=st.sampled_from([*ASKED.values()]), limits=st.tuples(LIMITS, LIMITS))
def test_a_stricter_threshold_reads_nothing_more(
    ink: InkReading, foreseen: Foreseen, limits: tuple[int, int]
) -> None:
    """What is to be looked at stays so; and judging anew is as judging so at first."""
    strict, loose = sorted(limits)
    here, there = judged(ink, foreseen, strict), judged(ink, foreseen, loose)
    assert by_limit(there, strict) == here
    assert by_limit(here, loose) == there
    if there.verdict is PaperVerdict.UNSURE:
        assert here.verdict is PaperVerdict.UNSURE


@given(ink=inks(), limit=LIMITS)
def test_nothing_foreseen_is_the_picture_alone(ink: InkReading, limit: int) -> None:
    """Where a reading is none of the expected ones its doubt is that of the picture alone."""
    cell = judged(ink, MIXED, limit)
    if ink.readings and MIXED.weight(ink.text) == OTHER:
        assert cell.doubt == cell.alone


@given(ink=inks(), foreseen=st.sampled_from([*ASKED.values()]))
def test_the_strictest_setting_shows_every_cell(ink: InkReading, foreseen: Foreseen) -> None:
    """Also the empty ones."""
    assert judged(ink, foreseen, Sureness.EVERY.limit).verdict is PaperVerdict.UNSURE


def test_what_is_expected_confirms() -> None:
    """A right answer in any equal form and a pattern's answer, once the picture alone finds it likeliest."""
    for text in ("3 3/6", "3 1/2", "21/6", "4 3/6"):
        cell = judged(says((text, 960_000), ("9 8/9", 30_000)), MIXED, USUAL)
        assert (cell.verdict, cell.why, cell.text) == (PaperVerdict.READ, PaperWhy.CONFIRMED, text)
        assert cell.doubt < cell.alone == 40_000
    assert judged(says(("9 8/9", 960_000)), MIXED, USUAL).why is PaperWhy.DOUBTFUL
    assert judged(says(("9 8/9", 999_000)), MIXED, USUAL).why is PaperWhy.ALONE


def test_the_right_answer_in_second_place_is_never_read() -> None:
    """The trap: a lexicon that overrides would make 3 3/6 of what the picture reads as 3 5/9."""
    cell = judged(says(("3 5/9", 510_000), ("3 3/6", 480_000)), MIXED, SURE)
    assert (cell.verdict, cell.text) == (PaperVerdict.READ, "3 5/9")
    assert judged(says(("3 5/9", 510_000), ("3 3/6", 480_000)), MIXED, USUAL).verdict is PaperVerdict.UNSURE


def test_two_expected_answers_do_not_confirm_each_other() -> None:
    """Where the picture wavers between the right answer and a pattern's, it stays to be looked at."""
    cell = judged(says(("4 3/6", 600_000), ("3 3/6", 390_000)), MIXED, USUAL)
    assert cell.doubt == cell.alone == 400_000
    assert cell.verdict is PaperVerdict.UNSURE


@pytest.mark.parametrize(
    ("ink", "why"),
    [
        (says(("3 3/6", 990_000), struck=STRUCK_FROM), PaperWhy.STRUCK),
        (InkReading((("3.5", 999_000),), 0, 0, decimal=True), PaperWhy.DECIMAL),
        (InkReading((("3 lb", 999_000),), 0, 0, unit=True), PaperWhy.UNIT),
        (says(("3 3/6", 400_000), not_an_answer=590_000), PaperWhy.NO_ANSWER),
        (says(not_an_answer=SURE), PaperWhy.NO_ANSWER),
        (says(), PaperWhy.NO_ANSWER),
        (says(("-", SURE)), PaperWhy.NO_NUMBER),
        (says(("3 /", SURE)), PaperWhy.NO_NUMBER),
    ],
)
def test_what_is_always_shown(ink: InkReading, why: PaperWhy) -> None:
    """At the loosest threshold too: struck inside, decimals, units, scribbles, what is no number."""
    cell = judged(ink, MIXED, SURE + 1)
    assert (cell.verdict, cell.why) == (PaperVerdict.UNSURE, why)


@pytest.mark.parametrize(
    ("typed", "text", "why"),
    [
        ("5.2 - 2.7", "25", PaperWhy.DECIMAL),
        ("5 ft 2 in - 2 ft 7 in", "31", PaperWhy.UNIT),
        ("3/4 ? 5/6", "1", PaperWhy.SIGN),
    ],
)
def test_kinds_of_answers_that_are_not_read_well_are_shown(typed: str, text: str, why: PaperWhy) -> None:
    """Also where the picture shows a plain number: a point, a unit or a sign may have been missed."""
    assert judged(says((text, SURE)), ASKED[typed], SURE).why is why


@pytest.mark.parametrize("ink", [says(("7", SURE)), says(empty=SURE), says(not_an_answer=SURE), says()])
def test_where_a_sign_belongs_the_three_signs_are_offered(ink: InkReading) -> None:
    """Whatever the picture seems to say, for the program has learnt no signs: no digit, and never empty."""
    cell = judged(ink, ASKED["3/4 ? 5/6"], SURE + 1)
    assert (cell.verdict, cell.why, cell.text) == (PaperVerdict.UNSURE, PaperWhy.SIGN, "")
    assert cell.choices == ("<", "=", ">")


def test_an_empty_cell() -> None:
    """Surely empty is empty; perhaps empty is looked at, and neither is ever read as an answer."""
    assert judged(says(empty=SURE), MIXED, USUAL).verdict is PaperVerdict.EMPTY
    assert judged(says(empty=SURE - 15_000), MIXED, Sureness.MOST.limit).verdict is PaperVerdict.EMPTY
    unsure = judged(says(("1", 100_000), empty=890_000), MIXED, USUAL)
    assert (unsure.verdict, unsure.why, unsure.text) == (PaperVerdict.UNSURE, PaperWhy.DOUBTFUL, "")


@given(st.sampled_from(PaperVerdict), st.sampled_from(PaperWhy), st.sampled_from(["", "3"]))
def test_a_verdict_goes_with_its_reason(verdict: PaperVerdict, why: PaperWhy, text: str) -> None:
    """A cell that is read and to be shown at once cannot be built."""
    fits = {
        PaperVerdict.READ: bool(text) and why in {PaperWhy.ALONE, PaperWhy.CONFIRMED},
        PaperVerdict.EMPTY: not text and why is PaperWhy.NOTHING,
        PaperVerdict.UNSURE: why is PaperWhy.DOUBTFUL or why not in READ_BY_DOUBT,
    }[verdict]
    if fits:
        assert ReadCell(verdict, text, (), 0, 0, why).why is why
    else:
        with pytest.raises(ValueError, match="cannot be"):
            ReadCell(verdict, text, (), 0, 0, why)


def test_doubts_that_cannot_be_are_refused() -> None:
    """Below nothing, above certain, more with help than alone."""
    for doubt, alone in ((-1, 0), (2, 1), (0, SURE + 1)):
        with pytest.raises(ValueError, match="doubts"):
            ReadCell(PaperVerdict.READ, "3", (), doubt, alone, PaperWhy.ALONE)
