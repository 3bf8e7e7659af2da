"""Which skills are due for each pupil on the day after a night, with a problem of each to be like."""

from collections.abc import Mapping
from datetime import date, timedelta

from onewhole.desk.classes.class_records import night_page, night_pages, room
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.practised import Practised, practised, skills_of
from onewhole.desk.classes.rosters import rosters
from onewhole.findings.skill import Skill
from onewhole.statements.statement import Statement
from onewhole.store.opening import Store


def pupils_due(book: Store, room_number: int, night_number: int) -> Mapping[str, tuple[Statement, ...]]:
    """Return by pupil the last problem of every skill that is due on the day after, those due first first.

    Only nights up to this one count, and no skill of this night is among them. Raises NotThere.
    """
    with book.snapshot() as seen:
        tonight = night_page(seen, room_number, night_number)
        codes = [pupil.code for pupil in room(seen, room_number).pupils]
        every, left = night_pages(seen, room_number), night_summaries(seen, room_number)
        who = rosters(seen, room_number)
    last = tonight.night.day, night_number
    before = [page for page in every if (page.night.day, page.night.number) <= last]
    known = practised(before, left, codes, who)
    tomorrow = tonight.night.day + timedelta(days=1)
    asked = set(skills_of(tonight.kept.typed))
    return {code: tuple(_due(known, code, asked, tomorrow)) for code in codes}


def _due(known: Practised, code: str, asked: set[Skill], tomorrow: date) -> list[Statement]:
    dues = []
    for named in known.skills:
        found = known.trace(code, named)
        if named not in asked and found is not None and (due := found.due) <= tomorrow:
            dues.append((due, named))
    return [_model(known, named) for _, named in sorted(dues, key=lambda one: (one[0], one[1].value))]


def _model(known: Practised, named: Skill) -> Statement:
    page = known.last[named]
    return page.sheet.problems[skills_of(page.kept.typed).index(named)].statement
