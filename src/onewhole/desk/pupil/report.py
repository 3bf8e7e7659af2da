"""Tell all that one pupil's answers may show: odds, evidence, what speaks against, what to ask next."""

from datetime import date

from onewhole.desk.marking.mark import Marked, asked_next, page_name
from onewhole.desk.tomorrow.practice_pages import UnknownPupilError
from onewhole.marking.diagnosis.notebook import Notebook, NotebookNight
from onewhole.marking.diagnosis.report import Report
from onewhole.marking.diagnosis.report import report as put_together
from onewhole.writers.marks_json import Json
from onewhole.writers.report_json import report_object
from onewhole.writers.report_lines import report_lines
from onewhole.writers.report_words import odds_moved, talked


def report(marked: Marked, pupil: str) -> Report:
    r"""Return what is told about one pupil. Raises UnknownPupilError for a code that is not in the answers.

    >>> from onewhole.desk.marking.mark import mark
    >>> night = mark("1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4", "pupil,1,2\nK01,3 4/8,4 2/4")
    >>> report(night, "K01").sets
    (('A01',), ('A02',))
    """
    return reports(marked, (pupil,))[0]


def reports(marked: Marked, pupils: tuple[str, ...]) -> tuple[Report, ...]:
    """Return what is told about some pupils, in the order in which they are named.

    Raises UnknownPupilError for a code that is not in the answers.
    """
    asked = {found.pupil: ask for found, ask in zip(marked.findings, asked_next(marked, pupils), strict=True)}
    by_pupil = {found.pupil: found for found in marked.findings}
    for pupil in pupils:
        if pupil not in by_pupil:
            msg = f"no pupil is called “{pupil}” in these answers"
            raise UnknownPupilError(msg, remedy=f"Use a code as it stands there: {', '.join(by_pupil)}.")
    nights = _nights(marked)
    return tuple(
        put_together(marked.marks, marked.weighed, by_pupil[one], asked[one], nights) for one in pupils
    )


def told(marked: Marked, found: Report) -> tuple[str, ...]:
    """Return a report as plain lines, the caution at their end."""
    return report_lines(found, marked.tonight.until if marked.tonight else None, marked.sheet.header.words)


def talks_told(marked: Marked) -> tuple[tuple[str, str], ...]:
    """Return the pupils who were asked something since, each with what was said and what it changed."""
    codes = tuple(marked.weighed.talks)
    found = reports(marked, codes) if codes else ()
    return tuple((one.pupil, " ".join((*talked(one), odds_moved(one)))) for one in found)


def as_object(marked: Marked, found: Report) -> Json:
    """Return a report as a JSON object; odds are exact fractions, which a door turns into numbers."""
    return report_object(found, marked.tonight.until if marked.tonight else None)


def _nights(marked: Marked) -> tuple[Notebook, date] | None:
    """Return the nights up to tonight, tonight among them without its findings."""
    if marked.tonight is None:
        return None
    on, page = marked.tonight.on, page_name(marked.sheet)
    tonight = NotebookNight(on, page, {}, {}, (), marked.pupils)
    return marked.tonight.before(page).and_night(tonight), on
