"""The poster of a film: one picture that says what it is about."""

import math
from io import BytesIO

import numpy as np
from msgspec.structs import replace
from PIL import Image, ImageChops

from onewhole.languages.class_words import ClassWords
from onewhole.presses.board_paper import squared_paper
from onewhole.presses.footer import paper_with_footer
from onewhole.presses.frames import FramePart, part_frames, parts
from onewhole.presses.sprites import sprites
from onewhole.walkthroughs.cue import Place, Write
from onewhole.walkthroughs.rooms import foot
from onewhole.walkthroughs.timeline import Timeline

#: The band at the bottom that holds the title is so many pixels of a phone high.
BAND = 60
#: Only every fourth pixel is looked at when ink is counted.
SPARSE = 4


def poster(timeline: Timeline, words: ClassWords) -> bytes:
    """Return a PNG of the film's size: the board of the first problem when most stood on it, over the title.

    A film without a problem shows the board of its opening.
    """
    width, height = timeline.shape.size
    band, edge = math.floor(timeline.shape.units(BAND)), foot(timeline.shape)
    shots = parts(timeline)
    ink = _fullest(next((part for part in shots if part.footer.now), shots[0]), words)
    room = (width * (height - band) // edge.y, height - band)
    small = ink.crop((0, 0, width, edge.y)).resize(room, Image.Resampling.LANCZOS)
    board = Image.fromarray(squared_paper(timeline.shape))
    left = (width - room[0]) // 2
    board.paste(ImageChops.subtract(board.crop((left, 0, left + room[0], room[1])), small), (left, 0))
    place = Place(edge.x, height - band, edge.width, band - edge.x // 3)
    (title,) = sprites([Write("title", timeline.title, heading=True, place=place)])
    written = Image.fromarray(title.pixels)
    board.paste(written, (title.x, title.y), written)
    made = BytesIO()
    board.save(made, "png")
    return made.getvalue()


def _fullest(part: FramePart, words: ClassWords) -> Image.Image:
    """Return how much darker than paper a chapter's board is where it has most ink; of several the latest.

    Only what is done counts: nothing is looked at while it moves.
    """
    still = replace(part, moves=tuple(replace(move, start=move.end) for move in part.moves))
    clean = paper_with_footer(part.footer, part.shape)
    sparse = clean[::SPARSE, ::SPARSE]
    most, best = -1, clean.copy()
    for frame in part_frames(still, words):
        if frame.changed is None:
            continue
        ink = int(np.count_nonzero(frame.board[::SPARSE, ::SPARSE] != sparse))
        if ink >= most:
            most = ink
            np.copyto(best, frame.board)
    return Image.fromarray(clean - np.minimum(clean, best))
