"""The summary of a marked night: for each pupil how many were right, what the answers fitted."""

from collections.abc import Mapping
from datetime import date

import msgspec
from msgspec import Struct
from msgspec.structs import replace

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
LETTERS = {
    Verdict.RIGHT: "r",
    Verdict.FORM: "f",
    Verdict.WRONG: "w",
    Verdict.BLANK: ".",
    Verdict.UNREADABLE: "?",
}


class PupilSummary(Struct, frozen=True):
    """What one pupil's answers of one night showed.

    ``verdicts`` has a letter for each problem in the order of the page: ``r`` right, ``f`` right in another
    form than is asked for, ``w`` wrong, ``.`` nothing written, ``?`` not readable. ``fits`` has for the label
    of a wrong answer the ids of the patterns that it fits. ``status``, ``patterns`` and ``evidence`` (labels)
    are the finding's, where a record is kept of it; ``set_aside`` says that the teacher does not want it, and
    then it says nothing.
    """

    code: str
    verdicts: str
    fits: Mapping[str, tuple[str, ...]]
    status: Status
    patterns: tuple[str, ...]
    evidence: tuple[str, ...]
    group: str
    set_aside: bool

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


class NightSummary(Struct, frozen=True):
    """The summary of one night: ``pupils`` by code, those who wrote something; ``labels`` are the page's.

    ``failed`` says where the program failed on this night, which tells nothing else then. ``carried`` is what
    the night leaves of each pupil's own history, as text that is read when it is asked for (:meth:`left`).
    """

    night: int
    day: date
    name: str
    labels: tuple[str, ...]
    pupils: Mapping[str, PupilSummary]
    failed: str = ""
    carried: str = ""

    def left(self, code: str) -> PupilNight:
        """Return what the night leaves of a pupil's own history; nothing of one who is not in it."""
        return _left(self.carried).get(code) or PupilNight()

    @property
    def until(self) -> date:
        """Return the last day on which the findings of this night are valid."""
        return good_until(self.day)


class NightSummaries(Struct, frozen=True):
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
    """Return a marked night as three lines of text: what pages show, its part of the class's notebook, and
    what it leaves of each pupil's own history.

    ``aside`` are the pupils whose finding the teacher set aside: of them the next night knows nothing.
    """
    day = page.night.day
    page_is, counts = page_name(marked.sheet), marked.weighed.counts
    mine = night_of(day, page_is, counts, marked.findings, marked.groups, pupils={})
    groups = {pupil: group.name for group in marked.groups for pupil in group.pupils}
    pupils = {
        pupil.pupil: PupilSummary(
            pupil.pupil,
            "".join(LETTERS[mark.verdict] for mark in pupil.marks),
            {mark.label: mark.fits for mark in pupil.marks if mark.fits},
            found.status if found.recorded else found.status_unnamed,
            found.patterns if found.recorded else (),
            found.evidence if found.recorded else (),
            groups[pupil.pupil],
            pupil.pupil in aside,
        )
        for pupil, found in zip(marked.marks.pupils, marked.findings, strict=True)
        if _wrote(pupil)
    }
    shown = NightSummary(page.night.number, day, page.name, page.labels, pupils)
    left = {code: PupilNight() if code in aside else one for code, one in marked.pupils.items()}
    return _lines(shown, mine, left)


def failed_text(page: NightPage, failed: NightFailed) -> str:
    """Return the same for a night on which the program failed: nothing but that."""
    shown = NightSummary(page.night.number, page.night.day, page.name, page.labels, {}, failed.at)
    return _lines(shown, failed_night(failed), {})


def _lines(*parts: object) -> str:
    return "\n".join(msgspec.json.encode(part).decode() for part in parts)


@pupil_cache(maxsize=1024)
def read_summary(text: str) -> NightSummary:
    """Read what pages show of :func:`summary_text`; a text read before costs nothing."""
    shown, _, carried = _parts(text)
    return replace(msgspec.json.decode(shown, type=NightSummary), carried=carried)


@pupil_cache(maxsize=1024)
def notebook_night(text: str) -> NotebookNight:
    """Read :func:`summary_text` as the night of the class's notebook."""
    _, night, carried = _parts(text)
    return replace(msgspec.json.decode(night, type=NotebookNight), pupils=_left(carried))


def _parts(text: str) -> tuple[str, str, str]:
    """Return the lines of a summary; the last one is empty where an earlier release wrote it."""
    shown, _, others = text.partition("\n")
    night, _, carried = others.partition("\n")
    return shown, night, carried


@pupil_cache(maxsize=1024)
def _left(carried: str) -> Mapping[str, PupilNight]:
    return msgspec.json.decode(carried, type=dict[str, PupilNight]) if carried else {}


def _wrote(pupil: PupilMarks) -> bool:
    return any(mark.verdict is not Verdict.BLANK for mark in pupil.marks)
