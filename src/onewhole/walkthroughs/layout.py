"""The board laid out for a shape: the largest type that fits, and a measured place for everything."""

import math
from dataclasses import dataclass, field
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import Fault, InputError
from onewhole.languages.table import SPOKEN
from onewhole.pictures.digits import least_digit
from onewhole.pictures.scene import Scene
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Place, Strike, Write
from onewhole.walkthroughs.line_sizes import LineSize, line_size
from onewhole.walkthroughs.rooms import Rooms, least_type, shared, whole_room
from onewhole.walkthroughs.shape import DIGIT, LEAST, Shape

#: The name of the line that is written again at the top when a problem gets a fresh board.
PROBLEM = "problem"
#: Pixels of a phone: the sizes of type that are tried; the least of the board follows them.
_SIZES = (44, 40, 36, 33, 30, 28, 26, 24, 22, 20)
#: A board on which lines have this size, in pixels of a phone, is as good as one whose picture has this share
#: of the size that it has at most. Our own choice.
_GOOD_TYPE, _GOOD_PICTURE = 30, Fraction(4, 5)
#: Between two lines, in sizes of their type: what is tried, the most first.
_BETWEEN = tuple(Fraction(tenths, 10) for tenths in (8, 6, 4, 2))


class BoardError(InputError):
    """A line is too long for the board at any size that can be read; ``chapter`` is its problem."""

    chapter: str = ""


class PlacedAct(Struct, frozen=True):
    """An act with its place; ``more`` is one that the board needs besides those of the script."""

    act: Act
    more: bool = False


#: For every act of a chapter: what the board needs before it, and the act itself.
Placed = tuple[tuple[PlacedAct, ...], ...]


def laid_out(acts: tuple[Act, ...], shape: Shape, label: str, language: str = SPOKEN.tag) -> Placed:
    """Return a chapter's acts on boards of a shape, for every act what happens there.

    Each stretch from one fresh board to the next gets the largest type and picture with which it stands on as
    few boards as can be. Where it takes more than one, the board is wiped, the problem written again, and the
    picture shown again; a line that was wiped is written again before it is struck out. A formula that is
    too wide goes on in further rows, broken before a sign; words go on to further lines. Nothing is written
    smaller than :func:`~.rooms.least_type`. Raises BoardError, with ``label`` as its chapter, for a line that
    fills more than a whole board, and Fault for a strike through nothing.

    >>> (one,), (other,) = laid_out((Write("problem", "Kites"), Write("next", "Tails")), Shape.UPRIGHT, "1")
    >>> one.act.place.y < other.act.place.y
    True
    """
    made: list[tuple[PlacedAct, ...]] = []
    known: dict[str, Write] = {}
    for stretch in _stretches(acts):
        made += _best(stretch, shape, known, label, language)
        known |= {act.name: act for act in stretch if isinstance(act, Write)}
    return tuple(made)


def _stretches(acts: tuple[Act, ...]) -> list[tuple[Act, ...]]:
    """Part acts before each fresh board."""
    found: list[list[Act]] = [[]]
    for act in acts:
        if isinstance(act, Fresh) and found[-1]:
            found.append([])
        found[-1].append(act)
    return [tuple(one) for one in found if one]


def _best(
    stretch: tuple[Act, ...], shape: Shape, known: dict[str, Write], label: str, language: str
) -> Placed:
    """Lay a stretch on as few boards as hold it, with the largest type and picture."""
    scenes = [act.scene for act in stretch if isinstance(act, Draw)]
    scene = scenes[0] if scenes else None
    ways = (Rooms(whole_room(shape), None),) if scene is None else _readable(scenes, shape)
    most = max((_scale(scene, way) for way in ways), default=Fraction(1))
    best, worth = None, (0, Fraction(0), Fraction(0))
    for way in ways:
        trial = _Trial(stretch, way, known, label, least_type(shape), language)
        found = _largest(trial, shape)
        if found is None:
            continue
        type_size, boards = found
        good = min(type_size / shape.units(_GOOD_TYPE), _scale(scene, way) / most / _GOOD_PICTURE)
        if best is None or (-boards.count, good, type_size) > worth:
            best, worth = (trial, type_size, boards), (-boards.count, good, type_size)
    if best is None:
        raise _too_long(label)
    trial, type_size, boards = best
    looser = (trial.laid(type_size, between) for between in _BETWEEN)
    return next((one.acts for one in looser if one and one.count == boards.count), boards.acts)


def _readable(scenes: list[Scene], shape: Shape) -> tuple[Rooms, ...]:
    """Return the ways to share a board in which the picture's digits can be read on a phone, or the last."""
    ways = shared(shape)
    least = shape.units(LEAST) * DIGIT
    for scene in scenes:
        digit = least_digit(scene) or least
        ways = tuple(way for way in ways if _scale(scene, way) * digit >= least) or ways[-1:]
    return ways


def _scale(scene: Scene | None, way: Rooms) -> Fraction:
    """Return how many units a millimetre of a scene takes in the room of the picture."""
    if scene is None or way.picture is None:
        return Fraction(1)
    return min(way.picture.width / scene.width, way.picture.height / scene.height)


class _Boards(Struct, frozen=True):
    """A stretch that is laid out: its acts, on how many boards, with how many folds of formulas."""

    acts: Placed
    count: int
    folds: int


def _largest(trial: "_Trial", shape: Shape) -> tuple[Fraction, _Boards] | None:
    """Return the largest type with which a stretch takes no more boards and folds than with the least."""
    sizes = [*map(shape.units, _SIZES), trial.least]
    found = trial.laid(trial.least, _BETWEEN[-1])
    if found is None:
        return None
    fewest, low, high = found, 0, len(sizes) - 1
    while low < high:
        middle = (low + high) // 2
        larger = trial.laid(sizes[middle], _BETWEEN[-1])
        if larger and (larger.count, larger.folds) <= (fewest.count, fewest.folds):
            found, high = larger, middle
        else:
            low = middle + 1
    return sizes[high], found


class _Trial(Struct, frozen=True):
    """One way to share the board, to be tried with several sizes of type."""

    stretch: tuple[Act, ...]
    way: Rooms
    known: dict[str, Write]
    label: str
    least: Fraction
    language: str

    def laid(self, size: Fraction, between: Fraction) -> _Boards | None:
        """Return the stretch with type of a size; None where a line does not stand on a board."""
        board = _Board(self, size, math.ceil(between * size), known=dict(self.known))
        acts: list[tuple[PlacedAct, ...]] = []
        for act in self.stretch:
            made = board.put(act)
            if made is None:
                return None
            acts.append(made)
        return _Boards(tuple(acts), board.count, board.folds)


@dataclass(slots=True)
class _Board:
    """What stands on the board while a stretch is laid out."""

    trial: _Trial
    size: Fraction
    between: int
    known: dict[str, Write]
    count: int = 1
    folds: int = 0
    y: int = 0
    drawn: Draw | None = None
    standing: set[str] = field(default_factory=set)

    def __post_init__(self) -> None:
        """Begin at the top."""
        self.y = self.trial.way.lines.y

    def put(self, act: Act) -> tuple[PlacedAct, ...] | None:
        """Return an act with its place, and before it what the place needs; None where there is no place."""
        match act:
            case Fresh():
                return (PlacedAct(act),)
            case Draw(scene):
                self.drawn = Draw(scene, picture_place(scene, self.trial.way.picture))
                return (PlacedAct(replace(self.drawn, marks=act.marks)),)
            case Strike(name):
                if name in self.standing:
                    return (PlacedAct(act),)
                if name not in self.known:
                    msg = f"nothing called {name} was written, so it cannot be struck out"
                    raise Fault(msg, where=self.trial.label)
                again = self._write(self.known[name])
                return again and (*(replace(one, more=True) for one in again), PlacedAct(act))
            case Write():
                self.known[act.name] = act
                return self._write(act)

    def _write(self, write: Write) -> tuple[PlacedAct, ...] | None:
        size = self._sized(write, self.size)
        if size is None:
            return None
        made: list[PlacedAct] = []
        if not self._fits(size):
            made = self._fresh(write)
            if not self._fits(size):
                return None
        self.folds += size.folds
        return (*made, PlacedAct(self._place(write, size)))

    def _fits(self, size: LineSize) -> bool:
        room = self.trial.way.lines
        return self.y + size.high <= room.y + room.height

    def _sized(self, write: Write, size: Fraction) -> LineSize | None:
        room = self.trial.way.lines.width
        return line_size(replace(write, name=""), room, size, self.trial.least, self.trial.language)

    def _fresh(self, coming: Write) -> list[PlacedAct]:
        """Wipe the board; write the problem again, and show the picture again."""
        made: list[Act] = [Fresh()]
        self.count += 1
        self.y = self.trial.way.lines.y
        self.standing.clear()
        problem = self.known.get(PROBLEM)
        size = problem and self._sized(problem, self.trial.least)
        if problem and size and coming.name != PROBLEM:
            made.append(self._place(problem, size))
        if self.drawn is not None:
            made.append(self.drawn)
        return [PlacedAct(act, more=True) for act in made]

    def _place(self, write: Write, size: LineSize) -> Write:
        place = Place(self.trial.way.lines.x, self.y, size.wide, size.high)
        self.y += size.high + self.between
        self.standing.add(write.name)
        return replace(write, place=place, rows=size.rows)


def _too_long(label: str) -> BoardError:
    found = BoardError(
        "a line is too long for the board",
        where=f"problem {label}",
        remedy="Take smaller numbers or fewer steps for this problem, or leave it out of the film.",
    )
    found.chapter = label
    return found


def picture_place(scene: Scene, room: Place | None) -> Place:
    """Return the largest place of a scene's shape, in the middle of a room. Whole units, rounded down.

    >>> picture_place(Scene(Fraction(160), Fraction(80), ()), Place(980, 150, 880, 750))
    Place(x=980, y=305, width=880, height=440)
    """
    assert room is not None, "a board with a picture has room for it"
    scale = min(room.width / scene.width, room.height / scene.height)
    wide, high = math.floor(scene.width * scale), math.floor(scene.height * scale)
    return Place(room.x + (room.width - wide) // 2, room.y + (room.height - high) // 2, wide, high)
