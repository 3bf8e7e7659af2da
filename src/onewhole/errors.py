"""One parent for everything this project refuses: what is wrong, where, and what to do next.

A room adds its own refusals as children of `OnewholeError` and of the built-in error nearest in meaning, so
that a caller may catch either. What a person typed is refused with `InputError` or a child of it.
"""

from typing import Self, TypeVar


class OnewholeError(Exception):
    """Something cannot be done, said so that a teacher knows what to do next.

    `what` is one sentence (its full stop may be left out), `where` is a place without a full stop, or None
    when there is no place, and `remedy` is the next thing to do as a full sentence, or None when nothing
    can be done. `what` comes first, the others by keyword. All are set once and travel through `pickle` and
    `copy`; so do a child's own fields.

    >>> print(OnewholeError("No page here", where="room12", remedy="Add a page to the folder."))
    No page here (room12). Add a page to the folder.
    """

    what: str
    where: str | None
    remedy: str | None

    def __init__(self, what: str, *, where: str | None = None, remedy: str | None = None) -> None:
        super().__init__(what, where, remedy)
        self.what = what
        self.where = where
        self.remedy = remedy

    def __str__(self) -> str:
        place = "" if self.where is None else f" ({self.where})"
        said = _sentence(self.what.rstrip(".") + place)
        return said if self.remedy is None else f"{said} {_sentence(self.remedy)}"

    def __setattr__(self, name: str, value: object) -> None:
        """Set a field once; `AttributeError` the second time (Python's own `__notes__` stays free)."""
        if name in self.__dict__ and not name.startswith("__"):
            raise AttributeError(f"{type(self).__name__}.{name} is already set and stays as it is")
        super().__setattr__(name, value)

    def __reduce__(self) -> tuple[object, ...]:
        """Fields are keywords, so a copy is made from the fields and not from `args`."""
        return _again, (type(self), self.args, dict(self.__dict__))


class Fault(OnewholeError):
    """The program caught itself in a mistake: never the fault of what was typed, never shown as a result.

    >>> Fault("two strategies disagree").remedy
    'Please report what you typed; nothing was changed.'
    """

    def __init__(
        self,
        what: str,
        *,
        where: str | None = None,
        remedy: str = "Please report what you typed; nothing was changed.",
    ) -> None:
        super().__init__(what, where=where, remedy=remedy)


class InputError(OnewholeError, ValueError):
    """What a person typed or handed in cannot be used.

    `line` and `column` count from 1, `file` is the name the person knows the file by; each is None when not
    known. `where` is put together from them, followed by the `where` that was given. A line or column below 1
    raises `ValueError`: that is a fault in the code that refuses, not in what was typed.

    >>> print(InputError("The denominator is 0", line=3, column=6, remedy="Write 1 or more."))
    The denominator is 0 (line 3, column 6). Write 1 or more.
    """

    file: str | None
    line: int | None
    column: int | None
    detail: str | None

    def __init__(
        self,
        what: str,
        *,
        where: str | None = None,
        remedy: str | None = None,
        file: str | None = None,
        line: int | None = None,
        column: int | None = None,
    ) -> None:
        super().__init__(what=what, where=_place(file, line, column, where), remedy=remedy)
        self.file = file
        self.line = line
        self.column = column
        self.detail = where

    def placed(self, *, file: str | None = None, line: int | None = None, columns: int = 0) -> Self:
        """Return the same refusal, seen from the larger text it stands in.

        `file` and `line` are taken where given. `columns` is how many characters of the line stand before the
        text that was read: it is added to `column` (a refusal without a column stays without one).

        >>> refused = InputError("The denominator is 0", column=3)
        >>> print(refused.placed(file="monday.txt", line=8, columns=4))
        The denominator is 0 (monday.txt, line 8, column 7).
        """
        moved = _again(type(self), self.args, self.__dict__)
        new_file = self.file if file is None else file
        new_line = self.line if line is None else line
        column = None if self.column is None else self.column + columns
        where = _place(new_file, new_line, column, self.detail)
        moved.__dict__.update(file=new_file, line=new_line, column=column, where=where)
        moved.args = (self.what, where, self.remedy)
        return moved


_E = TypeVar("_E", bound="OnewholeError")


def _again(kind: type[_E], args: tuple[object, ...], fields: dict[str, object]) -> _E:
    """Build an error from its fields, past `__init__`, so that a child's own fields come along."""
    made = kind.__new__(kind, *args)
    made.__dict__.update(fields)
    return made


def _place(file: str | None, line: int | None, column: int | None, detail: str | None) -> str | None:
    """Put a place into words: `monday.txt, line 3, column 6`; None when nothing is known."""
    for name, count in (("line", line), ("column", column)):
        if count is not None and count < 1:
            raise ValueError(f"a {name} counts from 1, and {count} was given")
    words = (file, line and f"line {line}", column and f"column {column}", detail)
    return ", ".join(word for word in words if word) or None


def _sentence(text: str) -> str:
    return text if text.endswith((".", "?", "!")) else f"{text}."
