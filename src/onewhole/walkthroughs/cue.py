"""A cue: what is said, and what happens on the board meanwhile."""

from enum import Enum
from fractions import Fraction

from msgspec import Struct

from onewhole.languages.table import SPOKEN
from onewhole.notations.folding import Row
from onewhole.pictures.scene import Box, Scene
from onewhole.sentences.sentence import Sentences
from onewhole.statements.writable import Writable


class Role(Enum):
    """What a cue is there for."""

    OPENING = "opening"
    OVERVIEW = "overview"
    PROBLEM = "problem"
    TRY = "try"
    TURN = "turn"
    LINE = "line"
    TENS = "tens"
    MISTAKE = "mistake"
    CHECK = "check"
    ANSWER = "answer"
    FORMS = "forms"
    CLOSING = "closing"


class Place(Struct, frozen=True):
    """Where something stands on the board: left, top, width and height in its units, pixels of the film."""

    x: int
    y: int
    width: int
    height: int


class Write(Struct, frozen=True):
    """Write a line on the board: mathematics or plain words. ``place`` is None until the board is laid out.

    ``leads`` writes an equals sign before it; ``aside`` writes it lighter and smaller; ``label`` is the
    problem's number. ``name`` tells it from everything else on its board. ``rows`` are its rows where the
    layout folded a formula that is too long for one, and empty otherwise. ``fresh`` are the numbers, from 0,
    of its bits that are new beside the line before; they are marked.
    """

    name: str
    content: Writable | str
    label: str = ""
    leads: bool = False
    aside: bool = False
    heading: bool = False
    place: Place | None = None
    rows: tuple[Row, ...] = ()
    fresh: frozenset[int] = frozenset()


class Strike(Struct, frozen=True):
    """Strike out what was written under a name."""

    name: str


class Draw(Struct, frozen=True):
    """Show a scene in the picture's place, changing it from the scene shown before.

    ``marks`` are the places in which it differs from that, as a board marks them while they are told.
    """

    scene: Scene
    place: Place | None = None
    marks: tuple[Box, ...] = ()


class Fresh(Struct, frozen=True):
    """Wipe the board clean: a fresh board."""


Act = Write | Strike | Draw | Fresh


class Cue(Struct, frozen=True):
    """Sentences to say while the acts happen, after ``think`` seconds of quiet.

    ``line`` is the number of the working's line (from 0) that the cue is about, where it is about one.
    """

    role: Role
    says: Sentences
    acts: tuple[Act, ...] = ()
    think: Fraction = Fraction(0)
    line: int | None = None


class Chapter(Struct, frozen=True):
    """A part of the film: opening, one problem (``label`` is its number), closing."""

    label: str
    title: str
    cues: tuple[Cue, ...]


class Script(Struct, frozen=True):
    """The whole film before it has times; ``language`` is the BCP 47 tag of what is said in it.

    ``merge`` says how much it was shortened (see :func:`~.script.script`).
    """

    title: str
    chapters: tuple[Chapter, ...]
    language: str = SPOKEN.tag
    merge: int = 0
