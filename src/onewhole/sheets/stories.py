"""Word problems about the kite club, made from a statement and holding exactly its numbers."""

from dataclasses import dataclass
from typing import assert_never

from onewhole.errors import InputError
from onewhole.languages.english.words import ClassWords, piece_name, short
from onewhole.notations.amounts import amount, with_article
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.problem import Problem
from onewhole.sheets.reading_level import ReadingLevel, reading_level
from onewhole.sheets.story_asks import Asks, NoStoryError, StoryQuestion, asked
from onewhole.sheets.story_frames import FRAMES, StoryFrame, Structure
from onewhole.sheets.told_numbers import untold
from onewhole.statements.gap import Gap
from onewhole.statements.statement import Statement

#: What a whole is in a story when the class has not said what it calls one.
KITE_PAPER = ClassWords.for_whole("strip of kite paper")


class UnknownStructureError(InputError, KeyError):
    """No story has that structure."""

    __str__ = InputError.__str__


@dataclass(frozen=True, slots=True)
class Story:
    """A word problem and the statement it asks.

    ``words`` name one whole, the same for every amount (K7; CCSSM 2010, 4.NF.B.3.a and 4.NF.B.3.d), or
    measure every amount in the statement's own units. Raises NoStoryError when a number of the statement
    does not stand in the words.
    """

    statement: Statement
    structure: Structure
    words: str
    whole: ClassWords

    def __post_init__(self) -> None:
        """Refuse words that tell other numbers."""
        if untold(self.problem("1")):
            msg = "the words do not tell the numbers of the problem"
            raise NoStoryError(msg, remedy="Name the whole with a word that holds no number.")

    @property
    def level(self) -> ReadingLevel:
        """Return how hard the words are to read."""
        found = reading_level(self.words)
        assert found is not None
        return found

    def problem(self, label: str) -> Problem:
        """Return the word problem for a sheet."""
        return Problem(label, self.statement, text(self.statement), story=self.words)


def story(
    statement: Statement,
    *,
    structure: Structure | None = None,
    seed: int = 0,
    words: ClassWords | None = None,
) -> Story:
    """Tell a statement as a word problem: the same statement and seed give the same words.

    Seeds 0, 1, 2 ... go through all that may be told, the structures in turn; ``structure`` keeps to one.
    ``words`` are the class's own for a whole; without them, and where a class only says "whole", strips of
    kite paper are counted. Raises NoStoryError for a statement about which no story is told, and for a
    structure that it does not have.

    >>> from onewhole.statements.reading import read_statement
    >>> story(read_statement("52 - 27")).words
    'The kite club has 52 strips of kite paper. It uses 27 strips for a kite. How many strips are left?'
    """
    parts = asked(statement)
    kind = parts.first.kind
    fitting = [frame for frame in FRAMES if frame.asks is parts.asks and frame.kind is kind]
    chosen = [frame for frame in fitting if structure in {None, frame.structure}]
    if not chosen:
        have = dict.fromkeys(frame.structure.value for frame in fitting)
        msg = f"this problem cannot be told as “{structure}”"
        remedy = f"It can be told as: {', '.join(have)}." if have else "Leave the kind out."
        raise NoStoryError(msg, remedy=remedy)
    frame, whole = _in_turn(chosen)[seed % len(chosen)], told_whole(words)
    return Story(statement, frame.structure, _told(frame, parts, whole), whole)


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
    raise UnknownStructureError(msg, remedy=f"Use one of: {', '.join(Structure)}.")


def _in_turn(frames: list[StoryFrame]) -> list[StoryFrame]:
    """Put frames in an order in which their structures take turns."""
    seen: dict[Structure, int] = {}
    turns = []
    for at, frame in enumerate(frames):
        seen[frame.structure] = seen.get(frame.structure, -1) + 1
        turns.append((seen[frame.structure], at))
    return [frames[at] for _, at in sorted(turns)]


def told_whole(words: ClassWords | None) -> ClassWords:
    """Return what a story counts: what the class calls a whole, or strips of kite paper.

    >>> told_whole(ClassWords()).wholes
    'strips of kite paper'
    """
    if words is None or words.whole == ClassWords().whole:
        return KITE_PAPER
    return words


def _told(frame: StoryFrame, parts: StoryQuestion, whole: ClassWords) -> str:
    """Fill a frame. The whole is named in full once; where it is cut into parts, all are said to be alike."""
    brief = short(whole)
    in_parts = any(number.ladder.style in {Style.MIXED, Style.DECIMAL} for number in parts.numbers)
    same = frame.kind is Kind.NUMBER and (in_parts or isinstance(parts.second, Gap))
    lead = brief if same else whole
    filled = frame.words.format(
        a=amount(parts.first, brief if "{some}" in frame.words else lead),
        b=amount(parts.second, brief) if isinstance(parts.second, Quantity) else "",
        **_unknown(parts, lead, brief),
        **_pieces(parts.second, brief),
    )
    return f"All the {whole.wholes} are the same size. {filled}" if same else filled


def _unknown(parts: StoryQuestion, lead: ClassWords, brief: ClassWords) -> dict[str, str]:
    """Name what is asked for: strips, or a part of one where what is known leaves room for no more."""
    if _under_one(parts):
        of_one = f"of {with_article(brief.whole)}"
        return {
            "some": f"part {of_one}",
            "many": f"How much {of_one}",
            "more": f"How much more {of_one}",
            "fewer": f"How much less {of_one}",
            "are": "is",
        }
    return {
        "some": f"some {lead.wholes}",
        "many": f"How many {brief.wholes}",
        "more": f"How many more {brief.wholes}",
        "fewer": f"How many fewer {brief.wholes}",
        "are": "are",
    }


def _under_one(parts: StoryQuestion) -> bool:
    """Say whether the unknown is a part of an amount under one."""
    match parts.asks:
        case Asks.DIFFERENCE | Asks.CHANGE_TAKEN:
            within: Quantity | Gap = parts.first
        case Asks.CHANGE_ADDED | Asks.START_ADDED:
            within = parts.second
        case Asks.SUM | Asks.WHICH | Asks.START_TAKEN | Asks.RENAMED:
            return False
        case _:
            assert_never(parts.asks)
    return isinstance(within, Quantity) and within.value < 1


def _pieces(second: Quantity | Gap, brief: ClassWords) -> dict[str, str]:
    """Name the pieces that are asked for, and the wholes that stand beside them."""
    if not isinstance(second, Gap) or not isinstance(second.bottom, int):
        return {"kept": "", "pieces": ""}
    pieces = piece_name(second.bottom)
    wholes = second.wholes if isinstance(second.wholes, int) else 0
    kept = f"as {wholes} whole {brief.whole if wholes == 1 else brief.wholes} and some {pieces}"
    return {"pieces": pieces, "kept": kept if wholes else f"in {pieces}"}
