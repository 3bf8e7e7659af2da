"""The notebook of a class."""

from datetime import date

from onewhole.marking.diagnosis.history import History, PupilNight
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


def _held(on: date, share: int, fits: int, page: str = "Kites") -> NotebookNight:
    return NotebookNight(
        on, page, {}, {}, (KeptFinding("K01", ("A01",)),), {"K01": PupilNight({"A01": share}, {"A01": fits})}
    )


def _days(count: int) -> list[date]:
    return [date.fromordinal(FIRST.toordinal() + at) for at in range(count)]


def test_a_pupil_who_was_away_keeps_the_history_of_the_last_night_there() -> None:
    """And its day, so that what fades is counted from there."""
    away = NotebookNight(SECOND, "Kites", {}, {}, (), {"K02": PupilNight({"sound": 900_000})})
    found = Notebook((_held(FIRST, 980_000, 2), away)).histories(THIRD)
    assert found.on == THIRD
    assert found.of["K01"] == History(FIRST, {"A01": 980_000})
    assert found.of["K02"] == History(SECOND, {"sound": 900_000})
    assert Notebook((_night(FIRST),)).histories(SECOND).of == {}


def test_exact_fits_of_recent_nights_are_counted() -> None:
    """Of the last five nights that could show the pattern, none of them older than a finding may be."""
    book = Notebook(tuple(_held(on, 900_000, at) for at, on in enumerate(_days(7))))
    assert book.recent_fits(FIRST.replace(day=FIRST.day + 7)) == {"K01": {"A01": 2 + 3 + 4 + 5 + 6}}
    last = date.fromordinal(FIRST.toordinal() + 6 + GOOD_FOR_DAYS)
    assert book.recent_fits(last) == {"K01": {"A01": 6}}
    assert Notebook().recent_fits(FIRST) == {}


def test_a_finding_is_withdrawn_by_the_answers_of_a_later_night() -> None:
    """Not by its date: one night after which the idea is more likely gone ends every earlier finding."""
    first, second, third = _days(3)
    book = Notebook((_held(first, 980_000, 2), _held(second, 980_000, 2)))
    assert [night.on for night, _ in book.standing("K01", third)] == [second, first]
    gone = NotebookNight(third, "Kites", {}, {}, (), {"K01": PupilNight({"sound": 700_000}, {"A01": 0})})
    assert book.and_night(gone).standing("K01", third) == ()
    again = book.and_night(gone).and_night(_held(SECOND, 900_000, 2))
    assert [night.on for night, _ in again.standing("K01", SECOND)] == [SECOND]
