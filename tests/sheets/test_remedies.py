"""One click on a remedy does something true: what was found is gone, or there is less of it."""

import pytest

from onewhole.findings.click import (
    AddProblem,
    AskInstead,
    Click,
    GoTo,
    LeaveOut,
    NewNumbers,
    NoOtherNumbers,
    WithoutWords,
)
from onewhole.findings.in_page import OverBudget, OverEvening, PageFinding
from onewhole.languages.english.clicks import button, clicked
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.apply_remedy import apply_remedy
from onewhole.sheets.audit import Audit, audit
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.remedies import PLAIN, REGROUPS, remedies
from onewhole.sheets.standards import STANDARDS
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from onewhole.writers.finding_keys import finding_key
from tests.kit.sheets import worked_sheet

LONG = "\n".join(f"{at}. {at + 1} 1/8 - {at} 6/8" for at in range(1, 30))
STORY = (
    "Considering environmental circumstances, approximately 5 1/3 pieces of decorative applications remain."
)

#: A page for every sort of finding there is, and some that are awkward.
PAGES = {
    "twins": "1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6",
    "twins, both in words": "1. 7 2/6 - 3 5/6 | Kites 7 2/6, 3 5/6.\n2. 8 1/6 - 4 4/6 | Kites 8 1/6, 4 4/6.",
    "twins, many": LONG,
    "twins, of which there are few": "1. 1/2 + 1/2\n2. 1/2 + 1/2\n3. 5 1/2 - 1/2",
    "minutes": "minutes: 1\n\n1. 7 2/6 - 3 5/6\n2. 5 - 1/3",
    "minutes, one problem": "minutes: 1\n\n1. 7 2/6 - 3 5/6",
    "alike": "1. 5 1/8 - 2 5/8\n2. 5 4/6 - 2 1/6",
    "alike, nothing tells": "1. 5 - 1/3",
    "hidden": "1. 7 2/6 - 3 5/6",
    "hidden, nothing shows": "1. 300 + 200",
    "climb": "a. 7 2/6 - 3 5/6\n# Look first.\nb. 5 4/6 - 2 1/6",
    "reading and story": f"1. 5 1/3 - 2 2/3 | {STORY}",
    "K1": "1. 3/13 + 1/13\n2. 5 - 1/3",
    "K1, a missing number": "1. 3/13 = ?/13\n2. 5 - 2",
    "K2": "grade: 3\n\n1. 2/5 + 1/5",
    "K3": "grade: 3\n\n1. 1/2 + 1/4",
    "K4": "1. 1 - 3 + 4",
    "K5": "mixed form: yes\nsimplest form: yes\n\n1. 5 - 1 3/8",
    "K6": "1. 5 1/3 - 2 2/3 | The club has 5 1/3 strips. A kite takes 2 2/3 strips. How many are left?",
    "K7": "picture: strip\n\n1. 5 1/3 - 2 2/3 | Of 5 1/3 yards 2 2/3 yards are cut. What is left?",
    "K8": "1. 2000000 + 3\n2. 5 - 2",
    "K9": "1. 3/4 + 1/6\n2. 5 1/2 - 1/4 | A kite takes 1/4 of 5 1/2 wholes.",
    "K10": "1. 1/2 x 3/4\n2. 5 - 2",
    "K11": "1. 7 2/6 - 3 5/6\n2. 5 1/8 - 2 6/8",
    "K14, K18, K51": "grade: 3\n\n1. 4567 + 3789\n2. 24 x 36\n3. 0.45 ? 0.6\n",
    "K17": "1. 342 + 118\n2. 561 + 223\n3. 782 + 345\n4. 963 + 214",
    "K16, all zeros": "1. 302 - 118\n2. 501 - 223\n3. 702 - 45\n4. 904 - 478",
    "K19, K30, K36": "1. 241 x 36\n2. order 2/3, 1/2, 3/4\n3. 36 in = ? ft\n",
    "K11, bare wholes": "1. 5 - 1 3/8\n2. 6 - 2 3/4",
    "K11, none regroups": "1. 57 - 22\n2. 5 5/8 - 2 4/8",
    "K12": "1. 3 2/7 - 1 5/7\n2. 4/9 + 7/9",
    "K13": "picture: strip\n\n1. 1 3/100 - 5/100",
    "K27": "1. round 3.46 to tenths\n2. 5 - 2",
    "K28": "1. round 450 to hundreds\n2. 5 - 2",
    "K6 with hundredths": "1. 1 3/100 - 5/100 | The club has 1 3/100 wholes. It cuts 5/100. What is left?",
}


def much(found: PageFinding, looked: Audit) -> tuple[int, int]:
    """Say how much of a sort is found: how many problems, or how many minutes."""
    same = [
        one for one in looked.findings if (type(one), finding_key(one)) == (type(found), finding_key(found))
    ]
    minutes = int(2 * looked.page.minutes) if isinstance(found, OverBudget | OverEvening) else 0
    return sum(len(one.labels) + 1 for one in same), minutes


@pytest.mark.parametrize("name", PAGES)
def test_one_click_takes_away_what_was_found(name: str) -> None:
    """Whatever is found in these pages, each click on offer for it leaves less of it than there was."""
    typed = PAGES[name]
    looked = audit(worked_sheet(typed))
    assert looked.findings
    for found in looked.findings:
        offered = remedies(found, looked)
        assert offered
        for click in offered:
            now = apply_remedy(typed, click)
            assert text_of(clicked(now.done)).endswith(".")
            assert text_of(button(click))[-1] not in ".:,"
            after = audit(worked_sheet(now.typed))
            if isinstance(click, GoTo):
                assert now.typed == typed
                assert click.label
            else:
                assert found not in after.findings, (name, found, click)
                assert much(found, after) < much(found, looked), (name, found, click)


def test_the_pages_show_every_sort_of_finding() -> None:
    """No sort is left untried; K3 says what K9 says better."""
    keys = {finding_key(found) for typed in PAGES.values() for found in audit(worked_sheet(typed)).findings}
    codes = {one.code.value for one in STANDARDS} - {"K3"}
    assert keys == codes | {"twins", "minutes", "alike", "hidden", "climb", "reading", "story"}


def of(name: str, key: str) -> list[Click]:
    """Return the clicks that are offered."""
    looked = audit(worked_sheet(PAGES[name]))
    return [
        click for found in looked.findings if finding_key(found) == key for click in remedies(found, looked)
    ]


def added(name: str) -> Statement:
    """Return the problem that is offered for a page of one kind only."""
    (click,) = of(name, "K11")
    assert isinstance(click, AddProblem)
    return click.asked


def test_words_are_left_to_the_teacher() -> None:
    """A click leads to the line, and says so; the other leaves the words out."""
    clicks = of("reading and story", "reading")
    assert [type(click) for click in clicks] == [GoTo, WithoutWords]
    assert text_of(button(clicks[0])) == "Go to 1: only you can write these words"
    assert apply_remedy(PAGES["reading and story"], clicks[1]).typed == "1. 5 1/3 - 2 2/3"


def test_a_story_keeps_its_numbers() -> None:
    """Of two twins in words none gets other numbers: the words would tell the old ones."""
    assert [type(click) for click in of("twins, both in words", "twins")] == [LeaveOut]


def test_a_problem_that_tells_apart_stands_where_the_page_climbs() -> None:
    """And not behind a harder one only because it came last."""
    typed = "1. 5 4/6 - 2 1/6\n2. 11 1/12 - 2 5/12"
    assert apply_remedy(typed, AddProblem(read_statement("5 5/6 - 2 1/6"))).typed.startswith(
        "1. 5 4/6 - 2 1/6\n2. 5 5/6 - 2 1/6\n3. "
    )


def test_other_denominators_are_the_nearest() -> None:
    """Sevenths become eighths, and regroup as before."""
    (first, *_) = of("K12", "K12")
    assert isinstance(first, AskInstead)
    assert [text(asked) for _, asked in first.asked] == ["3 2/8 - 1 5/8", "4/10 + 7/10"]


def test_the_other_sort_is_made_of_the_page() -> None:
    """A page of sixths and eighths gets eighths and no twin; one of bare wholes what always fits."""
    made = added("K11")
    asked = read_sheet(PAGES["K11"]).problems
    assert "/8" in text(made)
    assert twin_key(made) not in {twin_key(one.statement) for one in asked}
    assert added("K11, bare wholes") == PLAIN
    assert needs(added("K11, none regroups")).regrouping
    assert needs(REGROUPS).regrouping


def test_where_no_numbers_are_left_it_is_said() -> None:
    """One half and one half are the only halves of their sort: the twin is left out."""
    now = apply_remedy("1. 1/2 + 1/2\n2. 1/2 + 1/2", NewNumbers(("2",)))
    assert (now.typed, now.done) == ("1. 1/2 + 1/2", NoOtherNumbers(("2",)))
    assert text_of(clicked(now.done)) == "No other numbers are like these. Problem 2 left out."


def test_a_missing_number_gets_another_denominator_too() -> None:
    """3/13 = ?/13 in grade 4 asks of denominators that the grade meets, the gap's among them."""
    (first, *_) = of("K1, a missing number", "K1")
    assert isinstance(first, AskInstead)
    assert [text(asked) for _, asked in first.asked] == ["3/12 = ?/12"]
