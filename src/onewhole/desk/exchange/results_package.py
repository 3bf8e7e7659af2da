"""The results of a class as a OneRoster 1.2 package: a line item a night, a result a pupil, no name.

The identifiers that a school's system has for children are not kept (decision record 0060): its class list is
handed in once more, and pupils are found in it by their names.
"""

from collections.abc import Iterator
from datetime import date

from onewhole.desk.classes.papers import PaperChoice
from onewhole.desk.classes.scores import NightScores, Score, Scores, scores
from onewhole.desk.exchange.class_lists import ListedClass, class_called, roster_classes
from onewhole.desk.exchange.grade_book import score_written
from onewhole.desk.exchange.roster_files import written_files
from onewhole.errors import InputError
from onewhole.presses.zipped import zipped
from onewhole.problems.case_item import case_item
from onewhole.problems.standard_code import standard_code
from onewhole.store.opening import Store

_CATEGORY = "onewhole-homework"
_MEET = "Give each pupil on the page Class the name that the list has, or add who is missing to the list."


def results_package(
    book: Store, room_number: int, days: tuple[date, date], roster: tuple[bytes, str], called: str = ""
) -> bytes:
    """Return the results of the nights of some days as a package.

    ``roster`` is the class list and its name; the class in it is the one that is ``called`` so, or that has
    the name of this class, or its only one. Raises InputError for a pupil who is not in it, or is not told
    apart there, and NotThere.
    """
    found, (content, name) = scores(book, room_number, *days), roster
    classes = roster_classes(content, name)
    one = (
        classes[0]
        if len(classes) == 1 and not called
        else class_called(classes, called or found.room.name, name)
    )
    if not found.nights:
        raise InputError("No page was set in these days", remedy="Choose other days.")
    who = dict(_identified(found, one, name))
    blank = ("", "")
    objectives: list[tuple[str, ...]] = [
        (f"{_item(room_number, night)}-{at}", *blank, _item(room_number, night), "case", known)
        for night in found.nights
        for at, known in enumerate(sorted(_objectives(night)), start=1)
    ]
    tables: dict[str, list[tuple[str, ...]]] = {
        "categories": [(_CATEGORY, *blank, "Homework", "")],
        "lineItems": [(_item(room_number, night), *blank, *_line_item(night, one)) for night in found.nights],
        "results": [
            (
                *(f"{_item(room_number, night)}-{code}", *blank, _item(room_number, night), who[code]),
                *_result(night, score, one),
            )
            for night in found.nights
            for code, score in night.of.items()
        ],
    }
    return zipped(
        written_files({**tables, "lineItemLearningObjectiveIds": objectives} if objectives else tables)
    )


def _identified(found: Scores, listed: ListedClass, name: str) -> Iterator[tuple[str, str]]:
    """Yield the identifier of each pupil, by code."""
    for pupil in found.pupils:
        mine = [
            key for key, called in listed.pupils if pupil.name and called.casefold() == pupil.name.casefold()
        ]
        if len(mine) != 1:
            what = f"Pupil {pupil.code} is not by name in the class {listed.title} of this list"
            if mine:
                what = f"The name of pupil {pupil.code} is {len(mine)} times in the class {listed.title}"
            raise InputError(what, file=name, remedy=_MEET)
        yield pupil.code, mine[0]


def _item(room_number: int, night: NightScores) -> str:
    return f"onewhole-{room_number}-{night.page.night.number}"


def _line_item(night: NightScores, listed: ListedClass) -> tuple[str, ...]:
    day = night.page.night.day.isoformat()
    most = str(len(night.page.labels))
    return (
        *(" ".join(night.page.name.split()), "", day, day),
        *(listed.sourced_id, _CATEGORY, listed.term, "0", most, listed.school),
    )


def _result(night: NightScores, score: Score, listed: ListedClass) -> tuple[str, ...]:
    """Return what a paper came to; a paper that is not there has no score, and none is invented."""
    status = "not submitted"
    if score.wrote:
        status = "fully graded"
    elif score.choice is PaperChoice.EXCUSED:
        status = "exempt"
    late = "true" if score.choice is PaperChoice.LATE else "false"
    day, missing = night.page.night.day.isoformat(), "true" if score.owes else "false"
    return status, score_written(score), day, "", "", listed.sourced_id, "false", "false", late, missing


def _objectives(night: NightScores) -> set[str]:
    """Return the CASE identifiers of the standards of a page, of those that are known."""
    sheet = night.page.sheet
    codes = {
        standard_code(one.statement, sheet.header.grade, story=bool(one.story)) for one in sheet.problems
    }
    return {known for code in codes if (known := case_item(code)) is not None}
