from fractions import Fraction
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given, settings
from msgspec.structs import replace

from onewhole.desk.page.audit import audit_sheet
from onewhole.desk.page.compose import (
    as_object,
    compose,
    compose_again,
    compose_file_again,
    keep,
    told,
    typed,
)
from onewhole.findings.in_page import FallsBack, Severity, severity
from onewhole.findings.standard import StandardCode
from onewhole.findings.wished_skill import WishedSkill
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.problems.taught import as_taught
from onewhole.problems.twins import twin_key
from onewhole.sheets.clash import ClashError
from onewhole.sheets.composed import Composed
from onewhole.sheets.header import Header
from onewhole.sheets.learning import doubts, learnt, settles
from onewhole.sheets.page import page
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.recipe import RecipeError
from onewhole.sheets.review import listed
from onewhole.sheets.wishes import OpenQuestion, Review, Wishes
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question
from onewhole.working.questions import unsuited
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategy import fits
from onewhole.writers.family_page import family_page
from onewhole.writers.pupil_page import pupil_page
from tests.kit.wishes import wishes as any_wishes

SMALL = Wishes(number=6, denominators=(4, 8))


def kept(composed: Composed) -> None:
    """Every wish is kept, whatever was wished."""
    asked, sheet = composed.recipe.wishes, composed.sheet
    seen = page(WorkedSheet(sheet))
    review = {typed for one in asked.review for typed in listed(one, asked)}
    own = [one for one in seen.problems if one.problem.typed not in {*review, *asked.back}]
    assert len(seen.problems) == asked.number
    assert len(own) == asked.number - asked.set_aside
    assert set(asked.back) <= {one.problem.typed for one in seen.problems}
    assert asked.minutes is None or seen.minutes <= asked.minutes
    if asked.kept_regrouping is not None:
        assert sum(one.needs.regrouping for one in seen.problems) == asked.kept_regrouping
    assert not seen.twins
    assert not (set(asked.avoid) - set(asked.back)) & {one.problem.typed for one in seen.problems}
    for one in own:
        (denominator,) = one.needs.denominators
        assert denominator in asked.denominators
        taken = " - " in one.problem.typed
        assert asked.skill is WishedSkill.BOTH or taken == (asked.skill is WishedSkill.SUBTRACT)
        here = asked.strategy if asked.strategy is not COLUMNS else strategy_named(COLUMNS.partner)
        chosen = here if fits(here, taken=taken) else strategy_named(here.partner)
        assert isinstance(one.problem.statement, Question)
        assert unsuited(one.problem.statement, chosen) is None
    assert all(as_taught(one.problem.statement, asked.strategy) for one in own)
    told = {StandardCode.STORY_WITH_PICTURE} if asked.told else set()
    assert {note.standard.code for note in seen.notes} <= {StandardCode.BOTH_KINDS} | told
    assert read_sheet(typed(composed)) == sheet


@settings(max_examples=settings().max_examples // 6)
@given(any_wishes())
def test_a_page_keeps_every_wish_or_the_clash_is_named(some: Wishes) -> None:
    """Composed twice it is the same to the byte; what is said about it is true."""
    try:
        composed = compose(some)
    except ClashError:
        return
    kept(composed)
    assert typed(compose(some)) == typed(composed)
    assert typed(compose_again(composed.sheet)) == typed(composed)
    assert composed.gap >= 0
    open_doubts = doubts(some)
    bits = {one.label: settles(one.statement, open_doubts) for one in composed.sheet.problems}
    for at, one in enumerate(composed.told):
        assert one.labels == tuple(label for label, row in bits.items() if row >> at & 1)


@pytest.mark.parametrize(
    ("back", "number"), [("817 x 86", 10), ("plot 1/4: 3, 1/2: 5, 3/4: 2, 1: 4; find how much each", 8)]
)
def test_what_comes_back_takes_its_own_minutes(back: str, number: int) -> None:
    """Long work among what comes back leaves less room for what is new."""
    wished = Wishes(skill=WishedSkill.STEPS, number=number, minutes=18, back=(back,), regrouping=None)
    composed = page(WorkedSheet(compose(wished).sheet))
    assert composed.minutes <= 18
    assert len(composed.problems) == number


def test_a_page_from_the_whole_grade() -> None:
    """Twelve problems: nothing to change in the audit, every habit kept, no better page by one percent."""
    composed = compose(Wishes())
    kept(composed)
    assert composed.gap < Fraction(1, 100)
    assert composed.notes == ()
    assert composed.listed > 13_000
    audit = audit_sheet(WorkedSheet(composed.sheet))
    assert all(isinstance(one, FallsBack) for one in audit.findings)
    assert all(severity(one) is Severity.NOTE for one in audit.findings)
    assert [(one.first, one.second) for one in composed.told if not one.labels] == [(("A12",), ("A26",))]
    sorts = [one.needs.regrouping for one in page(WorkedSheet(composed.sheet)).problems]
    assert max(len(run.split("x")) for run in _runs(sorts)) <= 3
    assert composed.taught == learnt(
        doubts(Wishes()), [settles(one.statement, doubts(Wishes())) for one in composed.sheet.problems]
    )


def _runs(sorts: list[bool]) -> list[str]:
    found = [str(sorts[0])]
    for before, after in pairwise(sorts):
        if before == after:
            found[-1] += f"x{after}"
        else:
            found.append(str(after))
    return found


def test_another_seed_is_another_page() -> None:
    """That teaches as much."""
    pages = [compose(replace(SMALL, seed=seed)) for seed in range(4)]
    assert len({typed(one).split("\n\n")[1] for one in pages}) == 4
    assert len({one.taught for one in pages}) == 1


def test_open_questions_are_answered_first() -> None:
    """A page of one problem for a class in doubt between A01 and A02 tells just those apart."""
    asked = (OpenQuestion(("A01",), ("A02",), 1000),)
    for seed in range(3):
        (problem,) = compose(Wishes(number=1, regrouping=None, questions=asked, seed=seed)).sheet.problems
        wrote = {slip.pattern: slip.wrote for slip in shows(problem.statement)}
        assert wrote["A01"] != wrote["A02"]


def test_what_no_problem_settles_is_said() -> None:
    """A12 and A26 write the same wherever they show."""
    asked = (OpenQuestion(("A12",), ("A26",), 600), OpenQuestion((), ("P03",), 400))
    composed = compose(replace(SMALL, questions=asked))
    assert composed.notes[-1] == (
        "No problem of this skill settles all that is open (A12 or A26): ask the child."
    )


@pytest.mark.parametrize("taught", STRATEGIES, ids=lambda one: one.key)
def test_a_page_for_every_strategy(taught: object) -> None:
    """Each problem suits what the class was taught."""
    kept(compose(replace(SMALL, strategy=taught, skill=WishedSkill.BOTH)))  # a strategy


def test_what_comes_back_stands_as_it_was_typed_and_has_no_twin() -> None:
    """A mixed number with regrouping and a whole number: both count in number, regrouping and minutes."""
    back = ("7 1/4 - 3 3/4", "304 - 128")
    composed = compose(replace(SMALL, number=8, back=back, regrouping=Fraction(1, 2), minutes=20))
    kept(composed)
    assert compose_again(composed.sheet).sheet == composed.sheet


def test_review_and_an_example() -> None:
    """They come with the page; the example is a twin of none of its problems."""
    composed = compose(replace(SMALL, number=8, review=tuple(Review), faded=True))
    kept(composed)
    example = read_sheet(typed(composed)).header.to_finish
    assert example is not None
    assert twin_key(example) not in {twin_key(one.statement) for one in composed.sheet.problems}
    assert " - " in text(example)
    assert sum("?" in one.typed for one in composed.sheet.problems) == 1


@pytest.mark.parametrize(
    ("wishes", "words"),
    [
        (
            Wishes(number=12, minutes=10, denominators=(4, 8)),
            "10 minutes and 12 problems cannot both be met. The nearest that can: 16 minutes, or 7 problems.",
        ),
        (
            Wishes(number=12, minutes=15, denominators=(4, 8)),
            (
                "8 problems with regrouping, 15 minutes and 12 problems cannot all be met. "
                "The nearest that can: 6 problems with regrouping, or 16 minutes, or 11 problems."
            ),
        ),
        (
            Wishes(
                number=4, denominators=(4, 8), review=(Review.TENS, Review.OPENED), regrouping=Fraction(1, 4)
            ),
            (
                "review of tens and opened wholes and 1 problem with regrouping cannot both be met. "
                "The nearest that can: review of tens, or 2 problems with regrouping."
            ),
        ),
        (
            Wishes(number=5, denominators=(2,), largest=1, regrouping=None),
            (
                "the denominator 2, wholes up to 1 and 5 problems cannot all be met. "
                "The nearest that can: the denominators 2, 3, or wholes up to 3, or 2 problems."
            ),
        ),
    ],
)
@pytest.mark.more("web/test_page_desk.py")
def test_wishes_that_clash(wishes: Wishes, words: str) -> None:
    """They are named with the nearest that can be met, and those can."""
    with pytest.raises(ClashError) as clash:
        compose(wishes)
    assert str(clash.value) == words
    for near in clash.value.nearest:
        kept(compose(near))


@pytest.mark.parametrize(
    ("wishes", "note"),
    [
        (
            Wishes(number=2, denominators=(4, 8)),
            (
                "These wishes leave no room for a habit of good pages: every pattern about regrouping or the "
                "pieces shows, and every two of them are told apart."
            ),
        ),
        (
            replace(SMALL, regrouping=Fraction(1)),
            "All problems need regrouping, or none, as wished. A mixed page teaches more (K11).",
        ),
    ],
)
def test_what_is_not_as_usual_is_noted(wishes: Wishes, note: str) -> None:
    """In sentences."""
    composed = compose(wishes)
    kept(composed)
    assert note in composed.notes
    assert note in told(composed)


def test_numbers_that_hide_are_noted() -> None:
    """Where the wishes leave no other: with halves and one whole there are few problems."""
    plain, crowded = compose(SMALL), compose(Wishes(number=2, denominators=(2,), largest=1, regrouping=None))
    words = "Some numbers hide what a pupil thinks: with these wishes none do better. See the audit."
    assert words not in plain.notes
    kept(crowded)


def test_the_recipe_stays_with_the_teacher() -> None:
    """It may name patterns, so it is on no page that is printed for a child or a family."""
    asked = (OpenQuestion(("A01",), ("A02",), 1000),)
    sheet = compose(replace(SMALL, questions=asked)).sheet
    assert "A01" in sheet.header.recipe
    for made in (pupil_page(WorkedSheet(sheet)), family_page(WorkedSheet(sheet))):
        assert b"A01" not in made.content
        assert b"seed=" not in made.content


def test_json_has_what_other_programs_ask() -> None:
    """Problems with answers, recipe, gap, and what the page can and cannot tell apart."""
    found = as_object(compose(SMALL))
    assert list(found) == [
        "problems",
        "recipe",
        "doubt_left",
        "gap",
        "teaches",
        "bound",
        "chosen_from",
        "drawn",
        "tells_apart",
        "cannot_tell_apart",
        "notes",
        "sheet",
    ]
    problems, apart = found["problems"], found["tells_apart"]
    assert isinstance(problems, list)
    assert [list(one) for one in problems] == [["label", "problem", "answer"]] * 6
    assert isinstance(apart, list)
    assert {tuple(one) for one in apart} == {("patterns", "problems")}
    assert [["A12"], ["A26"]] in found["cannot_tell_apart"]  # type: ignore[operator] # a list


def test_made_again_from_a_file(tmp_path: Path) -> None:
    """The same bytes, with what else stood in the header."""
    composed = compose(SMALL, header=Header(title="Kites", class_name="Room 12"))
    keep(composed, tmp_path / "sheet.txt")
    again = compose_file_again(tmp_path / "sheet.txt")
    assert typed(again) == (tmp_path / "sheet.txt").read_text() == typed(composed)
    assert again.notes == ()


def test_another_version_and_another_page_are_noted() -> None:
    """A recipe is kept to its version, and what was changed by hand is seen."""
    sheet = read_sheet(typed(compose(SMALL)))
    older = replace(sheet, header=replace(sheet.header, recipe=sheet.header.recipe.replace("0.1.0", "0.0.9")))
    assert compose_again(older).notes == ("Version 0.0.9 composed this page; this is 0.1.0.",)
    changed = replace(sheet, items=sheet.items[1:])
    assert compose_again(changed).notes == ("The page comes out otherwise than the sheet says.",)


def test_a_sheet_without_a_recipe_is_refused() -> None:
    """It was typed, not composed."""
    with pytest.raises(RecipeError, match="this sheet has no recipe: it was not composed"):
        compose_again(read_sheet("1. 7 2/6 - 3 5/6"))


def test_told_in_lines() -> None:
    """How good the page is, what it tells apart, and what it does not."""
    composed = compose(SMALL)
    lines = told(composed)
    assert lines[0].startswith("Chosen from ")
    assert lines[0].endswith(" % of the doubt.")
    assert lines[1] == "Proven: no page with these wishes leaves less."
    assert lines[2].startswith("Tells apart ")
    assert lines[3] == "Not told apart: A12 and A26."
    worse = replace(composed, taught=composed.taught // 2, bound=composed.doubt * 99 // 100)
    assert told(worse)[1] == "Proven: no page with these wishes leaves less than 1.00 %."
