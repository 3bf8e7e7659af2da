"""A page as a tree: its header, then instructions and problems in order."""

from msgspec import Struct, field

from onewhole.errors import InputError
from onewhole.problems.problem import Problem
from onewhole.sheets.header import Header, check_line


class SheetError(InputError):
    """A sheet cannot be used. ``mistakes`` are all that is wrong with it, in the order of its lines."""

    mistakes: tuple[InputError, ...] = ()


class Instruction(Struct, frozen=True):
    """Words to the pupil, standing between the problems; one line.

    >>> Instruction("Show each step.").words
    'Show each step.'
    """

    words: str

    def __post_init__(self) -> None:
        """Refuse no words, and words that do not fit on one line of a sheet."""
        check_line(self.words)
        if not self.words or self.words.startswith("#"):
            msg = "an instruction needs words that do not begin with #"
            raise SheetError(msg, remedy="Write # and then what the pupil should do.")


Item = Instruction | Problem


class Sheet(Struct, frozen=True):
    """A page: a header and at least one problem, with instructions where the teacher put them.

    Raises SheetError when there is no problem, or when two problems have one label (2A and 2a are one).

    >>> from onewhole.sheets.reading import read_sheet
    >>> [problem.label for problem in read_sheet("1. 52 - 27").problems]
    ['1']
    """

    items: tuple[Item, ...]
    header: Header = field(default_factory=Header)

    def __post_init__(self) -> None:
        """Refuse an empty page and a label used twice."""
        if not self.problems:
            msg = "there is no problem on this sheet"
            raise SheetError(msg, remedy="Write one problem a line with its label: 1. 7 2/6 - 3 5/6")
        seen: set[str] = set()
        for problem in self.problems:
            if problem.label.casefold() in seen:
                msg = f"two problems have the label {problem.label}"
                raise SheetError(msg, line=problem.line, remedy="Give each problem its own label.")
            seen.add(problem.label.casefold())

    @property
    def problems(self) -> tuple[Problem, ...]:
        """Return the problems in the order of the page."""
        return tuple(item for item in self.items if isinstance(item, Problem))
