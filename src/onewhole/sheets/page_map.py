"""Where everything stands on a printed page: marks, the place for the pupil's code, places for answers.

Lengths are whole hundredths of a millimetre, from the top left corner of the paper.
"""

from msgspec import Struct

from onewhole.errors import Fault


class PageBox(Struct, frozen=True):
    """A rectangle on the paper. Raises Fault when it has no size or leaves the paper at the top or left."""

    left: int
    top: int
    width: int
    height: int

    def __post_init__(self) -> None:
        """Refuse what is no rectangle on paper."""
        if self.left < 0 or self.top < 0 or self.width <= 0 or self.height <= 0:
            raise Fault(f"no rectangle on paper: {self}")


class AnswerBox(Struct, frozen=True):
    """The place for the answer to a problem.

    ``line`` says whether the answer is written over a line, which then runs along the whole box, a sixth of
    its height over the lower edge, for what hangs below a line; otherwise the box is a frame in the problem,
    for a number or a sign that is missing. ``windows`` are the three frames for the whole, the number over
    the fraction's line and the one under it, or none. ``unit`` is printed beside the box, or empty.
    """

    label: str
    box: PageBox
    line: bool = True
    windows: tuple[PageBox, ...] = ()
    unit: str = ""


class MappedPage(Struct, frozen=True):
    """One page of paper: its number from 1, its size, and what stands where.

    ``marks`` are the four marks without the white round them, in the order of
    :mod:`~onewhole.sheets.page_marks`. ``pupil`` is the place for the pupil's code, with the white round it:
    the ``pupil_marks`` stand in it where the page is printed for a pupil, and ``letters`` are the boxes that
    a code is written in where it is not.
    """

    number: int
    width: int
    height: int
    marks: tuple[PageBox, ...]
    pupil: PageBox
    pupil_marks: tuple[PageBox, ...]
    letters: tuple[PageBox, ...]
    cells: tuple[AnswerBox, ...]


class PageMap(Struct, frozen=True):
    """All pages of a printed version, by the ``key`` that their marks say. Every problem has one box."""

    key: int
    pages: tuple[MappedPage, ...]
