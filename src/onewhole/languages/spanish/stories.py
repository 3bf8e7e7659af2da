"""The words of a word problem in Spanish: a frame filled with the amounts of a statement."""

from dataclasses import replace
from fractions import Fraction
from string import Formatter

from onewhole.languages.english.words import ClassWords
from onewhole.languages.spanish.amounts import a_whole, measured, of_one, one_thing
from onewhole.languages.spanish.making import Nodes, told, units
from onewhole.languages.spanish.own_frames import OWN_FRAMES
from onewhole.languages.spanish.own_story import OUR_CLASS
from onewhole.languages.spanish.story_frames import FRAMES
from onewhole.languages.spanish.words import TAG, USUAL, short
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, Unit
from onewhole.problems.story_asks import StoryQuestion
from onewhole.problems.story_frame import StoryFrame
from onewhole.sentences.node import Counted, Naming, Node, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences
from onewhole.statements.gap import Gap

#: What a whole is in a story when the class has not said what it calls one.
KITE_PAPER = ClassWords("tira de papel", "tiras de papel", language=TAG, feminine=True)
#: Wholes of which the kite club's stories can be told.
_OF_KITES = frozenset({"tira", "cometa", "papalote", "barrilete", "chiringa"})


def told_whole(words: ClassWords | None) -> ClassWords:
    """Return what a story counts: what the class calls a whole, or strips of paper.

    >>> told_whole(USUAL).wholes
    'tiras de papel'
    """
    if words is None:
        return KITE_PAPER
    if words.whole == USUAL.whole:
        return replace(words, whole=KITE_PAPER.whole, wholes=KITE_PAPER.wholes, feminine=True)
    return words


def frames_told(words: ClassWords | None) -> tuple[StoryFrame, ...]:
    """Return the ways to tell a story that suit a class: of the kite club while it counts strips of paper and
    names nobody else, and otherwise of whom it names, or of the class.

    >>> [frames_told(ClassWords(one, f"{one}s")) is FRAMES for one in ("tira de papel", "milla")]
    [True, False]
    """
    kites = short(told_whole(words)).whole in _OF_KITES
    return FRAMES if kites and not (words and words.story) else OWN_FRAMES


def story_told(frame: StoryFrame, parts: StoryQuestion, whole: ClassWords) -> Sentences:
    """Fill a frame. The whole is named in full once; where it is cut into parts, all are said to be alike."""
    brief = short(whole)
    in_parts = any(number.ladder.style in {Style.MIXED, Style.DECIMAL} for number in parts.numbers)
    same = frame.kind is Kind.NUMBER and (in_parts or isinstance(parts.second, Gap))
    lead = brief if same else whole
    named = any("some" in _holes(words) for words in frame.sentences)
    own = whole.story or OUR_CLASS
    filled: dict[str, Nodes] = {
        "who": (own.who,),
        "does": (own.does,),
        "a": measured(parts.first, brief if named else lead),
        "b": measured(parts.second, brief) if isinstance(parts.second, Quantity) else (),
        **_unknown(parts, lead, brief),
        **_pieces(parts.second, brief),
    }
    *rest, asks = frame.sentences
    said = [_filled(words, filled, End.STOP) for words in rest]
    if same:
        every = "todas las" if whole.feminine else "todos los"
        alike = (every, Naming(a_whole(whole)), "son del mismo tamaño")
        said.insert(0, told(alike)[0])
    return (*said, _filled(asks, filled, End.ASKS))


def _holes(words: str) -> set[str | None]:
    return {hole for _, hole, _, _ in Formatter().parse(words)}


def _filled(words: str, holes: dict[str, Nodes], end: End) -> Sentence:
    """Make a sentence of words with holes."""
    nodes: list[Node] = []
    for between, hole, _, _ in Formatter().parse(words):
        if between.strip():
            nodes.append(between.strip())
        if hole:
            nodes += holes[hole]
    return told(tuple(nodes), end=end)[0]


def _unknown(parts: StoryQuestion, lead: ClassWords, brief: ClassWords) -> dict[str, Nodes]:
    """Name what is asked for: strips, or a part of one where what is known leaves room for no more."""
    second = parts.second
    gets = "sirve" if isinstance(second, Quantity) and one_thing(second) else "sirven"
    if parts.under_one:
        of = of_one(brief)
        return {
            "some": ("una parte", *of),
            "many": ("qué parte", *of),
            "more": ("cuánto más",),
            "fewer": ("cuánto menos",),
            "left": ("queda",),
            "good": ("sirve",),
            "gets": ("sirve",),
        }
    many = Naming(a_whole(brief))
    how = "cuántas" if brief.feminine else "cuántos"
    return {
        "some": ("algunas" if lead.feminine else "algunos", Naming(a_whole(lead))),
        "many": (how, many),
        "more": (how, many, "más"),
        "fewer": (how, many, "menos"),
        "left": ("quedan",),
        "good": ("sirven",),
        "gets": (gets,),
    }


def _pieces(second: Quantity | Gap, brief: ClassWords) -> dict[str, Nodes]:
    """Name the pieces that are asked for, and the wholes that stand beside them."""
    if not isinstance(second, Gap) or not isinstance(second.bottom, int):
        return {"kept": (), "pieces": ()}
    pieces = units(Unit(Fraction(1, second.bottom)))
    wholes = second.wholes if isinstance(second.wholes, int) else 0
    if not wholes:
        return {"pieces": (pieces,), "kept": ("en", pieces)}
    uncut = ("completa", "completas") if brief.feminine else ("completo", "completos")
    one, many = f"{brief.whole} {uncut[0]}", f"{brief.wholes} {uncut[1]}"
    kept = Counted(wholes, Thing(one, many, feminine=brief.feminine))
    return {"pieces": (pieces,), "kept": ("como", kept, "y algunos", pieces)}
