"""Long work: its turn, its seconds, what it hands over, what is not started twice."""

from collections.abc import Iterator
from functools import partial
from threading import Event

import pytest

from onewhole.errors import InputError
from onewhole.web.jobs import Draft, Job, Jobs, Outcome, Progress
from tests.kit.busy import busy
from tests.kit.doors import Ticks
from tests.kit.waiting import until

HOME = "/mine/1/page"


@pytest.fixture
def ticks() -> Ticks:
    """A clock at second 100."""
    return Ticks(100)


@pytest.fixture
def works(ticks: Ticks) -> Iterator[Jobs]:
    """Works by that clock."""
    made = Jobs(_clock=ticks, _quiet=0.05)
    yield made
    made.close()


def done(_progress: Progress) -> Outcome:
    """Hand over a page."""
    return Outcome(HOME, draft=Draft("1. 5 - 2", ("One problem.",), "six kites"))


def over(works: Jobs, work: Job) -> Job:
    """Return work when it has ended."""
    until(lambda: works[work.name].ended, "the end of the work")
    return works[work.name]


def test_a_draft_is_taken_up_by_the_name_of_the_work(works: Jobs) -> None:
    """The address leads to the page with the name; the text is kept with the work."""
    ended = over(works, works.start("A page", HOME, done))
    assert ended.goes == f"{HOME}?made={ended.name}"
    assert ended.draft == Draft("1. 5 - 2", ("One problem.",), "six kites")


def test_seconds_are_counted_from_its_turn(works: Jobs, ticks: Ticks) -> None:
    """Work that waits has none; work that goes on has as many whole ones as the clock says."""
    begun, held = Event(), Event()

    def run(_progress: Progress) -> Outcome:
        begun.set()
        held.wait(60)
        return Outcome("/")

    with busy(works):
        waits = works.start("A page", HOME, done)
        assert works.seconds(works[waits.name]) is None
    over(works, waits)
    ticks.now = 110
    work = works.start("A film", "/", run)
    begun.wait(60)
    ticks.now = 117.9
    assert works.seconds(works[work.name]) == 7
    held.set()


@pytest.mark.asvs("V2.4.1", "V15.2.2")
def test_the_same_work_is_started_once_unless_told(works: Jobs) -> None:
    """A second film of one night is none; a second page may have other wishes."""
    with busy(works):
        first = works.start("A page", HOME, done)
        assert works.start("A page", HOME, done).name == first.name
        assert works.start("A page", HOME, done, again=True).name != first.name
        assert works.start("A page", f"{HOME}/2", done).name != first.name


def test_what_is_refused_is_told(works: Jobs) -> None:
    """A refusal in its words with the remedy, a fault as one; both end the work."""

    def refuses(_progress: Progress) -> Outcome:
        raise InputError("Twenty problems take longer", remedy="Take fewer.")

    def breaks(_progress: Progress) -> Outcome:
        raise ZeroDivisionError

    refused = over(works, works.start("One", "/", refuses))
    assert (refused.refused, refused.goes) == ("Twenty problems take longer. Take fewer.", "")
    assert "fault of the program (ZeroDivisionError)" in over(works, works.start("Two", "/", breaks)).refused


def test_what_is_made_ready_is_not_told_and_not_made_twice_at_once(works: Jobs) -> None:
    """It is no work under way; the same is made once at a time; what goes wrong is quiet."""
    begun, held, made = Event(), Event(), list[str]()

    def run() -> None:
        made.append("board")
        begun.set()
        held.wait(60)
        raise InputError("No board")

    works.prefetch("board", run)
    begun.wait(60)
    works.prefetch("board", run)
    assert works.under_way() == ()
    held.set()
    until(lambda: not works._prefetching, "the board")
    assert made == ["board"]
    works.prefetch("board", run)
    until(lambda: len(made) == 2, "the second board")
    works.close()
    works.prefetch("board", run)
    assert made == ["board", "board"]


def test_what_follows_from_typing_is_made_when_it_is_quiet(works: Jobs) -> None:
    """Asked for again and again it is made once; another thing has its turn; a closing program makes none."""
    made = list[str]()
    for at in range(5):
        works.prefetch_when_quiet("tomorrow", partial(made.append, f"tomorrow {at}"))
    works.prefetch_when_quiet("other", partial(made.append, "other"))
    until(lambda: len(made) == 2, "tomorrow and the other")
    assert sorted(made) == ["other", "tomorrow 4"]
    works.prefetch_when_quiet("tomorrow", partial(made.append, "late"))
    works.close()
    works.prefetch_when_quiet("tomorrow", partial(made.append, "too late"))
    until(lambda: not any(timer.is_alive() for timer in works._waiting.values()), "no timer is left")
    assert "too late" not in made
