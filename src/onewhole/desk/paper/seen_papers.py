"""What the pictures of papers hold: cells with what each says by itself, and what else was found."""

from collections.abc import Callable, Iterable

from msgspec import Struct

from onewhole.findings.in_pictures import PictureFinding
from onewhole.marking.paper.ink_reading import InkReading

NamedPicture = tuple[str, bytes]
"""A file of pictures: its name and its bytes."""


class SeenCell(Struct, frozen=True):
    """One cell of one pupil's paper: its picture as PNG, and what that says."""

    code: str
    label: str
    crop: bytes
    ink: InkReading


class SeenPapers(Struct, frozen=True):
    """The cells that were found in some pictures, and what was found beside them."""

    cells: tuple[SeenCell, ...]
    found: tuple[PictureFinding, ...] = ()


SeesPapers = Callable[[Iterable[NamedPicture]], SeenPapers]
"""What looks at pictures: the machine, or what stands for it in a test."""
