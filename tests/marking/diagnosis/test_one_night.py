"""One night read, with what earlier nights showed of the class and of each pupil."""

from collections.abc import Sequence
from datetime import date, timedelta

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight
from onewhole.marking.diagnosis.one_night import NightRead, read_night
from onewhole.marking.reading.mark import ClassMarks
from tests.kit.answers import all_right, by_pattern, marked, page

DAY = date(2026, 11, 24)
#: Each page can show A01 once; the last one not at all.
ONCE = (
    ("9 5/8 - 4 6/8", "7 3/5 - 2 1/5"),
    ("8 1/6 - 3 5/6", "4/5 - 1/5"),
    ("6 1/4 - 3 2/4", "6 7/8 - 3 2/8"),
)
NEVER = ("1/4 + 2/4", "2/7 + 3/7")
OTHERS = 4


def _class(typed: Sequence[str], first: Sequence[str]) -> ClassMarks:
    asked = page(typed)
    rows = {"K01": first} | {f"K{at:02}": all_right(asked) for at in range(2, 2 + OTHERS)}
    return marked(asked, rows)


def _noted(book: Notebook, on: date, read: NightRead) -> Notebook:
    kept = tuple(KeptFinding(one.pupil, one.patterns) for one in read.findings if one.status is Status.LIKELY)
    return book.and_night(NotebookNight(on, "Kites", read.weighed.counts, {}, kept, read.pupils))


def _nights(nights: Sequence[tuple[Sequence[str], str]]) -> tuple[list[Finding], Notebook]:
    """Read nights one day after another; K01 follows a pattern, or with "" works rightly."""
    book, found = Notebook(), []
    for at, (typed, key) in enumerate(nights):
        asked, on = page(typed), DAY + timedelta(days=at)
        read = read_night(_class(typed, by_pattern(key, asked) if key else all_right(asked)), book, on)
        book = _noted(book, on, read)
        found.append(read.findings[0])
    return found, book


def test_fits_of_two_nights_make_it_likely_where_one_night_could_not() -> None:
    """Each night has one fit: alone they are possible, and together likely."""
    found, _ = _nights([(typed, "A01") for typed in ONCE])
    assert found[0].status is not Status.LIKELY
    assert (found[2].status, found[2].patterns, found[2].evidence) == (Status.LIKELY, ("A01",), ("1",))
    alone, _ = _nights([(ONCE[2], "A01")])
    assert alone[0].status is not Status.LIKELY


def test_odds_from_earlier_nights_are_no_finding_without_a_fit_of_tonight() -> None:
    """On a page that cannot show the idea nothing is said; the night after, it is there again."""
    found, book = _nights([*((typed, "A01") for typed in ONCE), (NEVER, ""), (ONCE[0], "A01")])
    assert (found[3].status, found[3].evidence) == (Status.NONE, ())
    assert found[4].status is Status.LIKELY
    held = [night.pupils["K01"].shares for night in book.nights]
    assert sum(share for key, share in held[3].items() if "A01" in key) > 850_000
    assert "A01" not in book.nights[3].pupils["K01"].fits


def test_who_works_rightly_again_is_released_the_same_night() -> None:
    """The finding stood in the morning; after a page of right answers it is withdrawn."""
    whole = tuple(one for typed in ONCE for one in typed)
    steady = [(whole, "A01"), (whole, "A01")]
    _, before = _nights(steady)
    assert before.standing("K01", DAY + timedelta(days=2)) != ()
    found, after = _nights([*steady, (whole, "")])
    assert found[2].status is Status.NONE
    assert after.standing("K01", DAY + timedelta(days=2)) == ()
    assert after.nights[2].pupils["K01"].fits["A01"] == 0


def test_who_hands_nothing_in_leaves_nothing_and_loses_nothing() -> None:
    """A night away is no evidence."""
    book = _nights([(typed, "A01") for typed in ONCE])[1]
    on = DAY + timedelta(days=3)
    read = read_night(_class(ONCE[0], ["", ""]), book, on)
    assert "K01" not in read.pupils
    assert _noted(book, on, read).histories(on).of["K01"] == book.histories(on).of["K01"]


def test_nobody_else_is_changed_by_one_pupils_history() -> None:
    """Given the same nights of the class, the odds of the others are the same, whatever one pupil left."""
    book = _nights([(ONCE[0], "A01"), (ONCE[1], "A01")])[1]
    without = Notebook(tuple(_without(night, "K01") for night in book.nights))
    on, marks = DAY + timedelta(days=2), _class(ONCE[2], by_pattern("A01", page(ONCE[2])))
    ours, bare = (read_night(marks, one, on).weighed.diagnoses for one in (book, without))
    assert ours[0].together > bare[0].together
    assert ours[1:] == bare[1:]


def _without(night: NotebookNight, pupil: str) -> NotebookNight:
    kept = {code: one for code, one in night.pupils.items() if code != pupil}
    assert len(kept) == len(night.pupils) - 1
    return NotebookNight(night.on, night.page, night.counts, night.seats, night.findings, kept)


def test_an_exact_fit_is_what_a_pattern_writes_itself() -> None:
    """4 9/8 is as much as A01's 5 1/8, and what A04 writes: it fits both, and is exactly of A04 alone."""
    typed = ("9 5/8 - 4 6/8", "7 3/5 - 2 1/5")
    read = read_night(_class(typed, ("4 9/8", "5 2/5")), Notebook(), DAY)
    fits = read.pupils["K01"].fits
    assert fits["A04"] == 1
    assert "A01" not in fits
    read = read_night(_class(typed, ("5 1/8", "5 2/5")), Notebook(), DAY)
    fits = read.pupils["K01"].fits
    assert (fits["A01"], "A04" in fits) == (1, False)
