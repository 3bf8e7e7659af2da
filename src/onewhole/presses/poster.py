"""The poster of a film: one picture that says what it is about."""

from io import BytesIO

import numpy as np
from PIL import Image

from onewhole.notations.words import ClassWords
from onewhole.presses.frames import Part, part_frames, parts
from onewhole.presses.paper import PAPER
from onewhole.presses.sprites import Pixels, sprites
from onewhole.walkthroughs.cue import BOARD, Place, Write
from onewhole.walkthroughs.timeline import Timeline

#: How high the band with the title is, at the foot.
BAND = 132


def poster(timeline: Timeline, words: ClassWords) -> bytes:
    """Return a PNG, 1920 x 1080: the board of the first problem when most stood on it, over the film's title.

    A film without a problem shows the board of its opening.
    """
    shots = parts(timeline)
    board = Image.fromarray(_fullest(next((part for part in shots if part.foot.now), shots[0]), words))
    width, height = BOARD
    board.paste(PAPER, (0, height - BAND, width, height))
    title = Write("title", timeline.title, heading=True, place=Place(60, height - BAND, width - 120, BAND))
    (sprite,) = sprites([title])
    ink = Image.fromarray(sprite.pixels)
    board.paste(ink, (sprite.x, sprite.y), ink)
    made = BytesIO()
    board.save(made, "png")
    return made.getvalue()


def _fullest(part: Part, words: ClassWords) -> Pixels:
    """Return the board of a chapter on which there was most ink; the latest of several."""
    most, best = -1, np.empty(0, dtype=np.uint8)
    for frame in part_frames(part, words):
        ink = int((frame.board[::4, ::4, 0] < PAPER[0] // 2).sum())
        if ink >= most:
            most, best = ink, frame.board.copy()
    return best
