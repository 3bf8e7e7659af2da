"""A small film, made by hand: an opening, two problems worked, one of them to try first, and a closing."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.words import words_for
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.description import Shown
from onewhole.pictures.scene import Box, Look, Piece, Scene, Words
from onewhole.statements.row import row
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Chapter, Cue, Draw, Fresh, Role, Strike, Write
from onewhole.walkthroughs.timeline import Move, Timed, TimedChapter, Timeline
from onewhole.working.working import Working
from tests.kit.saying import says
from tests.kit.worked import all_workings

STRIPS = words_for("strip of kite paper")
TITLE = "Room 12's kite club: Thursday's page, worked"
SECONDS_A_CUE = 4


def worked(typed: str) -> Working:
    """A problem worked by regrouping first."""
    return all_workings(typed)["regroup_first"]


def strips(amount: Quantity) -> Scene:
    """An amount as strips, each cut into as many parts as its fraction says; parts not there are dotted."""
    parts = amount.ladder.denominator
    wide, high = Fraction(120), Fraction(12)
    rows = -(-amount.parts // parts)
    pieces = [
        Piece(
            f"part {row} {at}",
            Box(4 + wide * at / parts, 4 + row * (high + 5), wide / parts, high),
            Look.FILLED if row * parts + at < amount.parts else Look.DOTTED,
        )
        for row in range(rows)
        for at in range(parts)
    ]
    below = Fraction(4 + rows * 17 + 4)
    pieces.append(Piece("amount", Words(Fraction(64), below, amount, Fraction(5))))
    return Scene(wide + 8, below + 8, tuple(pieces), (Shown((amount,)),))


def film(
    *typed: str, title: str = TITLE, words: ClassWords = STRIPS, name: str = "", try_first: int = 2
) -> Timeline:
    """The film of some problems; ``name`` is the club's, ``try_first`` the number of a problem."""
    asked = typed or ("7 2/6 - 3 5/6", "5 1/8 - 2 5/8")
    said = says(f"Welcome to {name or 'the kite club'}.", f"Tonight there are {len(asked)} problems.")
    hello = Cue(Role.OPENING, said, (Fresh(), Write("name", title, heading=True)))
    bye = Cue(Role.CLOSING, says("That is all."), (Fresh(), Write("bye", "Good night!", heading=True)))
    chapters: list[Chapter] = [Chapter("", "Opening", (hello,))]
    for at, each in enumerate(asked, start=1):
        working = worked(each)
        cues = tuple(_cues(working, str(at), words, first=at == try_first))
        chapters.append(Chapter(str(at), text(working.statement), cues))
    return _timed(title, [*chapters, Chapter("", "Closing", (bye,))])


def _cues(working: Working, label: str, words: ClassWords, *, first: bool) -> Iterator[Cue]:
    asked = working.lines[0].says
    yield Cue(
        Role.PROBLEM,
        says(f"Problem {label} is {text(asked)}."),
        (Fresh(), Write(f"{label}-0", asked, label), *_drawn(_first_number(asked))),
        line=0,
    )
    if first:
        yield Cue(Role.TRY, says("Stop here and try it first.", "Go on when you are ready."))
    for at, line in enumerate(working.lines[1:], start=1):
        yield Cue(
            Role.LINE,
            reason_told(line.because, words) if line.because else says("So we write this."),
            (Write(f"{label}-{at}", line.says, leads=True, aside=line.aside),),
            think=Fraction(1),
            line=at,
        )
    if label == "1":
        wrong = Write("wrong", "4 3/6 ?", aside=True)
        yield Cue(Role.MISTAKE, says("Some of us write 4 3/6.", "That is not it."), (wrong, Strike("wrong")))
    answer = working.answer
    assert isinstance(answer, Quantity)
    yield Cue(Role.ANSWER, says(f"The answer is {text(answer)}."), _drawn(answer))


def _drawn(amount: Quantity) -> tuple[Draw, ...]:
    """Fractions are drawn in strips; other numbers are not drawn."""
    return (Draw(strips(amount)),) if amount.ladder.style is Style.MIXED else ()


def _first_number(line: Writable) -> Quantity:
    return next(piece for piece in row(line) if isinstance(piece, Quantity))


def _timed(title: str, chapters: list[Chapter]) -> Timeline:
    """Give each cue the same time, and all its sentences and acts the whole of it."""
    made: list[TimedChapter] = []
    clock = Fraction(0)
    for chapter in chapters:
        start = clock
        timed = []
        for cue in chapter.cues:
            end = clock + SECONDS_A_CUE
            moves = tuple(Move(act, clock, end) for act in cue.acts)
            timed.append(Timed(cue, clock, end, tuple((said, clock, end) for said in cue.says), moves))
            clock = end
        made.append(TimedChapter(chapter.label, chapter.title, start, clock, tuple(timed)))
    return Timeline(title, tuple(made))
