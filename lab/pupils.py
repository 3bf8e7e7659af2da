"""Invented pupils, drawn from a seed: the same seed gives the same class on every machine."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from random import Random

from lab.rates import FREQUENT, Rates, Span
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Family, Topic
from onewhole.working.quotients.remainder_shared import RemainderForm


class Only(StrEnum):
    """On which problems an idea is used, by a pupil who does not use it on others that could show it."""

    WHOLE_FIRST = "where a whole number comes first"
    PIECES_FIRST = "where the first number has pieces"
    LARGE_PIECES = "with pieces of a sixth or larger"
    SMALL_PIECES = "with pieces smaller than a sixth"


class Kind(StrEnum):
    """How a pupil works."""

    SOUND = "sound"
    SHAKY = "shaky"
    SCATTERED = "scattered"
    STEADY = "steady"
    SWITCHING = "switching"
    PAIRED = "paired"
    IN_TURN = "two ideas in turn"
    PARTLY = "on some problems only"
    OUTSIDE = "outside the catalogue"


@dataclass(frozen=True, slots=True)
class Pupil:
    """One invented pupil: what is steady, and how often things happen.

    ``ideas`` are steady patterns; where several act on one problem the first is taken, but by a pupil
    IN_TURN, who takes one or another. ``outside`` names a rule of :mod:`lab.outside` in place of ideas;
    ``only`` are the problems on which an idea is used at all, all where it is None. ``back`` is how often a
    steady idea is left for the right way, ``slip`` how often a written line has a fact one off, ``once`` how
    often an idea is tried that is dropped again, ``transposed`` how often two digits of an answer change
    places. ``remainder`` is how the class writes what is left over in dividing, None where it is kept.
    """

    code: str
    kind: Kind
    ideas: tuple[str, ...] = ()
    back: float = 0.0
    slip: float = 0.0
    once: float = 0.0
    air: float = 0.0
    copied: float = 0.0
    blank: float = 0.0
    other_form: float = 0.0
    transposed: float = 0.0
    outside: str = ""
    only: Only | None = None
    remainder: RemainderForm | None = None


def ideas_of(*topics: Topic) -> tuple[str, ...]:
    """Return the patterns of some topics that can be a steady idea: no fact slips, no mere forms."""
    return tuple(
        pattern.id
        for pattern in patterns()
        if pattern.topic in topics and pattern.family is not Family.FACT and not pattern.of_form
    )


SUBTRACTING = ideas_of(Topic.SUBTRACT_LIKE)
ADDING = ideas_of(Topic.ADD_LIKE)
COLUMNS = ideas_of(Topic.COLUMNS)
#: An idea that acts only where nothing need be opened, and so can live beside one that acts where it must.
BESIDE = ("A10", *ADDING)


def drawn(ideas: Sequence[str], chance: Random) -> str:
    """Draw an idea: the frequent ones more often (:data:`lab.rates.FREQUENT`)."""
    return chance.choices(ideas, [FREQUENT.get(key, 1) for key in ideas])[0]


def pupil(code: str, kind: Kind, rates: Rates, chance: Random, ideas: tuple[str, ...] = ()) -> Pupil:
    """Return a pupil of a kind with rates of their own."""

    def own(span: Span) -> float:
        return chance.uniform(*span)

    one = Pupil(
        code,
        kind,
        ideas,
        copied=rates.copied,
        blank=rates.blank,
        other_form=rates.other_form,
        transposed=rates.transposed,
    )
    match kind:
        case Kind.SOUND:
            return replace(one, slip=own(rates.slip))
        case Kind.SHAKY:
            return replace(one, slip=own(rates.slip_shaky), once=own(rates.once_shaky))
        case Kind.SCATTERED:
            slip, once = own(rates.slip_steady), own(rates.once_scattered)
            return replace(one, slip=slip, once=once, air=rates.out_of_the_air, blank=rates.blank_scattered)
        case Kind.SWITCHING:
            return replace(one, back=own(rates.back_often), slip=own(rates.slip_steady))
        case Kind.STEADY | Kind.PAIRED | Kind.IN_TURN | Kind.PARTLY | Kind.OUTSIDE:
            return replace(one, back=own(rates.back), slip=own(rates.slip_steady))


def school_class(rates: Rates, size: int, seed: str) -> tuple[Pupil, ...]:
    """Return an invented class; each pupil's kind is drawn by itself, so that shares vary from class to
    class.

    >>> from lab.rates import USUAL
    >>> school_class(USUAL, 3, "one") == school_class(USUAL, 3, "one")
    True
    """
    chance = Random(seed)
    return tuple(_any(f"K{number:02}", rates, chance) for number in range(1, size + 1))


def _any(code: str, rates: Rates, chance: Random) -> Pupil:
    shares = [
        rates.subtracting,
        rates.adding,
        rates.paired,
        rates.shaky,
        rates.scattered,
        rates.in_turn,
        rates.partly,
        rates.outside,
    ]
    which = chance.choices(range(len(shares) + 1), [*shares, 1 - sum(shares)])[0]
    comes_and_goes = chance.random() < rates.come_and_go
    kind = Kind.SWITCHING if comes_and_goes else Kind.STEADY
    match which:
        case 0:
            return pupil(code, kind, rates, chance, (drawn(SUBTRACTING, chance),))
        case 1:
            return pupil(code, kind, rates, chance, (drawn(ADDING, chance),))
        case 2:
            first = drawn([key for key in SUBTRACTING if key not in BESIDE], chance)
            return pupil(code, Kind.PAIRED, rates, chance, (first, drawn(BESIDE, chance)))
        case 3:
            return pupil(code, Kind.SHAKY, rates, chance)
        case 4:
            return pupil(code, Kind.SCATTERED, rates, chance)
        case 5:
            return pupil(code, Kind.IN_TURN, rates, chance, _two_of_a_kind(chance))
        case 6:
            partly = pupil(code, Kind.PARTLY, rates, chance, (drawn(SUBTRACTING, chance),))
            return replace(partly, only=chance.choice(list(Only)))
        case 7:
            return replace(pupil(code, Kind.OUTSIDE, rates, chance), outside=chance.choice(rates.rules))
        case _:
            return pupil(code, Kind.SOUND, rates, chance)


def topic_class(rates: Rates, ideas: Sequence[str], size: int, seed: str) -> tuple[Pupil, ...]:
    """Return a class whose steady pupils hold one idea of a topic each, every idea as likely as another.

    >>> from lab.rates import USUAL
    >>> {one.ideas for one in topic_class(USUAL, ["H01"], 40, "one")} == {(), ("H01",)}
    True
    """
    chance = Random(seed)
    return tuple(_of_topic(f"K{number:02}", rates, ideas, chance) for number in range(1, size + 1))


def _of_topic(code: str, rates: Rates, ideas: Sequence[str], chance: Random) -> Pupil:
    shares = [rates.subtracting + rates.adding, rates.shaky, rates.scattered]
    which = chance.choices(range(len(shares) + 1), [*shares, 1 - sum(shares)])[0]
    kind = Kind.SWITCHING if chance.random() < rates.come_and_go else Kind.STEADY
    kinds = (kind, Kind.SHAKY, Kind.SCATTERED, Kind.SOUND)
    return pupil(code, kinds[which], rates, chance, () if which else (chance.choice(ideas),))


def _two_of_a_kind(chance: Random) -> tuple[str, str]:
    """Draw two ideas for problems in which a whole must be opened."""
    first, second = chance.sample([f"A{number:02}" for number in range(1, 10)], 2)
    return first, second


def steady_pupils(
    rates: Rates, ideas: Sequence[str], size: int, seed: str, kind: Kind = Kind.STEADY
) -> tuple[Pupil, ...]:
    """Return pupils with one steady idea each, every idea equally often (as near as can be)."""
    chance = Random(seed)
    return tuple(pupil(f"S{at}", kind, rates, chance, (ideas[at % len(ideas)],)) for at in range(size))
