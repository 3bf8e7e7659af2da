"""The words of a word problem in Spanish: a frame filled with the amounts of a statement."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from string import Formatter
from types import MappingProxyType
from typing import assert_never

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.amounts import a_whole, measured, of_one, one_thing
from onewhole.languages.spanish.making import Nodes, listed, told, units
from onewhole.languages.spanish.own_story import OUR_CLASS
from onewhole.languages.spanish.word_problems.frames import FRAMES, OWN_FRAMES
from onewhole.languages.spanish.word_problems.stuff import OWN_STUFF, STUFF
from onewhole.languages.spanish.wordings import wording_parts
from onewhole.languages.spanish.words import FORMS, TAG, USUAL, is_feminine, short
from onewhole.number.clock import shown
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
KITE_PAPER = ClassWords("tira de papel", "tiras de papel", language=TAG, feminine=True)
#: The colors of things that are put in order, of a feminine and of a masculine thing.
COLORS = (
    ("roja", "rojo"),
    ("azul", "azul"),
    ("verde", "verde"),
    ("amarilla", "amarillo"),
    ("naranja", "naranja"),
    ("morada", "morado"),
    ("blanca", "blanco"),
    ("negra", "negro"),
)
#: What the factor counts that says how many times.
COUNTED = {
    "kites": Thing("cometa", "cometas", None, feminine=True),
    "tails": Thing("cola", "colas", None, feminine=True),
    "pupils": Thing("persona", "personas", None, feminine=True),
    "meetings": Thing("reunión", "reuniones", None, feminine=True),
    "pitchers": Thing("jarra", "jarras", None, feminine=True),
    "times": Thing("vez", "veces", None, feminine=True),
    "ropes": Thing("cuerda", "cuerdas", None, feminine=True),
    "bags": Thing("bolsa", "bolsas", None, feminine=True),
    "books": Thing("libro", "libros", None),
    "rows": Thing("fila", "filas", None, feminine=True),
    "groups": Thing("grupo", "grupos", None),
}
#: Who rides, and sits at tables: nobody is cut.
CHILDREN = Thing("niño", "niños", None)
#: What stands in rows.
SQUARES = Thing("cuadrado", "cuadrados", None)
CHAIRS = Thing("silla", "sillas", None, feminine=True)
#: Wholes of which the kite club's stories can be told.
_OF_KITES = frozenset({"tira", "cometa", "papalote", "barrilete", "chiringa"})

#: Which measurements of a line plot are meant, beside a value.
BOUNDS: Mapping[Bound | None, Nodes] = MappingProxyType(
    {
        None: (),
        Bound.EXACTLY: ("exactamente",),
        Bound.MORE: ("más de",),
        Bound.LESS: ("menos de",),
        Bound.AT_LEAST: ("al menos",),
        Bound.AT_MOST: ("como máximo",),
    }
)


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


def amount_told(number: Quantity) -> Sentences:
    """Say a measure or a time of day as it stands in a story."""
    return told(measured(number, USUAL))


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
        every = "todas las" if whole.feminine else "todos los"
        said.insert(0, told(every, Naming(a_whole(whole)), "son del mismo tamaño")[0])
    return (*said, _filled(asks, filled, End.ASKS))


def _said(
    words: str, filled: Mapping[str, Nodes], parts: StoryQuestion, lead: ClassWords, brief: ClassWords
) -> Iterator[Sentence]:
    """Yield a sentence, or one for each number where it tells of each."""
    if "each" not in _holes(words):
        yield _filled(words, filled, End.STOP)
        return
    for at, number in enumerate(parts.numbers):
        feminine, masculine = COLORS[at]
        one = {
            "each": measured(number, brief if at else lead),
            "color": (feminine,),
            "color_o": (masculine,),
        }
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
    return {"who": (own.who,), "does": (own.does,)}


def _amounts(parts: StoryQuestion, first: ClassWords, brief: ClassWords) -> dict[str, Nodes]:
    """Name the amounts in their order. The first that is told counts the whole in full."""
    told_first = next((at for at in range(len(parts.numbers)) if at not in parts.counts), 0)
    named = (
        measured(number, first if at == told_first else brief) for at, number in enumerate(parts.numbers)
    )
    times = {
        f"at_{hole}": (_at(number), Said(number))
        for hole, number in zip("abc", parts.numbers, strict=False)
        if number.ladder.clock
    }
    return {**dict(zip("abcde", named, strict=False)), **times}


def _at(time: Quantity) -> str:
    """Say at a time: a la 1:15, a las 2:15."""
    hour, *_ = shown(time)
    return "a la" if hour == 1 else "a las"


def _unknown(parts: StoryQuestion, lead: ClassWords, brief: ClassWords) -> dict[str, Nodes]:
    """Name what is asked for: strips, or a part of one where what is known leaves room for no more."""
    if parts.kind is not Kind.NUMBER:
        return _units_asked(parts)
    last = parts.numbers[-1]
    if parts.under_one:
        of = of_one(brief)
        return {
            "some": ("una parte", *of),
            "many": ("qué parte", *of),
            "more": ("cuánto más",),
            "fewer": ("cuánto menos",),
            "left": ("queda",),
            "lacks": ("falta",),
            "good": ("sirve",),
            "gets": ("sirve",),
            "is": ("es",),
        }
    many = Naming(a_whole(brief))
    how = "cuántas" if brief.feminine else "cuántos"
    return {
        "some": ("unas" if lead.feminine else "unos", Naming(a_whole(lead))),
        "many": (how, many),
        "many_in_full": ("cuántas" if lead.feminine else "cuántos", Naming(a_whole(lead))),
        "more": (how, many, "más"),
        "fewer": (how, many, "menos"),
        "left": ("quedan",),
        "lacks": ("faltan",),
        "good": ("sirven",),
        "gets": ("sirve" if one_thing(last) else "sirven",),
        "is": ("son",),
    }


def _units_asked(parts: StoryQuestion) -> dict[str, Nodes]:
    """Ask in the units that are wanted: how many feet and inches, or how much of an inch."""
    wanted = parts.wanted
    if isinstance(wanted, Ladder):
        how = "cuántas" if is_feminine(wanted.units[0]) else "cuántos"
        return {"many": (how, *listed([(units(unit),) for unit in wanted.units])), "is": ("son",)}
    unit = unit_marked(parts.numbers[0].ladder.mark)
    if parts.under_one:
        return {"many": ("qué parte de", Naming(unit, many=False)), "is": ("es",)}
    how = "cuántas" if is_feminine(unit) else "cuántos"
    return {"many": (how, Naming(unit)), "is": ("son",)}


def _wanted(parts: StoryQuestion, brief: ClassWords) -> dict[str, Nodes]:
    """Say which pieces, which form or which place is wanted, and from which end numbers are put in order."""
    match parts.wanted:
        case Gap(bottom=int() as bottom) as gap:
            wholes = gap.wholes if isinstance(gap.wholes, int) else 0
            return _pieces(wholes, units(Unit(Fraction(1, bottom))), brief)
        case NumberForm() as form:
            return {"form": (FORMS[form],)}
        case Unit() as unit if unit == ONE:
            near = ("a la", "entera más cercana") if brief.feminine else ("al", "entero más cercano")
            return {"nearest": (near[0], Naming(a_whole(brief), many=False), near[1])}
        case Unit() as unit:
            return {"nearest": wording_parts(ToNearest(unit))}
        case Gap() | Ladder() | None:
            return {"ends": wording_parts(FromEnd(parts.falling))}
        case _:
            assert_never(parts.wanted)


def _pieces(wholes: int, pieces: Naming, brief: ClassWords) -> dict[str, Nodes]:
    """Name the pieces that are asked for, and the wholes that stand beside them."""
    if not wholes:
        return {"pieces": (pieces,), "kept": ("en", pieces)}
    uncut = ("completa", "completas") if brief.feminine else ("completo", "completos")
    one, many = f"{brief.whole} {uncut[0]}", f"{brief.wholes} {uncut[1]}"
    kept = Counted(wholes, Thing(one, many, feminine=brief.feminine))
    return {"pieces": (pieces,), "kept": ("como", kept, "y unos", pieces)}


def _stuff(parts: StoryQuestion, filled: Mapping[str, Nodes], *, own: bool) -> dict[str, Nodes]:
    """Say what the amounts are amounts of, and what is done with it."""
    if parts.kind is not Kind.NUMBER:
        return (OWN_STUFF if own else STUFF)[parts.kind]
    return {"of": (), "much": filled["many"], "takes": ("lleva",), "uses": filled["does"]}


def _factors(parts: StoryQuestion, brief: ClassWords) -> dict[str, Nodes]:
    """Write the factors of a product without a unit, and count things with the numbers that count."""
    one = Naming(a_whole(brief), many=False)
    holes: dict[str, Nodes] = {
        "wholes": (Naming(a_whole(brief)),),
        "how": ("cuántas" if brief.feminine else "cuántos",),
        "one": ("una" if brief.feminine else "un", one),
        "of_brief": ("de la" if brief.feminine else "del", one),
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
