"""The summary of a marked night: for each pupil how many were right, what the answers fitted."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date

import msgspec

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.desk.marking.mark import Marked, page_name
from onewhole.findings.night_failed import NightFailed
from onewhole.findings.status import Status
from onewhole.languages.english.nights_told import night_failed_told
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import NotebookNight, failed_night, good_until
from onewhole.marking.grouping.night_of import night_of
from onewhole.marking.reading.mark import PupilMarks, Verdict
from onewhole.notations.sentences.text import text_of

#: The letters under which verdicts are stored.
_LETTERS = {
    Verdict.RIGHT: "r",
    Verdict.FORM: "f",
    Verdict.WRONG: "w",
    Verdict.BLANK: ".",
    Verdict.UNREADABLE: "?",
}


@dataclass(frozen=True, slots=True)
class PupilSummary:
    """What one pupil's answers of one night showed.

    ``verdicts`` has a letter for each problem in the order of the page: ``r`` right, ``f`` right in another
    form than is asked for, ``w`` wrong, ``.`` nothing written, ``?`` not readable. ``fits`` has for the label
    of a wrong answer the ids of the patterns that it fits. ``status``, ``patterns`` and ``evidence`` (labels)
    are the finding's; ``set_aside`` says that the teacher does not want it, and then it says nothing.
    ``left`` is what the night leaves of the pupil's own history.
    """

    code: str
    verdicts: str
    fits: Mapping[str, tuple[str, ...]]
    status: Status
    patterns: tuple[str, ...]
    evidence: tuple[str, ...]
    group: str
    set_aside: bool
    left: PupilNight = field(default_factory=PupilNight)

    @property
    def right(self) -> int:
        """Return how many are right in amount."""
        return self.verdicts.count("r") + self.verdicts.count("f")

    @property
    def asked(self) -> int:
        """Return how many problems were asked."""
        return len(self.verdicts)

    @property
    def unread(self) -> int:
        """Return how many cells a teacher has to look at."""
        return self.verdicts.count("?")

    @property
    def written(self) -> int:
        """Return how many problems have something written."""
        return self.asked - self.verdicts.count(".")


@dataclass(frozen=True, slots=True)
class NightSummary:
    """The summary of one night: ``pupils`` by code, those who wrote something; ``labels`` are the page's.

    ``failed`` says where the program failed on this night, which tells nothing else then.
    """

    night: int
    day: date
    name: str
    labels: tuple[str, ...]
    pupils: Mapping[str, PupilSummary]
    failed: str = ""

    @property
    def until(self) -> date:
        """Return the last day on which the findings of this night are valid."""
        return good_until(self.day)


@dataclass(frozen=True, slots=True)
class NightSummaries:
    """The summaries of a class's nights, and the numbers of the nights not marked yet, both by day.

    ``stamp`` changes whenever any summary does. ``failed`` are the nights on which the program failed: they
    are not among ``nights``.
    """

    nights: tuple[NightSummary, ...]
    missing: tuple[int, ...]
    stamp: str
    failed: tuple[NightFailed, ...] = ()

    @property
    def failures_told(self) -> tuple[str, ...]:
        """Return what is told of the nights on which the program failed."""
        return tuple(text_of(night_failed_told(one)) for one in self.failed)


def summary_text(page: NightPage, marked: Marked, aside: frozenset[str] = frozenset()) -> str:
    """Return a marked night as two lines of text: what pages show, and its part of the class's notebook.

    ``aside`` are the pupils whose finding the teacher set aside: of them the next night knows nothing.
    """
    day = page.night.day
    page_is, counts = page_name(marked.sheet), marked.weighed.counts
    mine = night_of(day, page_is, counts, marked.findings, marked.groups, pupils={})
    groups = {pupil: group.name for group in marked.groups for pupil in group.pupils}
    pupils = {
        pupil.pupil: PupilSummary(
            pupil.pupil,
            "".join(_LETTERS[mark.verdict] for mark in pupil.marks),
            {mark.label: mark.fits for mark in pupil.marks if mark.fits},
            found.status,
            found.patterns,
            found.evidence,
            groups[pupil.pupil],
            pupil.pupil in aside,
            PupilNight() if pupil.pupil in aside else marked.pupils.get(pupil.pupil, PupilNight()),
        )
        for pupil, found in zip(marked.marks.pupils, marked.findings, strict=True)
        if _wrote(pupil)
    }
    shown = NightSummary(page.night.number, day, page.name, page.labels, pupils)
    return f"{msgspec.json.encode(shown).decode()}\n{msgspec.json.encode(mine).decode()}"


def failed_text(page: NightPage, failed: NightFailed) -> str:
    """Return the same for a night on which the program failed: nothing but that."""
    shown = NightSummary(page.night.number, page.night.day, page.name, page.labels, {}, failed.at)
    return f"{msgspec.json.encode(shown).decode()}\n{msgspec.json.encode(failed_night(failed)).decode()}"


@pupil_cache(maxsize=1024)
def read_summary(text: str) -> NightSummary:
    """Read the first line of :func:`summary_text`; a text read before costs nothing."""
    return msgspec.json.decode(text.partition("\n")[0], type=NightSummary)


@pupil_cache(maxsize=1024)
def notebook_night(text: str) -> NotebookNight:
    """Read :func:`summary_text` as the night of the class's notebook."""
    shown = read_summary(text)
    night = msgspec.json.decode(text.partition("\n")[2], type=NotebookNight)
    return replace(
        night,
        pupils={code: one.left for code, one in shown.pupils.items() if one.left.shares or one.set_aside},
    )


def _wrote(pupil: PupilMarks) -> bool:
    return any(mark.verdict is not Verdict.BLANK for mark in pupil.marks)
