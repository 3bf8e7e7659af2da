"""One click on a remedy does something true: what was found is gone, or there is less of it."""

import pytest

from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.audit import Audit, AuditFinding, audit
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.remedied import remedied
from onewhole.sheets.remedies import PLAIN, REGROUPS, Remedy, RemedyAct, remedies
from onewhole.sheets.standards import STANDARDS
from onewhole.statements.reading import read_statement
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
    "hidden, nothing shows": "1. 5 - 2",
    "climb": "a. 7 2/6 - 3 5/6\n# Look first.\nb. 5 4/6 - 2 1/6",
    "reading and story": f"1. 5 1/3 - 2 2/3 | {STORY}",
    "K1": "1. 3/13 + 1/13\n2. 5 - 1/3",
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
    "K11, bare wholes": "1. 5 - 1 3/8\n2. 6 - 2 3/4",
    "K11, none regroups": "1. 57 - 22\n2. 5 5/8 - 2 4/8",
    "K12": "1. 3 2/7 - 1 5/7\n2. 4/9 + 7/9",
    "K13": "picture: strip\n\n1. 1 3/100 - 5/100",
    "K6 with hundredths": "1. 1 3/100 - 5/100 | The club has 1 3/100 wholes. It cuts 5/100. What is left?",
}


def much(found: AuditFinding, looked: Audit) -> tuple[int, int]:
    """Say how much of a sort is found: how many problems, or how many minutes."""
    same = [one for one in looked.findings if (one.key, one.sets) == (found.key, found.sets)]
    page = looked.page
    return sum(len(one.labels) + 1 for one in same), int(2 * page.minutes) if found.key == "minutes" else 0


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
            now = remedied(typed, click)
            assert now.words.endswith(".")
            after = audit(worked_sheet(now.typed))
            if click.act is RemedyAct.GO:
                assert now.typed == typed
                assert click.labels
            else:
                assert found not in after.findings, (name, found.key, click)
                assert much(found, after) < much(found, looked), (name, found.key, click)


def test_the_pages_show_every_sort_of_finding() -> None:
    """No sort is left untried; K3 says what K9 says better."""
    keys = {found.key for typed in PAGES.values() for found in audit(worked_sheet(typed)).findings}
    codes = {one.code for one in STANDARDS} - {"K3"}
    assert keys == codes | {"twins", "minutes", "alike", "hidden", "climb", "reading", "story"}


def of(name: str, key: str) -> list[Remedy]:
    """Return the clicks that are offered."""
    looked = audit(worked_sheet(PAGES[name]))
    return [click for found in looked.findings if found.key == key for click in remedies(found, looked)]


def test_words_are_left_to_the_teacher() -> None:
    """A click leads to the line, and says so; the other leaves the words out."""
    clicks = of("reading and story", "reading")
    assert [click.act for click in clicks] == [RemedyAct.GO, RemedyAct.NO_WORDS]
    assert clicks[0].words == "Go to 1: only you can write these words"
    assert remedied(PAGES["reading and story"], clicks[1]).typed == "1. 5 1/3 - 2 2/3"


def test_a_story_keeps_its_numbers() -> None:
    """Of two twins in words none gets other numbers: the words would tell the old ones."""
    assert [click.act for click in of("twins, both in words", "twins")] == [RemedyAct.LEAVE_OUT]


def test_a_problem_that_tells_apart_stands_where_the_page_climbs() -> None:
    """And not behind a harder one only because it came last."""
    typed = "1. 5 4/6 - 2 1/6\n2. 11 1/12 - 2 5/12"
    assert remedied(typed, Remedy(RemedyAct.ADD, "", values=("5 5/6 - 2 1/6",))).typed.startswith(
        "1. 5 4/6 - 2 1/6\n2. 5 5/6 - 2 1/6\n3. "
    )


def test_other_denominators_are_the_nearest() -> None:
    """Sevenths become eighths, and regroup as before."""
    assert of("K12", "K12")[0].values == ("3 2/8 - 1 5/8", "4/10 + 7/10")


def test_the_other_sort_is_made_of_the_page() -> None:
    """A page of sixths and eighths gets eighths and no twin; one of bare wholes what always fits."""
    (made,) = of("K11", "K11")
    asked = read_sheet(PAGES["K11"]).problems
    (new,) = read_sheet(f"1. {made.values[0]}").problems
    assert "/8" in new.typed
    assert twin_key(new.statement) not in {twin_key(one.statement) for one in asked}
    assert [of("K11, bare wholes", "K11")[0].values[0]] == [PLAIN]
    assert needs(read_statement(of("K11, none regroups", "K11")[0].values[0])).regrouping
    assert needs(read_statement(REGROUPS)).regrouping


def test_where_no_numbers_are_left_it_is_said() -> None:
    """One half and one half are the only halves of their sort: the twin is left out."""
    now = remedied("1. 1/2 + 1/2\n2. 1/2 + 1/2", Remedy(RemedyAct.NEW_NUMBERS, "", ("2",)))
    assert (now.typed, now.words) == ("1. 1/2 + 1/2", "No other numbers are like these. Problem 2 left out.")
