"""The board laid out: everything written has a place that was measured before it was taken."""

import math
from dataclasses import dataclass, field, replace
from fractions import Fraction

from onewhole.errors import Fault, InputError
from onewhole.notations.folding import Row, folded
from onewhole.pictures.scene import Scene
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Act, Chapter, Draw, Fresh, Place, Script, Strike, Write
from onewhole.walkthroughs.measure import NEXT_LINE, ROW, before, bit_width, width, word_width

#: The name of the line that is written again at the top when a problem gets a fresh board.
PROBLEM = "problem"
#: Where lines start and end, and where the lowest may reach: below it is the foot of the board.
LEFT, RIGHT, BESIDE_PICTURE = 60, 1860, 940
TOP, BOTTOM = 40, 1010
BETWEEN = 14
#: Where a picture stands, as large as it fits.
PICTURE = Place(980, 150, 880, 750)
#: The size of the type of a line, of a line aside, and of a heading.
ORDINARY, ASIDE, HEADING = 60, 46, 64
#: A line aside is drawn at so much of the size that its place gives.
LIGHTER = Fraction(4, 5)
#: No line is made smaller than this.
SMALLEST = Fraction(3, 5)
#: Lines are written smaller, down to the smallest size, rather than go on to more rows than this.
MOST_LINES = 3


class BoardError(InputError):
    """A line is too long for the board at any size that can be read; ``chapter`` is its problem."""

    chapter: str = ""


def laid_out(script: Script) -> Script:
    """Return the script with a place for everything that is written and drawn.

    Lines stand under each other, the picture in its own place on the right; without a picture lines may use
    the whole width. Every chapter starts on a fresh board. Where the next line does not fit under the last,
    the board is wiped, the problem is written again small at the top and the picture shown again. A line that
    was wiped is written again before it is struck out. A formula that is too wide is written smaller, down to
    60 %, or goes on in further rows, broken before a sign; words go on to further lines. Raises BoardError,
    which tells the chapter, for a line that fills more than a whole board.

    >>> from onewhole.walkthroughs.cue import Cue, Role
    >>> cue = Cue(Role.PROBLEM, (), (Write("problem", "Kites"), Write("next", "Tails")))
    >>> placed = laid_out(Script("", (Chapter("1", "", (cue,)),))).chapters[0].cues[0].acts
    >>> [act.place.y for act in placed if isinstance(act, Write) and act.place]
    [40, 156]
    """
    chapters = []
    for at, chapter in enumerate(script.chapters):
        chapters.append(_chapter(chapter, begun=at > 0))
    return replace(script, chapters=tuple(chapters))


def _chapter(chapter: Chapter, *, begun: bool) -> Chapter:
    acts = [act for cue in chapter.cues for act in cue.acts]
    board = _Board(chapter.label or chapter.title, chapter.label, _with_picture(acts))
    wiped = bool(acts) and isinstance(acts[0], Fresh)
    cues = []
    for at, cue in enumerate(chapter.cues):
        made: list[Act] = [Fresh()] if begun and not at and not wiped else []
        for act in cue.acts:
            made += board.put(act)
        cues.append(replace(cue, acts=tuple(made)))
    return replace(chapter, cues=tuple(cues))


def _with_picture(acts: list[Act]) -> list[bool]:
    """Say for every board of a chapter whether a picture stands on it."""
    found = [False]
    for act in acts:
        if isinstance(act, Fresh):
            found.append(False)
        elif isinstance(act, Draw):
            found[-1] = True
    return found


@dataclass(frozen=True, slots=True)
class _Size:
    """What a line takes: width and height of its place, and its rows where it is folded."""

    wide: int
    high: int
    rows: tuple[Row, ...] = ()


@dataclass(slots=True)
class _Board:
    """What stands on the board while a chapter is laid out."""

    where: str
    label: str
    pictures: list[bool]
    board: int = 0
    y: int = TOP
    problem: Write | None = None
    drawn: Draw | None = None
    written: dict[str, Write] = field(default_factory=dict)
    standing: set[str] = field(default_factory=set)

    def put(self, act: Act) -> list[Act]:
        """Return an act with its place, and before it what the place needs."""
        match act:
            case Fresh():
                self.board += 1
                self.drawn = None
                self._wipe()
                return [act]
            case Draw(scene):
                self.drawn = Draw(scene, picture_place(scene))
                return [self.drawn]
            case Strike(name):
                if name in self.standing:
                    return [act]
                if name not in self.written:
                    msg = f"nothing called {name} was written, so it cannot be struck out"
                    raise Fault(msg, where=self.where)
                return [*self._write(self.written[name]), act]
            case Write():
                return self._write(act)

    def _wipe(self) -> None:
        self.y = TOP
        self.standing.clear()

    def _write(self, write: Write) -> list[Act]:
        self.written[write.name] = write
        if write.name == PROBLEM:
            self.problem = write
        size = self._size(write)
        made: list[Act] = []
        if self.y + size.high > BOTTOM:
            made = self._fresh(write)
        if self.y + size.high > BOTTOM:
            raise self._too_long()
        return [*made, self._place(write, size)]

    def _fresh(self, coming: Write) -> list[Act]:
        """Wipe the board; write the problem again small, and show the picture again."""
        made: list[Act] = [Fresh()]
        self._wipe()
        if self.problem is not None and coming.name != PROBLEM:
            made.append(self._place(self.problem, self._size(self.problem, SMALLEST)))
        if self.drawn is not None:
            made.append(self.drawn)
        return made

    def _place(self, write: Write, size: _Size) -> Write:
        place = Place(LEFT, self.y, size.wide, size.high)
        self.y += size.high + BETWEEN
        self.standing.add(write.name)
        return replace(write, place=place, rows=size.rows)

    def _size(self, write: Write, largest: Fraction = Fraction(1)) -> _Size:
        """Return the width and height of a line's place, and its rows where it is folded."""
        room = (BESIDE_PICTURE if self.pictures[self.board] else RIGHT) - LEFT
        full = Fraction(HEADING if write.heading else ASIDE if write.aside else ORDINARY)
        size = full * largest
        needs = width(write, size)
        if needs <= room:
            return _Size(needs, _height(write, size))
        if isinstance(write.content, str):
            return self._words(write, room, size)
        smaller = size * Fraction(room, needs)
        if smaller >= full * SMALLEST:
            return _Size(room, _height(write, smaller))
        return self._folded(write, write.content, room, [s for s in _sizes(full) if s <= size])

    def _folded(self, write: Write, content: Writable, room: int, sizes: list[Fraction]) -> _Size:
        """Fold a formula into rows: as large as three rows hold it, else as small as can be read."""
        for size in sizes:
            rows = folded(content, math.floor(1000 * room / size - before(write)), bit_width)
            if rows is not None and (len(rows) <= MOST_LINES or size == sizes[-1]):
                return _Size(room, _height(write, size * len(rows)), rows)
        raise self._too_long()

    def _words(self, write: Write, room: int, size: Fraction) -> _Size:
        for smaller in _sizes(size):
            lines = _lines(write, Fraction(1000 * room) / smaller)
            if lines is not None and (lines <= MOST_LINES or smaller == size * SMALLEST):
                return _Size(room, max(_height(write, smaller), math.ceil(smaller * NEXT_LINE * lines)))
        raise self._too_long()

    def _too_long(self) -> BoardError:
        found = BoardError(
            "a line is too long for the board",
            where=f"problem {self.where}",
            remedy="Take smaller numbers or fewer steps for this problem, or leave it out of the film.",
        )
        found.chapter = self.label
        return found


def _sizes(full: Fraction) -> list[Fraction]:
    """Return the sizes that are tried, the largest first."""
    return [full, full * Fraction(4, 5), full * SMALLEST]


def _height(write: Write, size: Fraction) -> int:
    return math.ceil(size * ROW / (LIGHTER if write.aside else 1))


def _lines(write: Write, room: Fraction) -> int | None:
    """Return how many lines words take in so many thousandths of their size; None for too long a word."""
    lines, at = 1, before(write)
    for word in str(write.content).split():
        wide = word_width(word)
        if wide > room:
            return None
        if at + wide > room:
            lines, at = lines + 1, Fraction(0)
        at += wide + word_width(" ")
    return lines


def picture_place(scene: Scene) -> Place:
    """Return the largest place of a scene's shape, in the middle of where pictures stand.

    Whole units, rounded down.

    >>> picture_place(Scene(Fraction(160), Fraction(80), ()))
    Place(x=980, y=305, width=880, height=440)
    """
    scale = min(Fraction(PICTURE.width) / scene.width, Fraction(PICTURE.height) / scene.height)
    wide, high = math.floor(scene.width * scale), math.floor(scene.height * scale)
    return Place(
        PICTURE.x + (PICTURE.width - wide) // 2, PICTURE.y + (PICTURE.height - high) // 2, wide, high
    )
