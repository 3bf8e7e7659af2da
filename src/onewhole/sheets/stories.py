"""Word problems about the class's own things, made from a statement and holding exactly its numbers."""

from functools import lru_cache

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import SPOKEN, spoken_by
from onewhole.misconceptions.telling import PLAIN_STORY, ToldAs
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError, asked
from onewhole.problems.story_fits import fits
from onewhole.problems.story_frame import StoryFrame
from onewhole.problems.story_question import StoryQuestion
from onewhole.problems.story_structure import Structure
from onewhole.problems.story_telling import telling
from onewhole.sentences.sentence import Sentences
from onewhole.sheets.reading_level import ReadingLevel, reading_level
from onewhole.sheets.told_numbers import untold
from onewhole.statements.statement import Statement
from onewhole.working.quotients.remainder_shared import RemainderForm

#: Where a remainder takes one of these forms, it is shared out too.
SHARED = frozenset({RemainderForm.FRACTION, RemainderForm.DECIMAL})


class UnknownStructureError(InputError, KeyError):
    """No story has that structure."""

    __str__ = InputError.__str__


class Story(Struct, frozen=True):
    """A word problem and the statement it asks.

    ``told`` names one whole, the same for every amount (K7; CCSSM 2010, 4.NF.B.3.a and 4.NF.B.3.d), or
    measures every amount in the statement's own units. ``telling`` says to what its words may mislead. Raises
    NoStoryError when a number of the statement does not stand in the words.
    """

    statement: Statement
    structure: Structure
    told: Sentences
    whole: ClassWords
    telling: ToldAs = PLAIN_STORY

    def __post_init__(self) -> None:
        """Refuse words that tell other numbers."""
        if untold(self.problem("1")):
            msg = "the words do not tell the numbers of the problem"
            raise NoStoryError(msg, remedy="Name the whole with a word that holds no number.")

    @property
    def words(self) -> str:
        """Return the words as they stand on a sheet."""
        return text_of(self.told)

    @property
    def counts_wholes(self) -> bool:
        """Say whether the words count what the class calls a whole."""
        return self.whole.whole in self.words or self.whole.wholes in self.words

    @property
    def level(self) -> ReadingLevel:
        """Return how hard the words are to read."""
        found = reading_level(self.words, self.told[0].language)
        assert found is not None
        return found

    def problem(self, label: str) -> Problem:
        """Return the word problem for a sheet."""
        known = None if self.telling == PLAIN_STORY else self.telling
        return Problem(label, self.statement, text(self.statement), story=self.words, telling=known)


def story(
    statement: Statement,
    *,
    structure: Structure | None = None,
    seed: int = 0,
    words: ClassWords | None = None,
    remainder: RemainderForm | None = None,
) -> Story:
    """Tell a statement as a word problem: the same statement and seed give the same words.

    Seeds 0, 1, 2 ... go through all that may be told, the structures in turn; ``structure`` keeps to one.
    ``words`` are the class's own for a whole, and of whom its stories tell; without them, and where a class
    only says "whole", the kite club counts strips of kite paper. Where the class's ``remainder`` is a
    fraction or a decimal, all is shared, and nothing is left over. Raises NoStoryError for a statement about
    which no story is told, and for a structure that it does not have.

    >>> from onewhole.statements.reading import read_statement
    >>> story(read_statement("52 - 27")).words
    'The kite club has 52 strips of kite paper. It uses 27 strips for a kite. How many strips are left?'
    """
    parts = asked(statement, shared_out=remainder in SHARED)
    every = _every(parts, structure, words)
    return _filled(statement, parts, every[seed % len(every)], words)


def told_anew(
    problem: Problem, words: ClassWords | None = None, remainder: RemainderForm | None = None
) -> Story:
    """Tell a problem in words that it does not have, where there is more than one way: each way in turn.

    A problem without words begins with the way of its place on the page, so that neighbors differ. Raises
    NoStoryError.
    """
    parts = asked(problem.statement, shared_out=remainder in SHARED)
    every = _every(parts, None, words)
    begin = problem.line % len(every)
    stories = [_filled(problem.statement, parts, frame, words) for frame in (*every[begin:], *every[:begin])]
    said = [one.words for one in stories]
    return stories[(said.index(problem.story) + 1) % len(said)] if problem.story in said else stories[0]


def told_as(
    problem: Problem, words: ClassWords | None = None, remainder: RemainderForm | None = None
) -> Structure | None:
    """Return how the story of a problem is built, where it is one of ours word for word; None for any other.

    >>> from dataclasses import replace
    >>> from onewhole.statements.reading import read_statement
    >>> told = story(read_statement("52 - 27"), structure=Structure.COMPARE).problem("1")
    >>> told_as(told).value, told_as(replace(told, story="Ana has 52 cards and gives away 27."))
    ('compare', None)
    """
    try:
        parts = asked(problem.statement, shared_out=remainder in SHARED)
        every = _every(parts, None, words)
    except NoStoryError:
        return None
    stories = (spoken_by(words) if words else SPOKEN).stories
    whole = stories.whole(words)
    same = (frame for frame in every if text_of(stories.filled(frame, parts, whole)) == problem.story)
    found = next(same, None)
    return found.structure if found else None


def _filled(statement: Statement, parts: StoryQuestion, frame: StoryFrame, words: ClassWords | None) -> Story:
    stories = (spoken_by(words) if words else SPOKEN).stories
    whole = stories.whole(words)
    misleads = telling(parts.asks, frame.structure)
    return Story(statement, frame.structure, stories.filled(frame, parts, whole), whole, misleads)


@lru_cache(maxsize=1024)
def known_telling(
    statement: Statement, said: str, words: ClassWords, remainder: RemainderForm | None = None
) -> ToldAs | None:
    """Return how a story is told that stands on a sheet, where it is one of those that are told here.

    Only those are looked at whose words may mislead. None for words of somebody else's.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("52 - 27")
    >>> turned = story(asked, structure=Structure.TURNED)
    >>> known_telling(asked, turned.words, turned.whole) == turned.telling
    True
    """
    try:
        parts = asked(statement, shared_out=remainder in SHARED)
    except NoStoryError:
        return None
    stories = spoken_by(words).stories
    for frame in stories.frames(words):
        found = telling(frame.asks, frame.structure)
        if found is PLAIN_STORY or not _fits(frame, parts):
            continue
        if text_of(stories.filled(frame, parts, stories.whole(words))) == said:
            return found
    return None


def _every(parts: StoryQuestion, structure: Structure | None, words: ClassWords | None) -> list[StoryFrame]:
    """Return the ways to tell what is asked, the structures in turn. Raises NoStoryError for none."""
    stories = (spoken_by(words) if words else SPOKEN).stories
    fitting = [frame for frame in stories.frames(words) if _fits(frame, parts)]
    chosen = [frame for frame in fitting if structure in {None, frame.structure}]
    if not chosen:
        have = dict.fromkeys(frame.structure.value for frame in fitting)
        name = structure.value if structure else "a story"
        msg = f"this problem cannot be told as “{name}”"
        remedy = f"It can be told as: {', '.join(have)}." if have else "Leave the kind out."
        raise NoStoryError(msg, remedy=remedy)
    return _in_turn(chosen)


def structure_named(said: str) -> Structure:
    """Return a structure by its name, however it is capitalised; take-from is "take from".

    Raises UnknownStructureError.

    >>> structure_named("Take-from").name
    'TAKE_FROM'
    """
    plain = " ".join(said.lower().replace("-", " ").replace("_", " ").split())
    for structure in Structure:
        if structure.value == plain:
            return structure
    msg = f"no story is called “{said[:40]}”"
    raise UnknownStructureError(msg, remedy=f"Use one of: {', '.join(one.value for one in Structure)}.")


def _fits(frame: StoryFrame, parts: StoryQuestion) -> bool:
    return frame.asks is parts.asks and frame.kind is parts.kind and fits(parts, frame.structure)


def _in_turn(frames: list[StoryFrame]) -> list[StoryFrame]:
    """Put frames in an order in which their structures take turns."""
    seen: dict[Structure, int] = {}
    turns = []
    for at, frame in enumerate(frames):
        seen[frame.structure] = seen.get(frame.structure, -1) + 1
        turns.append((seen[frame.structure], at))
    return [frames[at] for _, at in sorted(turns)]
