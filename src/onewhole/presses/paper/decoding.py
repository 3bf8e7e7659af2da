"""A file of pictures decoded: a photo, or a scanner's PDF of many pages, becomes grey pages the right way up.

What is not trusted is decoded, and looked through for marks, in a process of its own, with little memory and
time: a picture can be made so that looking at it takes hours.
"""

from collections.abc import Iterator, Sequence
from itertools import chain
from typing import Final

import msgspec
import numpy as np
from msgspec import Struct

from onewhole.findings.in_pictures import PagesLeft, PictureRefused, PictureUnread, Unread
from onewhole.presses.limited import limited
from onewhole.presses.paper.pdf_drawer import draw_for_parent
from onewhole.presses.paper.picture_decoder import decode_for_parent
from onewhole.presses.paper.picture_kinds import has_pages, is_pdf
from onewhole.presses.paper.seen_marks import Grey, Points, SeenMark

#: The most millions of bytes of a file: a scanner's PDF of a class has some 60.
LARGEST: Final = 200
#: Bytes of memory that decoding may take beside the file itself, and seconds of the processor for a whole
#: file and for one page of it.
MEMORY: Final = 1_500_000_000
SECONDS, SECONDS_A_PAGE = 120, 15
#: A page that takes too long ends its process; those behind it are then tried in a new one, so often in all.
_PROCESSES: Final = 3
#: A line of the process is not longer than this.
_LINE: Final = 200_000


class GreyPage(Struct, frozen=True, eq=False):
    """One page of a file in grey, what the teacher calls it, and the marks that it shows."""

    name: str
    grey: Grey
    marks: tuple[SeenMark, ...] = ()


class _Line(Struct, frozen=True):
    """What the process says before a page, and at its end."""

    page: int = 0
    width: int = 0
    height: int = 0
    marks: tuple[tuple[int, tuple[float, ...]], ...] = ()
    pages: int = 0
    why: str = ""
    most: int = 0


def decoded(
    content: bytes, name: str, pages: Sequence[tuple[int, ...]] = (), *, seconds: int = SECONDS_A_PAGE
) -> Iterator[GreyPage | PictureRefused]:
    """Yield the pages of a file as pictures, and what could not be read of it, with its ``name``.

    A JPEG, PNG, TIFF, WebP, HEIC or PDF, whatever the name says. A page is called ``scan.pdf, page 2`` where
    the file is of a kind that can have several. A page may take so many ``seconds`` of the processor.
    ``pages`` are the four marks of each page that may be in the pictures.
    """
    if len(content) > LARGEST * 1_000_000:
        yield PictureUnread(name, Unread.BYTES, LARGEST)
        return
    several = has_pages(content)
    first = 1
    for _ in range(_PROCESSES):
        for one in _from(first, content, pages, seconds):
            called = f"{name}, page {first}" if several else name
            match one:
                case (line, grey):
                    yield GreyPage(called, grey, tuple(SeenMark(*mark) for mark in _marks(line)))
                    first += 1
                case _Line(pages=there) if there:
                    if there >= first:
                        yield PagesLeft(name, first - 1, there)
                    return
                case _Line(why=why, most=most):
                    yield PictureUnread(called, Unread(why), most)
                    if not several or Unread(why) is not Unread.EFFORT:
                        return
        first += 1


def _from(
    first: int, content: bytes, pages: Sequence[tuple[int, ...]], seconds: int
) -> Iterator[tuple[_Line, Grey] | _Line]:
    """Yield the pages from a number on, then the line that ends them, also where the process was ended."""
    work = draw_for_parent if is_pdf(content) else decode_for_parent
    fell = False
    with limited(
        work, first, seconds, *chain(*pages), memory=MEMORY + 2 * len(content), seconds=SECONDS
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        process.stdin.write(len(content).to_bytes(8, "little"))
        process.stdin.write(content)
        process.stdin.flush()
        while True:
            try:
                line = msgspec.json.decode(process.stdout.readline(_LINE), type=_Line)
            except msgspec.DecodeError:
                break
            if not line.page:
                yield line
                return
            size = line.width * line.height
            grey = bytearray(process.stdout.read(size))
            if len(grey) < size:
                break
            yield line, np.frombuffer(grey, np.uint8).reshape(line.height, line.width)
        fell = process.wait() == 1  # Python's own end after an exception; else a limit or the system ended it
    yield _Line(why=(Unread.DAMAGED if fell else Unread.EFFORT).value)


def _marks(line: _Line) -> Iterator[tuple[int, Points]]:
    for number, corners in line.marks:
        yield number, np.array(corners, dtype=np.float64).reshape(4, 2)
