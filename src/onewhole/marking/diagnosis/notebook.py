"""The notebook of a class: what each night showed, who sat where, and findings until they expire."""

from collections import defaultdict
from collections.abc import Collection, Mapping
from datetime import date
from enum import Enum

from msgspec import Struct, field

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.idea_course import GoneSince, IdeaCourse
from onewhole.findings.night_failed import NightFailed
from onewhole.marking.diagnosis.course import RECENT_NIGHTS, course
from onewhole.marking.diagnosis.history import Histories, History, PupilNight
from onewhole.marking.diagnosis.prior import NOTHING, Learnt

#: A finding expires after so many days; our own. Many patterns do not stay: VanLehn (1982), Tatsuoka, ed.
#: (1984).
GOOD_FOR_DAYS = 14
#: A night is taken out of the notebook after so many days, when next to nothing of it is left in the odds.
KEPT_FOR_DAYS = 140


class Stay(Enum):
    """Whether the teacher put a pupil in a group, and for how long. The value is the key kept."""

    FREE = ""
    TONIGHT = "tonight"
    ALWAYS = "until let go"


class Sat(Struct, frozen=True):
    """Where a pupil sat: the group's name, the key of what it is about, and its identity.

    ``id`` is the group's own from night to night, whatever its pupils' answers fit; in notebooks of earlier
    releases it is empty, and the name stands for it. ``stays`` says whether the teacher put the pupil there.
    """

    name: str
    key: str
    id: str = ""
    stays: Stay = Stay.FREE

    @property
    def group(self) -> str:
        """Return what the group is the same by from night to night.

        >>> Sat("Larks", "numerator").group, Sat("Larks", "numerator", "2026-11-24.1").group
        ('Larks', '2026-11-24.1')
        """
        return self.id or self.name


class KeptFinding(Struct, frozen=True):
    """A finding of an earlier night: whose, and which patterns the answers fit."""

    pupil: str
    patterns: tuple[str, ...]


class NotebookNight(Struct, frozen=True):
    """One night: its day and page, what it showed of the class, who sat where, and what was likely.

    ``counts`` are thousandths of a pupil by hypothesis (:func:`onewhole.marking.diagnosis.prior.counted`).
    ``pupils`` are those who answered, each with what the night left of the own history; nights that an
    earlier release wrote have none. ``failed`` says where the program failed on this night, of which nothing
    else is known then; empty where it did not.
    """

    on: date
    page: str
    counts: Mapping[str, int]
    seats: Mapping[str, Sat]
    findings: tuple[KeptFinding, ...]
    pupils: Mapping[str, PupilNight] = field(default_factory=dict)
    failed: str = ""

    @property
    def until(self) -> date:
        """Return the last day on which the findings of this night are valid."""
        return good_until(self.on)


def failed_night(failed: NightFailed) -> NotebookNight:
    """Return the notebook entry of a night on which the program failed: nothing but that.

    >>> Notebook((failed_night(NightFailed(date(2026, 11, 24), "Kites", "ValueError")),)).failures[0].at
    'ValueError'
    """
    return NotebookNight(failed.on, failed.page, {}, {}, (), {}, failed.at)


class Notebook(Struct, frozen=True):
    """The nights of a class, the earliest first; a page has one night a day."""

    nights: tuple[NotebookNight, ...] = ()

    def before(self, on: date, page: str) -> "Notebook":
        """Return the nights before this one; the same page on the same day is this one again."""
        kept = (night for night in self.nights if night.on <= on and (night.on, night.page) != (on, page))
        return Notebook(tuple(kept))

    def learnt(self, on: date) -> Learnt:
        """Return what all nights together have shown of the class, after forgetting up to a day."""
        found = NOTHING
        for night in self.nights:
            found = found.and_night(night.counts, night.on)
        return found.by(on)

    @property
    def failures(self) -> tuple[NightFailed, ...]:
        """Return the nights on which the program failed, the earliest first."""
        return tuple(NightFailed(one.on, one.page, one.failed) for one in self.nights if one.failed)

    def histories(self, on: date) -> Histories:
        """Return what the nights have shown of each pupil, for the night of a day."""
        found: dict[str, History] = {}
        for night in self.nights:
            found |= {pupil: History(night.on, one.shares) for pupil, one in night.pupils.items()}
        return Histories(on, found)

    def recent_fits(self, on: date) -> Mapping[str, Mapping[str, int]]:
        """Return by pupil and pattern how many answers were exact fits on the last nights that could show it.

        Patterns that are followed without a fit are there, with 0.
        """
        seen: dict[str, dict[str, list[int]]] = defaultdict(lambda: defaultdict(list))
        for night in self.nights:
            if on <= night.until:
                for pupil, one in night.pupils.items():
                    for key, count in one.fits.items():
                        seen[pupil][key].append(count)
        return {
            pupil: {key: sum(counts[-RECENT_NIGHTS:]) for key, counts in by_pattern.items()}
            for pupil, by_pattern in seen.items()
        }

    def withdrawn(self, pupil: str, on: date) -> tuple[tuple[tuple[str, ...], GoneSince], ...]:
        """Return the patterns of earlier findings that would still be good and that answers withdrew."""
        standing = [kept for _, kept in self.standing(pupil, on)]
        recent = (kept for night in self.nights if on <= night.until for kept in night.findings)
        gone = dict.fromkeys(one.patterns for one in recent if one.pupil == pupil and one not in standing)
        courses = ((patterns, self.course(pupil, patterns)) for patterns in gone)
        return tuple((patterns, since) for patterns, since in courses if isinstance(since, GoneSince))

    def course(self, pupil: str, patterns: Collection[str]) -> IdeaCourse | None:
        """Return how patterns went over the nights of a pupil (:func:`~.course.course`)."""
        nights = [(night.on, night.pupils[pupil]) for night in self.nights if pupil in night.pupils]
        return course(nights, patterns)

    @property
    def seats(self) -> Mapping[str, Sat]:
        """Return where each pupil sat last; a night without a paper leaves the seat as it was."""
        found: dict[str, Sat] = {}
        for night in self.nights:
            found |= {pupil: sat for pupil, sat in night.seats.items() if sat.key != GroupKind.ABSENT.value}
        return found

    @property
    def groups(self) -> tuple[Sat, ...]:
        """Return every group there was, each once, the latest first: a seat of each."""
        found: dict[str, Sat] = {}
        for night in reversed(self.nights):
            for sat in night.seats.values():
                found.setdefault(sat.group, sat)
        return tuple(found.values())

    def seats_on(self, on: date, page: str) -> Mapping[str, Sat]:
        """Return where each pupil sits by this page of this day, where the notebook has it already."""
        nights = (night.seats for night in self.nights if (night.on, night.page) == (on, page))
        return next(nights, {})

    def standing(self, pupil: str, on: date) -> tuple[tuple[NotebookNight, KeptFinding], ...]:
        """Return the earlier findings about a pupil that still stand, the latest first.

        A finding stands until it expires, or until the answers of a later night say that the ideas are gone.
        """
        later: list[PupilNight] = []
        found: list[tuple[NotebookNight, KeptFinding]] = []
        for night in reversed(self.nights):
            if on <= night.until:
                was = night.pupils.get(pupil)
                mine = (kept for kept in night.findings if kept.pupil == pupil)
                found += (
                    (night, kept)
                    for kept in mine
                    if not any(one.withdraws(kept.patterns, was) for one in later)
                )
            if pupil in night.pupils:
                later.append(night.pupils[pupil])
        return tuple(found)

    def and_night(self, night: NotebookNight) -> "Notebook":
        """Add a night: it replaces the same page of the same day, and nights of long ago are dropped.

        >>> book = Notebook().and_night(NotebookNight(date(2026, 11, 24), "Kites", {}, {}, ()))
        >>> len(book.and_night(NotebookNight(date(2026, 11, 24), "Kites", {"A01": 5}, {}, ())).nights)
        1
        """
        others = (one for one in self.nights if (one.on, one.page) != (night.on, night.page))
        kept = (one for one in others if (night.on - one.on).days <= KEPT_FOR_DAYS)
        return Notebook(tuple(sorted((*kept, night), key=lambda one: (one.on, one.page))))


class Tonight(Struct, frozen=True):
    """The notebook of a class and the day of the night that is read."""

    notebook: Notebook
    on: date

    @property
    def until(self) -> date:
        """Return the last day on which tonight's findings are valid.

        >>> Tonight(Notebook(), date(2026, 11, 24)).until.isoformat()
        '2026-12-08'
        """
        return good_until(self.on)

    def before(self, page: str) -> Notebook:
        """Return the nights before this one."""
        return self.notebook.before(self.on, page)


def good_until(on: date) -> date:
    """Return the last day on which the findings of a day are valid."""
    return date.fromordinal(on.toordinal() + GOOD_FOR_DAYS)
