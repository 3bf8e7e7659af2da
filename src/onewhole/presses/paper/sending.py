"""What a process that decodes pictures says to `decoding`, on its standard output.

For each page a line of JSON with its number from 1, its width and height, and the marks that it shows (the
number of each and its corners), then one byte of grey for each picture element. A line with ``pages`` ends
it, and one with ``why`` says why nothing comes, or nothing more. Only grey goes out: where and with what a
picture was taken, and whatever else a file tells, stays inside.
"""

import json
import os
import sys
from collections.abc import Callable, Iterator
from typing import Final

import cv2
import numpy as np
from PIL.Image import Image

from onewhole.findings.in_pictures import Unread
from onewhole.presses.limited import end_with_parent, read
from onewhole.presses.paper.seen_marks import marks_of_pages

#: A file has so many pages at most: those of a class of 40 with 6 each.
MOST_PAGES: Final = 250
#: So many marks of a picture are told: those of a dozen papers are 72.
MOST_MARKS: Final = 500


class Refused(Exception):
    """Why a file cannot be decoded; ``most`` is the limit that it goes over."""

    def __init__(self, why: Unread, most: int = 0) -> None:
        super().__init__(why, most)
        self.why, self.most = why, most


#: Decodes a file from a page on, so many seconds of the processor a page; how many pages it has comes last.
Decode = Callable[[bytes, int, int], Iterator[tuple[int, Image] | int]]


def send_pages(decode: Decode) -> None:
    """Decode what the parent sends (eight bytes that say how long it is first) and send its pages.

    The process's arguments are the first page that is wanted, the seconds that a page may take, and the marks
    of the pages that are known, four of each.
    """
    first, seconds, *known = map(int, sys.argv[1:])
    pages = [tuple(known[at : at + 4]) for at in range(0, len(known), 4)]
    cv2.setNumThreads(1)
    content = read(int.from_bytes(read(8), "little"))
    end_with_parent()
    try:
        for one in decode(content, first, seconds):
            match one:
                case int(there):
                    _tell({"pages": there})
                case (number, picture):
                    grey = np.asarray(picture, dtype=np.uint8)
                    marks = [
                        (mark.number, mark.corners.ravel().tolist())
                        for mark in marks_of_pages(grey, pages)[:MOST_MARKS]
                    ]
                    _tell({"page": number, "width": picture.width, "height": picture.height, "marks": marks})
                    sys.stdout.buffer.write(grey.tobytes())
                    sys.stdout.buffer.flush()
    except Refused as refused:
        _tell({"why": refused.why.value, "most": refused.most})
    except MemoryError:
        _tell({"why": Unread.EFFORT.value})
    os._exit(0)  # nothing is left to clear away, and a thread still waits


def _tell(line: dict[str, object]) -> None:
    sys.stdout.buffer.write(json.dumps(line).encode("ascii") + b"\n")
    sys.stdout.buffer.flush()
