"""The transcript: a film to be read."""

from fractions import Fraction

from onewhole.languages.class_words import ClassWords
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.caption import Count
from onewhole.pictures.description import CutInto
from onewhole.pictures.scene import Scene
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Chapter, Cue, Draw, Fresh, Role, Script, Strike, Write
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.timing import timed
from onewhole.writers.transcript import transcript
from tests.kit.saying import says, written

CUT = Scene(Fraction(9), Fraction(9), (), (CutInto(Count(1, ONE), Count(6, Unit(Fraction(1, 6)))),))
ASKED = Write("problem", read_statement("7 2/6 - 3 5/6"), label="2")
CUES = (
    Cue(Role.PROBLEM, says("Number 2.", "What is 7 2/6 - 3 5/6?"), (Fresh(), ASKED, Draw(CUT))),
    Cue(Role.MISTAKE, says("That may be *wrong*."), (Draw(CUT), Write("wrong", "4 3/6", leads=True))),
    Cue(Role.MISTAKE, says("Strike it out."), (Fresh(), Strike("wrong"))),
    Cue(Role.CLOSING, says("Well flown.")),
)
FILM = timed(
    Script("Room 12 <kites>", (Chapter("", "Tonight", CUES[3:]), Chapter("2", "7 2/6 - 3 5/6", CUES))), Pace()
)


def test_the_whole_film() -> None:
    """Headings with times, what is said, written, struck out and shown; no picture is told twice running."""
    blocks = [
        r"# Room 12 \<kites\>",
        "## 0:00 Tonight",
        "Well flown.",
        "## 0:02 2. 7 2/6 - 3 5/6",
        "Number 2. What is 7 2/6 - 3 5/6?",
        "On the board:\n\n- 2. 7 2/6 - 3 5/6",
        "The picture: One strip is cut into 6 sixths.",
        r"That may be \*wrong\*.",
        "On the board:\n\n- = 4 3/6",
        "Strike it out.",
        "On the board:\n\n- A fresh board.\n- Struck out: = 4 3/6",
        "Well flown.\n",
    ]
    assert transcript(FILM, ClassWords("strip", "strips")).split("\n\n") == "\n\n".join(blocks).split("\n\n")


def test_every_sentence_is_there() -> None:
    """Nothing that is said is left out."""
    markdown = transcript(FILM, ClassWords()).replace("\\", "")
    assert all(one in markdown for cue in CUES for one in written(cue.says))
