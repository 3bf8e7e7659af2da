"""Frames: what the board shows, drawn only when something changes on it."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import Protocol, assert_never

import numpy as np
from msgspec import Struct
from msgspec.structs import replace
from PIL import Image

from onewhole.errors import Fault
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import LANGUAGES, spoken_by
from onewhole.pictures.changes import marks
from onewhole.pictures.scene import Scene
from onewhole.pictures.tween import tween
from onewhole.presses.board_paper import INK
from onewhole.presses.drawing import draw
from onewhole.presses.footer import Footer, paper_with_footer
from onewhole.presses.reveal import Area, Reveal, strike_line
from onewhole.presses.sprites import Pixels, Sprite, sprites
from onewhole.presses.turn_sign import foot_area, put_sign
from onewhole.walkthroughs.cue import Draw, Fresh, Place, Role, Strike, Write
from onewhole.walkthroughs.layout import PROBLEM
from onewhole.walkthroughs.rooms import pointer
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES, Move, TimedChapter, Timeline

#: While something moves, every second frame is drawn: 15 a second.
STEP = 2
#: An unchanged board is drawn again after so many frames, so that a player can seek to it.
HELD = 2 * FRAMES


class FramePart(Struct, frozen=True):
    """A chapter by itself, from 0 on: its footer, what happens, how many frames it lasts, its board's shape.

    ``spoken`` are the frames at which another cue begins, each with the bar that marks its lines from then
    on, where it writes any: a cue's marks in the picture are there until the next begins. ``turns`` are the
    frames from which on and until which the answer is left to the family, and the words of that sign.

    It begins on a clean board. Everything that its frames show is in it.
    """

    footer: Footer
    moves: tuple[Move, ...]
    length: int
    shape: Shape = Shape.WIDE
    spoken: tuple[tuple[int, Place | None], ...] = ()
    turns: tuple[tuple[int, int, str], ...] = ()


class Frame(Struct, frozen=True, eq=False):
    """A frame by its number: the board, RGB (height x width x 3), and the part of it that changed, if any.

    The board is the same array from frame to frame; copy it to keep it.
    """

    number: int
    board: Pixels
    changed: Area | None


def parts(timeline: Timeline) -> tuple[FramePart, ...]:
    """Return the chapters of a film, each by itself."""
    asked = [any(timed.cue.role is Role.PROBLEM for timed in chapter.cues) for chapter in timeline.chapters]
    found = []
    for at, chapter in enumerate(timeline.chapters):
        footer = Footer(timeline.title, sum(asked[: at + 1]), sum(asked), now=asked[at])
        length = _frame(chapter.end - chapter.start)
        found.append(
            FramePart(
                footer,
                tuple(_moves(chapter)),
                length,
                timeline.shape,
                tuple(_spoken(chapter, timeline.shape)),
                tuple(_turns(chapter, LANGUAGES[timeline.language].opening.turn_written)),
            )
        )
    return tuple(found)


def _moves(chapter: TimedChapter) -> Iterator[Move]:
    for timed in chapter.cues:
        for move in timed.moves:
            yield replace(move, start=move.start - chapter.start, end=move.end - chapter.start)


def _spoken(chapter: TimedChapter, shape: Shape) -> Iterator[tuple[int, Place | None]]:
    """Give the frame at which each cue begins, and that from which its lines are marked."""
    for timed in chapter.cues:
        yield _frame(timed.start - chapter.start), None
        places: list[Place] = []
        begins = timed.start
        again = "" if timed.cue.role is Role.PROBLEM else PROBLEM
        for move in timed.moves:
            match move.act:
                case Fresh():
                    places.clear()
                case Write(name=name, place=Place() as place, heading=False) if again != name:
                    begins = begins if places else move.start
                    places.append(place)
                case _:
                    pass
        if places:
            top, bottom = places[0].y, places[-1].y + places[-1].height
            yield _frame(begins - chapter.start), pointer(shape, top, bottom - top)


def _turns(chapter: TimedChapter, words: str) -> Iterator[tuple[int, int, str]]:
    for timed in chapter.cues:
        if timed.cue.role is Role.TURN:
            yield _frame(timed.start - chapter.start), _frame(timed.end - chapter.start), words


def _frame(seconds: Fraction) -> int:
    return round(seconds * FRAMES)


def numbers(part: FramePart) -> list[int]:
    """Return the numbers of the frames that are drawn, from 0 to the last of the chapter, in order."""
    last = part.length - 1
    moving = {0, last, *(min(number, last) for number, _ in part.spoken)}
    for begin, end, _ in part.turns:
        moving.update(min(number, last) for number in (*range(begin, end, FRAMES), end))
    for move in part.moves:
        start, end = _frame(move.start), _frame(move.end)
        moving.update(min(number, last) for number in (*range(start, end, STEP), end))
    found: list[int] = []
    for number in sorted(moving):
        if found:
            found.extend(range(found[-1] + HELD, number, HELD))
        found.append(number)
    return found


def part_frames(part: FramePart, words: ClassWords) -> Iterator[Frame]:
    """Yield the frames of one chapter, numbered from 0.

    Raises Fault for something that has no place, and for a strike through what is not on the board.
    """
    writes = [move.act for move in part.moves if isinstance(move.act, Write)]
    board = _FrameBoard(part, writes, words)
    waiting = sorted(part.moves, key=lambda move: move.start)[::-1]
    spoken = list(part.spoken)[::-1]
    acting: list[tuple[_Act, int, int]] = []
    for number in numbers(part):
        changed = Area(0, 0, *part.shape.size) if number == 0 else None
        while waiting and _frame(waiting[-1].start) <= number:
            move = waiting.pop()
            acting.append((board.begin(move, number), _frame(move.start), _frame(move.end)))
        for act, start, end in acting:
            over = number >= end or number == part.length - 1
            area = act.to(board.pixels, Fraction(1) if over else Fraction(number - start, end - start))
            changed = _with(changed, area)
        while spoken and spoken[-1][0] <= number:
            changed = _with(changed, board.speak(spoken.pop()[1], number))
        changed = _with(changed, board.turn(number))
        acting = [one for one in acting if number < one[2]]
        yield Frame(number, board.pixels, changed)


def _with(one: Area | None, other: Area | None) -> Area | None:
    return other if one is None else one if other is None else one.with_(other)


class _Act(Protocol):
    """Something that happens on the board."""

    def to(self, board: Pixels, share: Fraction) -> Area | None:
        """Do a share of it, from 0 to 1, and return what changed."""


class _FrameBoard:
    """The board of one chapter: its pixels, what is written on it by name, and the picture it shows."""

    def __init__(self, part: FramePart, writes: Sequence[Write], words: ClassWords) -> None:
        self._clean = paper_with_footer(part.footer, part.shape)
        self._set = dict(zip(writes, sprites(writes, spoken_by(words)), strict=True))
        self._words = words
        self._written: dict[str, Sprite] = {}
        self._scene: tuple[Scene, Place] | None = None
        self._marked_at: int | None = None
        self._bar: Place | None = None
        self._part, self._signed = part, False
        self.pixels = self._clean.copy()

    def turn(self, number: int) -> Area | None:
        """Put up the sign of a turn, its bar shorter every second, and take it away again."""
        for start, end, words in self._part.turns:
            if start <= number < end:
                of = max(1, -(-(end - start) // FRAMES))
                self._signed = True
                left = of - (number - start) // FRAMES
                return put_sign(self.pixels, words, self._part.footer, self._part.shape, left=left, of=of)
        if not self._signed:
            return None
        area = foot_area(self._part.shape)
        under = np.s_[area.top : area.bottom, area.left : area.right]
        self.pixels[under] = self._clean[under]
        self._signed = False
        return area

    def speak(self, bar: Place | None, number: int) -> Area | None:
        """Mark the lines that are spoken from now on; where there is no bar, end the picture's marks."""
        if bar is None:
            return self._unmarked(number)
        changed = None
        for place, ink in ((self._bar, None), (bar, INK)):
            if place is not None:
                area = Area(place.x, place.y, place.x + place.width, place.y + place.height)
                under = np.s_[area.top : area.bottom, area.left : area.right]
                self.pixels[under] = self._clean[under] if ink is None else ink
                changed = _with(changed, area)
        self._bar = bar
        return changed

    def _unmarked(self, number: int) -> Area | None:
        """Draw the picture without the marks of the cue before."""
        if self._scene is None or self._marked_at is None or self._marked_at >= number:
            return None
        self._marked_at = None
        return _shown(self.pixels, self._clean, _drawn(*self._scene, self._words))

    def begin(self, move: Move, number: int) -> _Act:
        """Begin what a move does at a frame."""
        match move.act:
            case Write(name) as write:
                self._written[name] = self._set[write]
                return Reveal(self.pixels, self._set[write])
            case Strike(name):
                if name not in self._written:
                    raise Fault("what is struck out is not on the board", where=name)
                return Reveal(self.pixels, strike_line(self._written[name]))
            case Draw(scene, place, seen):
                if place is None:
                    raise Fault("a picture of the board has no place")
                before, self._scene = self._scene, (scene, place)
                if before is None or before[1] != place:
                    return Reveal(self.pixels, _drawn(scene, place, self._words))
                self._marked_at = number if seen else None
                drawn = [replace(one, pieces=(*one.pieces, *marks(seen))) for one in (before[0], scene)]
                return _Changing(drawn[0], drawn[1], place, self._words, self._clean)
            case Fresh():
                self._scene = self._bar = self._marked_at = None
                self._written.clear()
                if np.array_equal(self.pixels, self._clean):
                    return _Nothing()
                opaque = np.full((*self._clean.shape[:2], 1), 255, dtype=np.uint8)
                return Reveal(self.pixels, Sprite(0, 0, np.concatenate((self._clean, opaque), axis=2)))
            case _:
                assert_never(move.act)


class _Nothing:
    """Clearing a board that is clean already."""

    def to(self, board: Pixels, share: Fraction) -> None:
        """Leave the board as it is."""


class _Changing:
    """One scene becoming another in its place."""

    def __init__(self, before: Scene, after: Scene, place: Place, words: ClassWords, clean: Pixels) -> None:
        self._scenes = (before, after)
        self._place = place
        self._words = words
        self._clean = clean

    def to(self, board: Pixels, share: Fraction) -> Area | None:
        """Draw the in-between scene; the motion eases in and out."""
        before, after = self._scenes
        if before == after:
            return None
        gentle = share * share * (3 - 2 * share)
        ink = _drawn(tween(before, after, gentle), self._place, self._words)
        return _shown(board, self._clean, ink)


def _shown(board: Pixels, clean: Pixels, ink: Sprite) -> Area:
    """Put ink on clean paper in its place on the board."""
    area = Area(ink.x, ink.y, ink.x + ink.width, ink.y + ink.height)
    paper = Image.fromarray(clean[area.top : area.bottom, area.left : area.right])
    image = Image.fromarray(ink.pixels)
    paper.paste(image, (0, 0), image)
    board[area.top : area.bottom, area.left : area.right] = np.asarray(paper)
    return area


def _drawn(scene: Scene, place: Place, words: ClassWords) -> Sprite:
    """Draw a scene as large as its place lets it be, in the middle of it."""
    scale = min(place.width / scene.width, place.height / scene.height)
    width, height = int(scene.width * scale), int(scene.height * scale)
    image = draw(scene, words, size=(width, height)).convert("RGBA")
    left, top = place.x + (place.width - width) // 2, place.y + (place.height - height) // 2
    return Sprite(left, top, np.asarray(image))
