"""What a walkthrough is made of: the night's problems worked, and how the class speaks."""

from enum import Enum
from fractions import Fraction

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.slip import Slip
from onewhole.pictures.picture import Picture
from onewhole.pictures.scene import Scene
from onewhole.statements.statement import RightAnswer, Statement
from onewhole.working.form import ANY_FORM, FormWanted
from onewhole.working.working import Working


class Length(Enum):
    """How long a problem is told, where the teacher chose it."""

    FULL = "in full"
    SHORT = "short"


class Item(Struct, frozen=True):
    """One problem: its label, its working (None where it is only answered), its picture, a likely mistake.

    ``try_first`` stops before it is worked, ``your_turn`` before its answer, so that the family works it out.
    ``length`` is None where the problems before it decide how fully it is told. ``wanted`` is the form that
    the page asks of an answer. ``bars`` are those of a story, shown while it is told, before its picture.
    """

    label: str
    statement: Statement
    answer: RightAnswer
    working: Working | None = None
    picture: Picture | None = None
    story: str = ""
    mistake: Slip | None = None
    try_first: bool = False
    length: Length | None = None
    wanted: FormWanted = ANY_FORM
    your_turn: bool = False
    bars: Scene | None = None


class Lesson(Struct, frozen=True):
    """A night's page as it is worked aloud."""

    title: str
    date: str
    class_name: str
    words: ClassWords
    items: tuple[Item, ...]


class Pace(Struct, frozen=True):
    """Spoken words a minute; seconds to think before an answer, to try a problem first, to find an answer."""

    words_a_minute: int = 120
    think: Fraction = Fraction(2)
    try_first: Fraction = Fraction(20)
    your_turn: Fraction = Fraction(10)
