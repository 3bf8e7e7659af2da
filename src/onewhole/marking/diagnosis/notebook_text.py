"""The notebook as text (JSON) that is kept in a file, and read from it again."""

import json
import re
from datetime import date
from typing import Annotated

import msgspec
from msgspec import Struct

from onewhole.errors import InputError
from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight, Sat, Stay

_Day = date  # a field of the file is called `date`

#: The version of the file; one without a version is of the first release, which knew no pupil's own history.
VERSION = 2
#: More thousandths of a pupil than any class has.
MOST = 10_000_000
REMEDY = "See whether this is the notebook of the class, as it was written; a new one may be begun beside it."
#: Where something is in a notebook, as the reader tells it: `$.nights[1].page`.
_PLACE = re.compile(r"(?P<what>.*) - at `\$(?:\.nights\[(?P<night>\d+)\])?(?P<part>.*)`")


class NotebookError(InputError):
    """The text is no notebook."""


class _Seat(msgspec.Struct, frozen=True, omit_defaults=True):
    """A seat as it stands in the file: what earlier releases did not know is left out where there is none."""

    pupil: str
    group: str
    talk: str
    id: str = ""
    stays: Stay = Stay.FREE


class _PupilRecord(Struct, frozen=True):
    """A pupil's own history after a night: millionths by set of ideas, and exact fits by pattern."""

    pupil: str
    shares: dict[str, Annotated[int, msgspec.Meta(ge=0, le=MILLION)]]
    fits: dict[str, Annotated[int, msgspec.Meta(ge=0, le=MOST)]]

    def __post_init__(self) -> None:
        """Refuse shares that cannot be."""
        self.night()

    def night(self) -> PupilNight:
        """Return it as the notebook has it."""
        return PupilNight(self.shares, self.fits)


class _NightRecord(Struct, frozen=True, kw_only=True):
    """A night as it stands in the file."""

    date: _Day
    page: str
    until: _Day | None = None
    pupils: dict[str, Annotated[int, msgspec.Meta(ge=0, le=MOST)]]
    groups: tuple[_Seat, ...]
    findings: tuple[KeptFinding, ...]
    histories: tuple[_PupilRecord, ...] = ()
    failed: str = ""


class _Book(Struct, frozen=True, kw_only=True):
    """A notebook as it stands in the file."""

    caution: str = CAUTION
    version: Annotated[int, msgspec.Meta(ge=1, le=VERSION)] = 1
    nights: tuple[_NightRecord, ...]


def notebook_text(book: Notebook) -> str:
    """Return a notebook as text; :func:`read_notebook` gives it back.

    >>> read_notebook(notebook_text(Notebook())) == Notebook()
    True
    """
    kept = msgspec.json.encode(_Book(version=VERSION, nights=tuple(map(_kept, book.nights))))
    return msgspec.json.format(kept, indent=1).decode() + "\n"


def read_notebook(text: str, file: str | None = None) -> Notebook:
    """Read a notebook; an empty text is one without nights. Raises NotebookError with the place.

    >>> read_notebook("").nights
    ()
    """
    if not text.strip():
        return Notebook()
    try:
        found = json.loads(text, parse_constant=_no_number)
    except (ValueError, RecursionError) as error:
        line, column = getattr(error, "lineno", None), getattr(error, "colno", None)
        msg = "the notebook is no JSON text"
        raise NotebookError(msg, file=file, line=line, column=column, remedy=REMEDY) from error
    try:
        nights = map(_night, msgspec.convert(found, type=_Book).nights)
    except msgspec.ValidationError as error:
        raise _refused(str(error), file) from error
    return Notebook(tuple(sorted(nights, key=lambda night: (night.on, night.page))))


def _no_number(name: str) -> object:
    msg = f"{name} is no number"
    raise ValueError(msg)


def _kept(night: NotebookNight) -> _NightRecord:
    return _NightRecord(
        date=night.on,
        page=night.page,
        until=night.until,
        pupils=dict(sorted(night.counts.items())),
        groups=tuple(
            _Seat(pupil, sat.name, sat.key, sat.id, sat.stays) for pupil, sat in sorted(night.seats.items())
        ),
        findings=night.findings,
        histories=tuple(
            _PupilRecord(pupil, dict(one.shares), dict(one.fits))
            for pupil, one in sorted(night.pupils.items())
        ),
        failed=night.failed,
    )


def _night(kept: _NightRecord) -> NotebookNight:
    seats = {one.pupil: Sat(one.group, one.talk, one.id, one.stays) for one in kept.groups}
    pupils = {one.pupil: one.night() for one in kept.histories}
    return NotebookNight(kept.date, kept.page, kept.pupils, seats, kept.findings, pupils, kept.failed)


def _refused(told: str, file: str | None) -> NotebookError:
    """Say what is not as it should be, in which night, and in which part of it."""
    place = _PLACE.fullmatch(told)
    what, night, part = (told, None, "") if place is None else place.group("what", "night", "part")
    where = [f"night {int(night) + 1}"] if night else []
    where += [part.strip(".")] if part else []
    msg = f"this is not as a notebook is written: {what[:1].lower()}{what[1:]}"
    return NotebookError(msg, where=", ".join(where) or None, file=file, remedy=REMEDY)
