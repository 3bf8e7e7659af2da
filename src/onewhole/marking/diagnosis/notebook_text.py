"""The notebook as text (JSON) that is kept in a file, and read from it again."""

import json
from datetime import date

from onewhole.errors import InputError
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight, Sat

#: More thousandths of a pupil than any class has.
MOST = 10_000_000
REMEDY = "See whether this is the notebook of the class, as it was written; a new one may be begun beside it."


class NotebookError(InputError):
    """The text is no notebook."""


def notebook_text(book: Notebook) -> str:
    """Return a notebook as text; :func:`read_notebook` gives it back.

    >>> read_notebook(notebook_text(Notebook())) == Notebook()
    True
    """
    nights = [
        {
            "date": night.on.isoformat(),
            "page": night.page,
            "until": night.until.isoformat(),
            "pupils": dict(sorted(night.counts.items())),
            "groups": [
                {"pupil": pupil, "group": sat.name, "talk": sat.key}
                for pupil, sat in sorted(night.seats.items())
            ],
            "findings": [{"pupil": one.pupil, "patterns": list(one.patterns)} for one in night.findings],
        }
        for night in book.nights
    ]
    return json.dumps({"caution": CAUTION, "nights": nights}, indent=1, ensure_ascii=False) + "\n"


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
    reader = _Reader(file)
    nights = [
        reader.night(one, f"night {at}") for at, one in enumerate(reader.list(found, "nights"), start=1)
    ]
    return Notebook(tuple(sorted(nights, key=lambda night: (night.on, night.page))))


def _no_number(name: str) -> object:
    msg = f"{name} is no number"
    raise ValueError(msg)


class _Reader:
    """Takes the parts of a notebook out of what JSON gave, or says which one is not as it should be."""

    def __init__(self, file: str | None) -> None:
        self._file = file

    def refuse(self, what: str, where: str) -> NotebookError:
        return NotebookError(what, where=where, file=self._file, remedy=REMEDY)

    def get(self, found: object, name: str, where: str) -> object:
        if not isinstance(found, dict) or name not in found:
            raise self.refuse(f"“{name}” is missing in the notebook", where)
        return found[name]

    def list(self, found: object, name: str, where: str = "the notebook") -> list[object]:
        value = self.get(found, name, where)
        if not isinstance(value, list):
            raise self.refuse(f"“{name}” is no list", where)
        return value

    def word(self, found: object, name: str, where: str) -> str:
        value = self.get(found, name, where)
        if not isinstance(value, str):
            raise self.refuse(f"“{name}” is no text", where)
        return value

    def night(self, found: object, where: str) -> NotebookNight:
        groups, findings = self.list(found, "groups", where), self.list(found, "findings", where)
        seats = {
            self.word(one, "pupil", where): Sat(self.word(one, "group", where), self.word(one, "talk", where))
            for one in groups
        }
        kept = (KeptFinding(self.word(one, "pupil", where), self._patterns(one, where)) for one in findings)
        return NotebookNight(
            self._date(found, where),
            self.word(found, "page", where),
            self._counts(found, where),
            seats,
            tuple(kept),
        )

    def _date(self, found: object, where: str) -> date:
        said = self.word(found, "date", where)
        try:
            return date.fromisoformat(said)
        except ValueError as error:
            raise self.refuse(f"“{said[:40]}” is no date such as 2026-11-24", where) from error

    def _counts(self, found: object, where: str) -> dict[str, int]:
        value = self.get(found, "pupils", where)
        if not isinstance(value, dict):
            raise self.refuse("“pupils” is no table", where)
        for key, count in value.items():
            if not isinstance(count, int) or isinstance(count, bool) or not 0 <= count <= MOST:
                raise self.refuse(f"“{key[:40]}” counts no pupils in thousandths", where)
        return value

    def _patterns(self, found: object, where: str) -> tuple[str, ...]:
        value = self.list(found, "patterns", where)
        if not all(isinstance(one, str) for one in value):
            raise self.refuse("“patterns” are no ids", where)
        return tuple(str(one) for one in value)
