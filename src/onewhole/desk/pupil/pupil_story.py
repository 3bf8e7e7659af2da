"""A pupil's story: nights over time, skills by weeks with their certainty, findings until they expire."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.bring_back import HOW
from onewhole.desk.classes.class_records import night_pages, room
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.night_summary import NightSummary, PupilSummary
from onewhole.desk.classes.practised import Practised, practised, skills_of
from onewhole.desk.classes.rosters import rosters
from onewhole.desk.classes.week import monday
from onewhole.desk.pupil.finding_told import finding_told
from onewhole.findings.attendance import PaperWord
from onewhole.findings.idea_course import HeldSince
from onewhole.findings.skill import Skill
from onewhole.findings.status import Status
from onewhole.languages.english.coming_back import NOT_YET, due_told, pupil_still
from onewhole.languages.english.nights_told import held_told
from onewhole.languages.english.placing import no_paper
from onewhole.languages.english.skills import skill_called
from onewhole.languages.english.words import names_listed
from onewhole.marking.diagnosis.course import course
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.interval import Interval, interval
from onewhole.marking.diagnosis.notebook import GOOD_FOR_DAYS
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.sentences.text import text_of
from onewhole.sheets.document import Sheet
from onewhole.store.classes import Pupil
from onewhole.store.opening import Store
from onewhole.writers.pattern_words import question
from onewhole.writers.skill_weeks import MOST_WEEKS, SkillRow, skill_weeks_picture

__all__ = [
    "BANDS", "CAUTION", "CERTAINTY", "GOOD_FOR_DAYS", "HOW", "MOST_WEEKS", "Hint", "PupilStory", "SkillLeft",
    "StoryNight", "story",
]  # fmt: skip

#: What stands beside the picture, and behind it.
BANDS = (
    "The wider a band, the less is known: it is drawn round the share of answers that are right, and few "
    "answers give a wide one."
)
CERTAINTY = (
    "Each band is a 95 % score interval (Wilson 1927) round the share of answers that are right, of those "
    "that were written and could be read. Few answers give a wide band: then next to nothing is known. "
    "Answers of one evening hang together, so the truth may lie outside more often than that."
)
#: A skill of which less than half of the answers would be right, per million, is not there to come back to;
#: our own cut.
THERE = 500_000


class StoryNight(Struct, frozen=True):
    """One night of a pupil: ``right`` of ``written``, of ``asked``; ``unread`` cells could not be read.

    ``handed_in`` is False where nothing was written; ``paper`` is what the teacher said of the paper, or the
    empty text.
    """

    number: int
    day: date
    name: str
    right: int
    written: int
    unread: int
    asked: int
    paper: str = ""

    @property
    def handed_in(self) -> bool:
        """Say whether anything was written."""
        return self.written > 0


class Hint(Struct, frozen=True):
    """What the answers of one night may show, and the last day on which that is valid.

    ``labels`` are the answers it rests on, as they are read out. ``days_left`` is below 0 where it has
    expired. ``gone`` is the later day whose answers withdrew it; ``course`` says how it went over the nights.
    """

    night: int
    day: date
    page: str
    until: date
    days_left: int
    patterns: tuple[str, ...]
    labels: str
    says: str
    ask: tuple[str, ...]
    gone: date | None = None
    course: str = ""

    @property
    def good(self) -> bool:
        """Say whether it has not expired, and no later night withdrew it."""
        return self.days_left >= 0 and self.gone is None


class SkillLeft(Struct, frozen=True):
    """A skill that the pupil practised: the last day, how likely a right answer is today, when it is due."""

    called: str
    last: date
    still: str
    due: date
    due_told: str


class PupilStory(Struct, frozen=True):
    """All that is told of one pupil. ``hints`` have the latest first; ``picture`` is SVG, or nothing ("").

    ``left`` are the skills that the pupil practised, those due first first.

    ``missing`` counts the nights not marked yet: they are not in the story. Neither are those on which the
    program failed, of which ``failed`` tells.
    """

    pupil: Pupil
    nights: tuple[StoryNight, ...]
    skills: tuple[SkillRow, ...]
    picture: str
    left: tuple[SkillLeft, ...]
    hints: tuple[Hint, ...]
    missing: int
    failed: tuple[str, ...] = ()

    @property
    def weeks(self) -> tuple[date, ...]:
        """Return the Mondays of the weeks with answers."""
        return tuple(sorted({one for row in self.skills for one in row.weeks}))

    @property
    def good_hints(self) -> tuple[tuple[Hint, ...], ...]:
        """Return the findings that have not expired, those of the same patterns together."""
        found: dict[tuple[str, ...], list[Hint]] = defaultdict(list)
        for hint in self.hints:
            if hint.good:
                found[hint.patterns].append(hint)
        return tuple(map(tuple, found.values()))

    @property
    def named(self) -> tuple[tuple[str, str], ...]:
        """Return the patterns of the findings that have not expired, by id, each with its name."""
        keys = sorted({key for hint in self.hints if hint.good for key in hint.patterns})
        return tuple((key, by_id(key).name) for key in keys)

    @property
    def old_hints(self) -> tuple[Hint, ...]:
        """Return the findings that have expired."""
        return tuple(hint for hint in self.hints if not hint.good)


def story(book: Store, room_number: int, code: str, today: date) -> PupilStory:
    """Return the story of a pupil up to a day. Raises NotThere."""
    with book.snapshot() as seen:
        here = room(seen, room_number)
        pupil = here.pupil(code)
        left = night_summaries(seen, room_number)
        found = night_pages(seen, room_number)
        who = rosters(seen, room_number)
    pages = {page.night.number: page for page in found}
    known = practised(found, left, [one.code for one in here.pupils], who)
    sheets = {number: page.sheet for number, page in pages.items()}
    theirs = [(leave.day, leave.left(code)) for leave in left.nights if code in leave.pupils]
    rows = _skills({number: page.kept.typed for number, page in pages.items()}, code, left.nights)
    return PupilStory(
        pupil,
        tuple(
            _night(leave, leave.pupils.get(code), who[leave.night].word(code))
            for leave in left.nights
            if code in leave.pupils or code in who[leave.night].got
        ),
        rows,
        skill_weeks_picture(rows),
        _left(known, code, today),
        tuple(
            _hint(leave, mine, sheets[leave.night], today, theirs)
            for leave in reversed(left.nights)
            if (mine := leave.pupils.get(code)) is not None and _says_something(mine)
        ),
        len(left.missing),
        left.failures_told,
    )


def _left(known: Practised, code: str, today: date) -> tuple[SkillLeft, ...]:
    rows = []
    for named in known.skills:
        if (found := known.trace(code, named)) is not None:
            band = found.band(max(today, found.day))
            when = due_told(found.due, today) if band.share >= THERE else NOT_YET
            rows.append(SkillLeft(skill_called(named), found.day, pupil_still(band.tenths), found.due, when))
    return tuple(sorted(rows, key=lambda one: (one.due, one.called)))


def _night(leave: NightSummary, mine: PupilSummary | None, word: PaperWord) -> StoryNight:
    right, written, unread = (mine.right, mine.written, mine.unread) if mine else (0, 0, 0)
    said = "" if word is PaperWord.HERE else PaperWord.LATE.value if written else no_paper(word)
    return StoryNight(leave.night, leave.day, leave.name, right, written, unread, len(leave.labels), said)


def _skills(typed: Mapping[int, str], code: str, nights: tuple[NightSummary, ...]) -> tuple[SkillRow, ...]:
    """Count right and read answers by skill and week; the skills in their own order."""
    right: dict[tuple[Skill, date], int] = defaultdict(int)
    read: dict[tuple[Skill, date], int] = defaultdict(int)
    for leave in nights:
        if (mine := leave.pupils.get(code)) is None:
            continue
        for one, verdict in zip(skills_of(typed[leave.night]), mine.verdicts, strict=True):
            key = one, monday(leave.day)
            right[key] += verdict in "rf"
            read[key] += verdict in "rfw"
    bands: dict[Skill, dict[date, Interval]] = defaultdict(dict)
    for (one, week), count in sorted(read.items(), key=lambda item: item[0][1]):
        if count:
            bands[one][week] = interval(right[one, week], count)
    return tuple(SkillRow(skill_called(one), bands[one]) for one in Skill if one in bands)


def _says_something(mine: PupilSummary) -> bool:
    return mine.status in {Status.LIKELY, Status.POSSIBLE} and bool(mine.patterns) and not mine.set_aside


def _hint(
    leave: NightSummary,
    mine: PupilSummary,
    sheet: Sheet,
    today: date,
    nights: Sequence[tuple[date, PupilNight]],
) -> Hint:
    words = sheet.header.words
    went = course(nights, mine.patterns)
    told = held_told(went) if isinstance(went, HeldSince) else None
    withdrew = (
        on for on, night in nights if on > leave.day and night.withdraws(mine.patterns, leave.left(mine.code))
    )
    return Hint(
        leave.night,
        leave.day,
        leave.name,
        leave.until,
        (leave.until - today).days,
        mine.patterns,
        names_listed(mine.evidence),
        finding_told(mine.status, mine.evidence, mine.patterns),
        tuple(
            dict.fromkeys(question(by_id(key), sheet.problems, words, mine.evidence) for key in mine.patterns)
        ),
        next(withdrew, None),
        text_of(told) if told else "",
    )
