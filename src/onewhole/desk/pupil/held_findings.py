"""The findings on one child that are kept in the file, in plain words: with how they are known."""

from collections.abc import Iterator, Mapping
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage, night_pages
from onewhole.desk.classes.marked_nights import cached_summaries
from onewhole.desk.classes.night_summary import NightSummary, PupilSummary
from onewhole.desk.pupil.finding_told import finding_told
from onewhole.findings.status import Status
from onewhole.languages.english.words import names_listed
from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.misconceptions.catalogue import patterns
from onewhole.store.opening import Store

#: How the findings of the program are known.
HOW_KNOWN = (
    "The program worked each problem as the class was taught, and wrongly in every way it knows, and "
    "compared the answers with what those would write. A finding is likely where two or more answers to "
    "differently built problems fit, and possible where fewer do. Nobody has talked with the child for it."
)

HUNDRED = 100
#: Ways of working without a steady idea, as they are told to a family.
_WAYS: Mapping[tuple[str, ...], str] = {
    ("sound",): "works rightly",
    ("shaky",): "slips often",
    ("scattered",): "tries one way after another",
}
_LISTED = frozenset(one.id for one in patterns())
_VERDICTS = {
    "r": "right",
    "f": "right, in another form than was asked for",
    "w": "wrong",
    ".": "nothing written",
    "?": "could not be read",
}


class HeldFinding(Struct, frozen=True):
    """What the file holds of one night of a child that was not typed but found.

    ``answers`` says of each answer what it was taken for, ``says`` what they may show together, ``group``
    where the child sat, ``carried`` what the next night is weighed with. ``old`` says that something was
    typed since: the next marking finds it anew.
    """

    day: date
    night: int
    page: str
    answers: str
    says: str
    good_until: date | None
    group: str
    old: bool
    carried: str = ""


def held_findings(book: Store, room: int, code: str) -> tuple[HeldFinding, ...]:
    """Return what is kept of findings on a child, by day: exactly what stands in the file, the old too."""
    with book.snapshot() as seen:
        kept = cached_summaries(seen, room)
        pages = night_pages(seen, room)
    return tuple(
        found
        for page in pages
        if page.night.number in kept
        for found in _held(page, code, *kept[page.night.number])
    )


def _held(page: NightPage, code: str, summary: NightSummary | None, old: bool) -> Iterator[HeldFinding]:
    day, night = page.night.day, page.night.number
    if summary is None:
        said = "Kept in the form of an earlier release, which is not read any more."
        yield HeldFinding(day, night, page.name, "", said, None, "", old)
    elif (mine := summary.pupils.get(code)) is not None:
        answers = "; ".join(
            _answer(label, verdict, mine.fits.get(label, ()))
            for label, verdict in zip(summary.labels, mine.verdicts, strict=True)
        )
        yield HeldFinding(
            day,
            night,
            page.name,
            answers,
            _said(mine),
            summary.until,
            mine.group,
            old,
            _carried(summary.left(code)),
        )


def _answer(label: str, verdict: str, fits: tuple[str, ...]) -> str:
    """Say what one answer was taken for."""
    told = f"{label}: {_VERDICTS[verdict]}"
    return f"{told}, as {names_listed(fits)} would write it" if fits else told


def _carried(left: PupilNight) -> str:
    """Say what the next night takes for likely, in hundredths."""
    named = [
        f"{_called(names)} {share * HUNDRED // MILLION} in 100"
        for names, share in left.named()
        if share * HUNDRED >= MILLION
    ]
    return f"What the next night is weighed with: {', '.join(named)}." if named else ""


def _called(names: tuple[str, ...]) -> str:
    if way := _WAYS.get(names):
        return way
    return " with ".join(names) if _LISTED.issuperset(names) else "a steady idea that is not listed"


def _said(mine: PupilSummary) -> str:
    if mine.set_aside:
        return "The teacher set the finding aside."
    if mine.status is Status.UNLISTED:
        return "What was wrong was steady, and no pattern of ours."
    if not mine.patterns or mine.status not in {Status.LIKELY, Status.POSSIBLE}:
        return "No steady pattern was found."
    return finding_told(mine.status, mine.evidence, mine.patterns)
