"""The words of a word problem: a frame filled with the amounts of a statement."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from string import Formatter
from types import MappingProxyType
from typing import assert_never

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.amounts import a_whole, measured, of_one
from onewhole.languages.english.making import Nodes, listed, told, units
from onewhole.languages.english.own_story import OUR_CLASS, verb_after_did
from onewhole.languages.english.word_problems.frames import FRAMES, OWN_FRAMES
from onewhole.languages.english.word_problems.stuff import OWN_STUFF, STUFF
from onewhole.languages.english.wordings import wording
from onewhole.languages.english.words import (
    FORMS,
    article,
    short,
    unit_called,
    words_for,
)
from onewhole.number.ladder import Ladder, Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE, Kind, Unit, unit_marked
from onewhole.problems.story_frame import StoryFrame
from onewhole.problems.story_question import StoryQuestion
from onewhole.sentences.node import Counted, Naming, Node, Said, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences
from onewhole.statements.gap import Gap
from onewhole.statements.line_plot import Bound
from onewhole.statements.wording import FromEnd, ToNearest

#: What a whole is in a story when the class has not said what it calls one.
KITE_PAPER = words_for("strip of kite paper")
#: The colors of things that are put in order, as many as there may be numbers.
COLORS = ("red", "blue", "green", "yellow", "orange", "purple", "white", "black")
#: What the factor counts that says how many times.
COUNTED = {
    "kites": Thing("kite", "kites", None),
    "tails": Thing("tail", "tails", None),
    "pupils": Thing("pupil", "pupils", None),
    "meetings": Thing("meeting", "meetings", None),
    "pitchers": Thing("pitcher", "pitchers", None),
    "times": Thing("time", "times", None),
    "ropes": Thing("rope", "ropes", None),
    "bags": Thing("bag", "bags", None),
    "books": Thing("book", "books", None),
    "rows": Thing("row", "rows", None),
    "groups": Thing("group", "groups", None),
}
#: Who rides, and sits at tables: nobody is cut.
CHILDREN = Thing("child", "children", None)
#: What stands in rows.
SQUARES, CHAIRS = Thing("square", "squares", None), Thing("chair", "chairs", None)

#: Which measurements of a line plot are meant, beside a value.
BOUNDS: Mapping[Bound | None, Nodes] = MappingProxyType(
    {
        None: (),
        Bound.EXACTLY: ("exactly",),
        Bound.MORE: ("more than",),
        Bound.LESS: ("less than",),
        Bound.AT_LEAST: ("at least",),
        Bound.AT_MOST: ("at most",),
    }
)


def told_whole(words: ClassWords | None) -> ClassWords:
    """Return what a story counts: what the class calls a whole, or strips of kite paper.

    >>> told_whole(ClassWords()).wholes
    'strips of kite paper'
    """
    if words is None:
        return KITE_PAPER
    if words.whole == ClassWords().whole:
        return replace(words, whole=KITE_PAPER.whole, wholes=KITE_PAPER.wholes)
    return words


def frames_told(words: ClassWords | None) -> tuple[StoryFrame, ...]:
    """Return the ways to tell a story that suit a class: of the kite club while it counts strips of paper and
    names nobody else, and otherwise of whom it names, or of the class.

    >>> [frames_told(words_for(one)) is FRAMES for one in ("strip of kite paper", "trail mile")]
    [True, False]
    """
    kites = short(told_whole(words)).whole in {short(KITE_PAPER).whole, "kite"}
    return FRAMES if kites and not (words and words.story) else OWN_FRAMES


def amount_told(number: Quantity) -> Sentences:
    """Say a measure or a time of day as it stands in a story."""
    return told(measured(number, ClassWords()))


def story_told(frame: StoryFrame, parts: StoryQuestion, whole: ClassWords) -> Sentences:
    """Fill a frame. The whole is named in full once; where it is cut into parts, all are said to be alike."""
    brief = short(whole)
    in_parts = any(number.ladder.style in {Style.MIXED, Style.DECIMAL} for number in parts.numbers)
    cut = in_parts or isinstance(parts.wanted, Gap) or parts.is_cut
    same = frame.kind is Kind.NUMBER and cut
    lead = brief if same else whole
    holes = {hole for words in frame.sentences for hole in _holes(words)}
    first = brief if holes & {"some", "shown"} else lead
    filled = _whom(whole) | _amounts(parts, first, brief) | _unknown(parts, lead, brief)
    filled |= _wanted(parts, brief) | _factors(parts, brief) | _stuff(parts, filled, own="who" in holes)
    filled |= {"bound": BOUNDS[parts.bound], "shown": filled.get("many_in_full", filled["much"])}
    *rest, asks = frame.sentences
    said = [one for words in rest for one in _said(words, filled, parts, lead, brief)]
    if same:
        said.insert(0, told("all the", Naming(a_whole(whole)), "are the same size")[0])
    return (*said, _filled(asks, filled, End.ASKS))


def _said(
    words: str, filled: Mapping[str, Nodes], parts: StoryQuestion, lead: ClassWords, brief: ClassWords
) -> Iterator[Sentence]:
    """Yield a sentence, or one for each number where it tells of each."""
    if "each" not in _holes(words):
        yield _filled(words, filled, End.STOP)
        return
    for at, number in enumerate(parts.numbers):
        one = {"each": measured(number, brief if at else lead), "color": (COLORS[at],)}
        yield _filled(words, {**filled, **one}, End.STOP)


def _holes(words: str) -> set[str]:
    return {hole for _, hole, _, _ in Formatter().parse(words) if hole}


def _filled(words: str, holes: Mapping[str, Nodes], end: End) -> Sentence:
    """Make a sentence of words with holes."""
    nodes: list[Node] = []
    for between, hole, _, _ in Formatter().parse(words):
        if between.strip():
            nodes.append(between.strip())
        if hole:
            nodes += holes[hole]
    return told(tuple(nodes), end=end)[0]


def _whom(whole: ClassWords) -> dict[str, Nodes]:
    own = whole.story or OUR_CLASS
    return {"who": (own.who,), "does": (own.does,), "do": (verb_after_did(own),)}


def _amounts(parts: StoryQuestion, first: ClassWords, brief: ClassWords) -> dict[str, Nodes]:
    """Name the amounts in their order. The first that is told counts the whole in full."""
    told_first = next((at for at in range(len(parts.numbers)) if at not in parts.counts), 0)
    named = (
        measured(number, first if at == told_first else brief) for at, number in enumerate(parts.numbers)
    )
    return dict(zip("abcde", named, strict=False))


def _unknown(parts: StoryQuestion, lead: ClassWords, brief: ClassWords) -> dict[str, Nodes]:
    """Name what is asked for: strips, or a part of one where what is known leaves room for no more."""
    if parts.kind is not Kind.NUMBER:
        return {"many": _units_asked(parts)}
    if parts.under_one:
        of = of_one(brief)
        return {
            "some": ("part", *of),
            "many": ("how much", *of),
            "more": ("how much more", *of),
            "fewer": ("how much less", *of),
            "are": ("is",),
        }
    many = Naming(a_whole(brief))
    return {
        "some": ("some", Naming(a_whole(lead))),
        "many": ("how many", many),
        "many_in_full": ("how many", Naming(a_whole(lead))),
        "more": ("how many more", many),
        "fewer": ("how many fewer", many),
        "are": ("are",),
    }


def _units_asked(parts: StoryQuestion) -> Nodes:
    """Ask in the units that are wanted: how many feet and inches, or how much of an inch."""
    if isinstance(parts.wanted, Ladder):
        return ("how many", *listed([(units(unit),) for unit in parts.wanted.units]))
    unit = unit_marked(parts.numbers[0].ladder.mark)
    if parts.under_one:
        return ("how much of", article(unit_called(unit.mark, 1)), Naming(unit, many=False))
    return ("how many", Naming(unit))


def _wanted(parts: StoryQuestion, brief: ClassWords) -> dict[str, Nodes]:
    """Say which pieces, which form or which place is wanted, and from which end numbers are put in order."""
    match parts.wanted:
        case Gap(bottom=int() as bottom) as gap:
            return _pieces(
                gap.wholes if isinstance(gap.wholes, int) else 0, units(Unit(Fraction(1, bottom))), brief
            )
        case NumberForm() as form:
            return {"form": (FORMS[form],)}
        case Unit() as unit if unit == ONE:
            return {"nearest": ("to the nearest", Naming(Thing(f"whole {brief.whole}", ""), many=False))}
        case Unit() as unit:
            return {"nearest": (wording(ToNearest(unit)),)}
        case Gap() | Ladder() | None:
            return {"ends": (wording(FromEnd(parts.falling)),)}
        case _:
            assert_never(parts.wanted)


def _pieces(wholes: int, pieces: Naming, brief: ClassWords) -> dict[str, Nodes]:
    """Name the pieces that are asked for, and the wholes that stand beside them."""
    if not wholes:
        return {"pieces": (pieces,), "kept": ("in", pieces)}
    kept = Counted(wholes, Thing(f"whole {brief.whole}", f"whole {brief.wholes}"))
    return {"pieces": (pieces,), "kept": ("as", kept, "and some", pieces)}


def _stuff(parts: StoryQuestion, filled: Mapping[str, Nodes], *, own: bool) -> dict[str, Nodes]:
    """Say what the amounts are amounts of, and what is done with it."""
    if parts.kind is not Kind.NUMBER:
        return (OWN_STUFF if own else STUFF)[parts.kind]
    verbs: dict[str, Nodes] = {"takes": ("takes",), "take": ("take",)}
    return {"of": (), "much": filled["many"], "uses": filled["does"], "use": filled["do"], **verbs}


def _factors(parts: StoryQuestion, brief: ClassWords) -> dict[str, Nodes]:
    """Write the factors of a product without a unit, and count things with the numbers that count."""
    holes: dict[str, Nodes] = {
        "wholes": (Naming(a_whole(brief)),),
        "one": (article(brief.whole), Naming(a_whole(brief), many=False)),
        "brief": (Naming(a_whole(brief), many=False),),
    }
    for then, at in zip(("", "then_"), parts.counts, strict=False):
        for hole, thing in COUNTED.items():
            holes[f"{then}{hole}"] = (Counted(int(parts.numbers[at].value), thing),)
    for every, number in zip(("all_", ""), parts.numbers, strict=False):
        for hole, thing in (("squares", SQUARES), ("chairs", CHAIRS), ("children", CHILDREN)):
            holes[f"{every}{hole}"] = (Counted(int(number.value), thing),)
    for hole, number in zip(("factor", "other"), parts.numbers, strict=False):
        holes[hole] = (Said(number),)
    return holes
