"""The notebook of a class."""

from datetime import date

from onewhole.marking.diagnosis.notebook import (
    GOOD_FOR_DAYS,
    KEPT_FOR_DAYS,
    KeptFinding,
    Notebook,
    NotebookNight,
    Sat,
    Tonight,
)

FIRST, SECOND, THIRD = date(2026, 11, 10), date(2026, 11, 24), date(2026, 12, 8)


def _night(on: date, page: str = "Kites", **counts: int) -> NotebookNight:
    return NotebookNight(
        on, page, counts, {"K01": Sat(f"Group {on}", "numerator")}, (KeptFinding("K01", ("A01",)),)
    )


def test_nights_are_kept_in_their_order() -> None:
    """Whichever is written in first; two pages of one day are two nights."""
    book = Notebook().and_night(_night(SECOND)).and_night(_night(FIRST)).and_night(_night(FIRST, "Tails"))
    assert [(night.on, night.page) for night in book.nights] == [
        (FIRST, "Kites"),
        (FIRST, "Tails"),
        (SECOND, "Kites"),
    ]


def test_a_night_read_again_stands_in_for_itself() -> None:
    """The same page of the same day counts once, and is no part of what came before it."""
    book = Notebook().and_night(_night(FIRST, A01=1000)).and_night(_night(SECOND, A01=500))
    again = book.and_night(_night(SECOND, A01=700))
    assert again.learnt(SECOND).counts == {"A01": 500 + 700}
    assert again.before(SECOND, "Kites") == Notebook((_night(FIRST, A01=1000),))
    assert again.before(FIRST, "Tails") == Notebook((_night(FIRST, A01=1000),))
    assert Notebook().before(FIRST, "Kites") == Notebook()


def test_what_was_learnt_fades() -> None:
    """Half in a fortnight, and again half in the next."""
    book = Notebook().and_night(_night(FIRST, A01=1000, sound=400)).and_night(_night(SECOND, A01=300))
    assert book.learnt(THIRD).counts == {"A01": (500 + 300) // 2, "sound": 100}
    assert Notebook().learnt(FIRST).counts == {}


def test_a_finding_runs_out() -> None:
    """It is good for two weeks; the latest is told first."""
    book = Notebook().and_night(_night(FIRST)).and_night(_night(SECOND))
    assert [night.on for night, _ in book.standing("K01", SECOND)] == [SECOND, FIRST]
    assert [night.on for night, _ in book.standing("K01", date(2026, 11, 25))] == [SECOND]
    assert book.standing("K02", SECOND) == ()
    assert (_night(FIRST).until - FIRST).days == GOOD_FOR_DAYS == 14
    assert Tonight(book, FIRST).until == _night(FIRST).until


def test_where_a_pupil_sat_last_is_what_counts() -> None:
    """A later night goes over an earlier one, pupil by pupil."""
    other = NotebookNight(SECOND, "Kites", {}, {"K02": Sat("Gulls", "regrouping")}, ())
    book = Notebook().and_night(_night(FIRST)).and_night(other)
    assert book.seats == {"K01": Sat(f"Group {FIRST}", "numerator"), "K02": Sat("Gulls", "regrouping")}


def test_nights_long_gone_are_dropped() -> None:
    """When next to nothing of them is left."""
    late = date.fromordinal(FIRST.toordinal() + KEPT_FOR_DAYS + 1)
    assert Notebook().and_night(_night(FIRST)).and_night(_night(late)).nights == (_night(late),)
    assert Tonight(Notebook((_night(FIRST),)), late).before("Kites").nights == (_night(FIRST),)
