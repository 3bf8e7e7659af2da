"""A film of three chapters, made by hand: opening, one problem with a picture, closing; 15 seconds."""

from collections.abc import Iterator
from fractions import Fraction

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.pictures.scene import Box, Look, Piece, Scene
from onewhole.presses.frames import Frame, part_frames, parts
from onewhole.statements.reading import read_expression, read_statement
from onewhole.walkthroughs.cue import Act, Cue, Draw, Fresh, Place, Role, Strike, Write
from onewhole.walkthroughs.timeline import Move, Timed, TimedChapter, Timeline
from tests.kit.saying import says

WORDS = ClassWords("strip", "strips")
PICTURE = Place(1000, 200, 840, 600)


def strips(*filled: int) -> Scene:
    """Strips of six sixths, one below another, with so many sixths in each; a sixth keeps its name."""
    rooms = [(row, at) for row in range(len(filled)) for at in range(6)]
    sixths = [(row, at) for row, count in enumerate(filled) for at in range(count)]
    pieces = [Piece(f"room {number}", _box(*room), Look.DOTTED) for number, room in enumerate(rooms)]
    pieces += [Piece(f"sixth {number}", _box(*place), Look.FILLED) for number, place in enumerate(sixths)]
    return Scene(Fraction(110), Fraction(80), tuple(pieces))


def _box(row: int, at: int) -> Box:
    return Box(Fraction(10 + 15 * at), Fraction(10 + 30 * row), Fraction(15), Fraction(20))


def _timed(role: Role, start: int, texts: tuple[str, ...], *acts: tuple[Act, int, int]) -> Timed:
    """A cue whose sentences take two seconds each, with a second of quiet before each."""
    spoken = says(*texts)
    said = tuple(
        (one, Fraction(start + 3 * at + 1), Fraction(start + 3 * at + 3)) for at, one in enumerate(spoken)
    )
    moves = tuple(
        Move(act, start + Fraction(begin, 30), start + Fraction(end, 30)) for act, begin, end in acts
    )
    cue = Cue(role, spoken, tuple(act for act, _, _ in acts))
    return Timed(cue, Fraction(start), Fraction(start + 3 * len(spoken)), said, moves)


def _line(name: str, content: str, y: int) -> Write:
    return Write(name, read_expression(content), leads=True, place=Place(100, y, 860, 110))


def chapters(first: str = "7 2/6 - 3 5/6") -> tuple[TimedChapter, ...]:
    """The three chapters; the problem is another one where it is asked for."""
    heading = Write("title", "Kites: open one strip", heading=True, place=Place(100, 300, 1600, 140))
    asked = Write("1", read_statement(first), label="1", place=Place(100, 100, 860, 110))
    aside = Write("why", "One strip is 6 sixths.", aside=True, place=Place(100, 400, 860, 80))
    opening = _timed(Role.OPENING, 0, ("Tonight we open one strip.",), (heading, 0, 45))
    problem = (
        _timed(Role.PROBLEM, 3, ("Here is number 1.",), (asked, 0, 30), (Draw(strips(6, 2)), 30, 50)),
        _timed(
            Role.LINE,
            6,
            ("One strip is 6 sixths.", "We take 5 sixths away."),
            (_line("b", "6 8/6 - 3 5/6", 240), 0, 45),
            (aside, 45, 75),
            (Draw(strips(5, 2)), 80, 110),
            (Strike("1"), 110, 120),
        ),
    )
    placed = tuple(_placed(timed) for timed in problem)
    closing = _timed(Role.CLOSING, 12, ("That is all for tonight.",), (Fresh(), 0, 20), (heading, 20, 50))
    return (
        TimedChapter("", "Opening", Fraction(0), Fraction(3), (opening,)),
        TimedChapter("1", "Problem 1", Fraction(3), Fraction(12), placed),
        TimedChapter("", "Closing", Fraction(12), Fraction(15), (closing,)),
    )


def _placed(timed: Timed) -> Timed:
    """Give every picture its place."""
    moves = tuple(
        Move(Draw(move.act.scene, PICTURE) if isinstance(move.act, Draw) else move.act, move.start, move.end)
        for move in timed.moves
    )
    return Timed(timed.cue, timed.start, timed.end, timed.said, moves)


def kites(first: str = "7 2/6 - 3 5/6") -> Timeline:
    """The whole film."""
    return Timeline("Kite night", chapters(first))


def frames(timeline: Timeline, words: ClassWords) -> Iterator[Frame]:
    """The frames of a whole film in which something changes, numbered through all chapters."""
    before = 0
    for part in parts(timeline):
        for frame in part_frames(part, words):
            yield replace(frame, number=before + frame.number)
        before += part.length
