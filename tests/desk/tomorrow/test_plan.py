"""The morning page, the talks, and practice pages with their key."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.tomorrow.plan import no_practice, plan, plan_pages, tomorrow
from onewhole.desk.tomorrow.practice_pages import Tomorrow, UnknownPupilError, unpractised
from onewhole.errors import InputError
from onewhole.findings.paper import GroupPractice, MorningPaper, PupilPractice, TalksPaper

WHEN = datetime(2025, 3, 6, 7, 30, tzinfo=UTC)
SHEET = "title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3. 8 3/6 - 4 4/6\n"
ANSWERS = "pupil,1,2,3\nK01,3 5/8,5 1/8,4 1/6\nK02,3 5/8,4 7/8,3 5/6\n"


@pytest.fixture
def marked() -> Marked:
    """A night with one pupil who fits an idea and one who is right."""
    return mark(SHEET, ANSWERS)


def test_a_plan_holds_the_morning_practice_and_key(marked: Marked, tmp_path: Path) -> None:
    """One practice page a group, named after the group, then those of the pupils asked for; each is a PDF."""
    made = plan(marked, tmp_path / "plan", when=WHEN, asked=Tomorrow(pupils=("K02",)))
    assert [one.path.name for one in made] == [
        "morning.pdf",
        "talks.pdf",
        "practice-swifts.pdf",
        "practice-larks.pdf",
        "pupil-k02.pdf",
        "practice-key.pdf",
    ]
    assert all(one.path.read_bytes().startswith(b"%PDF-") for one in made)


def test_what_is_asked_comes_from_files(marked: Marked, tmp_path: Path) -> None:
    """Earlier sheets are read, and every pupil may be asked for at once."""
    earlier = tmp_path / "monday.txt"
    earlier.write_text("1. 2/8 + 3/8\n")
    asked = tomorrow(marked, every_pupil=True, earlier=[earlier])
    assert asked.pupils == ("K01", "K02")
    assert asked.finds_slip
    assert not tomorrow(marked, earlier=[earlier], find_slip=False).finds_slip
    with pytest.raises(InputError):
        tomorrow(marked, earlier=[tmp_path / "nothing.txt"])


def test_a_code_that_is_not_in_the_class_leaves_nothing(marked: Marked, tmp_path: Path) -> None:
    """It is refused with the codes there are, before anything is written."""
    with pytest.raises(UnknownPupilError, match="K07") as refused:
        plan(marked, tmp_path / "plan", when=WHEN, asked=Tomorrow(pupils=("K01", "K07")))
    assert refused.value.remedy == "Use a code as it stands in the answers: K01, K02."
    assert not (tmp_path / "plan").exists()


@pytest.mark.parametrize("asked", [Tomorrow(), Tomorrow(pupils=("K01", "K02"), find_slip=True)])
def test_a_page_for_a_child_names_no_pattern(marked: Marked, asked: Tomorrow) -> None:
    """Neither id nor name of a pattern stands in the data of a practice page, nor another pupil's code."""
    for paper, page in plan_pages(marked, asked):
        said = page.content.decode().lower()
        if not isinstance(paper.which, MorningPaper | TalksPaper):
            assert "a01" not in said
            assert "smaller number" not in said
        if isinstance(paper.which, GroupPractice):
            assert "k01" not in said
        if paper.which == PupilPractice("K02"):
            assert "k01" not in said


def test_a_page_without_its_like_gives_no_practice_and_says_so(tmp_path: Path) -> None:
    """No other halves make a whole: which groups go without is said, and what to do; else nothing is."""
    alone = mark("1. 1/2 + 1/2", "pupil,1\nK01,1\nK02,2/4\n")
    made = plan(alone, tmp_path / "alone", when=WHEN)
    assert [one.path.name for one in made] == ["morning.pdf"]
    says = no_practice(alone, made)
    assert says.startswith(
        "There is no practice page: no other numbers make a problem like 1/2 + 1/2. For practice,"
    )
    whose = [group.name for group in alone.groups]
    assert len(whose) == 2
    some = unpractised(whose, alone.sheet, {f"practice-{whose[0].lower()}"})
    assert some.startswith(f"There is no practice page for {whose[1]}: no other")
    both = {f"practice-{name.lower()}" for name in whose}
    assert unpractised(whose, alone.sheet, both) == ""
