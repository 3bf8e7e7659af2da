"""Pages of the other topics, the ideas that act on them, and invented classes that hold those ideas."""

from collections.abc import Callable, Collection, Mapping, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, partial
from random import Random

from lab.measures import (
    FAIR,
    calibration_error,
    ideas_said,
    named_first,
    other_named,
    share,
    wrongly_given,
)
from lab.multiplied_and_divided import (
    divided_fraction,
    divided_short,
    divided_units,
    divided_whole,
    fractions_times,
    listed,
    steps,
    times_fraction,
    times_whole,
)
from lab.nights import CLASS
from lab.pages import LOOKED_AT, built_of
from lab.pupils import Kind, ideas_of, topic_class
from lab.rates import USUAL
from lab.table import Part, held, percent
from lab.told import stories, stories_and_numbers
from lab.trials import Trial, problems, trials
from onewhole.desk.page.compose import compose
from onewhole.findings.wished_skill import WishedSkill
from onewhole.misconceptions.pattern import Topic
from onewhole.notations.text import text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import usual
from onewhole.problems.problem import Problem
from onewhole.sheets.wishes import Wishes
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.working.form import FormWanted
from onewhole.working.quotients.remainder_shared import RemainderForm

TWELVE, TWENTY, PAGES = 12, 20, 4
FIRST, WRONGLY, ECE = 0.95, 0.01, 0.08
#: Smaller units in a larger one, by the two marks.
MEASURES = {("ft", "in"): 12, ("lb", "oz"): 16, ("h", "min"): 60}
#: How pupils write what is left over who may choose: as a remainder, as a fraction, as a decimal.
OWN_FORMS = (None, RemainderForm.FRACTION, RemainderForm.DECIMAL)
_DENOMINATORS = (2, 3, 4, 5, 6, 8)
#: The same for numbers written in other units, metric ones among them.
CONVERTED = MEASURES | {
    ("yd", "ft"): 3,
    ("gal", "qt"): 4,
    ("wk", "d"): 7,
    ("m", "cm"): 100,
    ("kg", "g"): 1000,
}
#: Places to round to, and how many numbers that are rounded have a point.
_LARGE_PLACES, _SMALL_PLACES = ("ten", "hundred", "thousand", "ten thousand"), ("tenth", "whole number")
_POINTED = 0.2


def _whole_sum(chance: Random) -> str:
    first = chance.choice((chance.randrange(100, 1000), chance.randrange(1000, 10000)))
    return f"{first} + {chance.choice((chance.randrange(2, 10), chance.randrange(10, 1000)))}"


def _decimal_sum(chance: Random) -> str:
    return f"{_decimal(chance)} + {_decimal(chance)}" if chance.random() < 0.8 else _with_whole(chance)


def _with_whole(chance: Random) -> str:
    return f"{chance.randrange(2, 10)} + {_decimal(chance)}"


def _decimal(chance: Random) -> str:
    places = chance.choice((1, 1, 2))
    return f"{chance.randrange(10)}.{chance.randrange(1, 10**places):0{places}}"


def _measure_sum(chance: Random) -> str:
    (large, small), ratio = chance.choice(list(MEASURES.items()))
    first, second = (f"{chance.randrange(1, 6)} {large} {chance.randrange(1, ratio)} {small}" for _ in "ab")
    return f"{first} + {second}"


def _fractions_compared(chance: Random) -> str:
    wholes = chance.choice(((0, 0), (1, 1), (2, 2), (chance.randrange(1, 6), chance.randrange(1, 6))))
    return " ? ".join(_mixed(chance, whole) for whole in wholes)


def _fractions_in_order(chance: Random) -> str:
    same = chance.randrange(1, 6)
    wholes = chance.choice(((0, 0, 0), (same,) * 3, tuple(chance.randrange(1, 6) for _ in "abc")))
    parts: dict[Fraction, str] = {}
    while len(parts) < len(wholes):
        part = _mixed(chance, wholes[len(parts)])
        parts.setdefault(read_quantity(part).value, part)
    return f"order {', '.join(parts.values())}"


def _mixed(chance: Random, whole: int) -> str:
    bottom = chance.choice(_DENOMINATORS)
    if not whole and chance.random() < 0.2:
        return chance.choice((f"{chance.randrange(bottom + 1, 3 * bottom)}/{bottom}", "2"))
    return f"{whole or ''} {chance.randrange(1, bottom)}/{bottom}".strip()


def _decimals_compared(chance: Random) -> str:
    ones = chance.randrange(5)
    other = ones if chance.random() < 0.7 else chance.randrange(5)
    return f"{ones}.{_after(chance)} ? {other}.{_after(chance)}"


def _after(chance: Random) -> str:
    return "".join(chance.choice("0012345678") for _ in range(chance.choice((1, 2, 2, 3))))


def _rounded(chance: Random) -> str:
    if chance.random() < _POINTED:
        return (
            f"round {_decimal(chance)}{chance.randrange(1, 10)} to the nearest {chance.choice(_SMALL_PLACES)}"
        )
    digits = chance.randrange(3, 6)
    number = chance.randrange(10 ** (digits - 1), 10**digits)
    return f"round {number} to the nearest {chance.choice(_LARGE_PLACES[: digits - 1])}"


def _converted(chance: Random) -> str:
    (large, small), ratio = chance.choice(list(CONVERTED.items()))
    count, rest = chance.randrange(2, 9), chance.randrange(1, ratio)
    asked = (
        f"{count} {large} = ? {small}",
        f"{count} {large} {rest} {small} = ? {small}",
        f"{count * ratio + rest} {small} = ? {large} ? {small}",
        f"{count * ratio} {small} = ? {large}",
    )
    return chance.choice(asked)


def _line_plots(chance: Random) -> str:
    """Draw a line plot in fourths or eighths, and what is asked of it."""
    pieces, first = chance.choice((4, 8)), chance.randrange(1, 9)
    counts = [chance.randrange(1, 6) for _ in range(4)]
    values = [_in_pieces(first + at, pieces) for at in range(4)]
    marks = ", ".join(f"{value}: {count}" for value, count in zip(values, counts, strict=True))
    asked = chance.choice(
        ("total", "count", f"count above {values[1]}", f"count below {values[2]}", "spread", "most")
    )
    if asked == "most" and max(counts) == sorted(counts)[-2]:
        asked = "total"
    return f"plot {marks}; {asked}"


def _in_pieces(count: int, pieces: int) -> str:
    return text(usual(mixed(pieces), Fraction(count, pieces)))


def _clock_times(chance: Random) -> str:
    """Draw how long it is to another time of day, or what time is later or earlier."""
    start, minutes = f"{chance.randrange(1, 13)}:{_minutes(chance, 0)}", _minutes(chance, 5)
    match chance.randrange(4):
        case 0 | 1:
            return f"{start} to {chance.randrange(1, 13)}:{_minutes(chance, 0)}"
        case 2:
            return f"{start} + {chance.randrange(1, 4)} h {int(minutes)} min"
        case _:
            return f"{start} - {chance.choice(('', '1 h ', '2 h '))}{int(minutes)} min"


def _minutes(chance: Random, least: int) -> str:
    return f"{chance.randrange(least, 60, 5):02}"


#: How one problem of a page is drawn.
Draw = Callable[[Random], str | Problem]


@dataclass(frozen=True, slots=True)
class OtherTopic:
    """A topic of the table: the ideas that act on its pages, how many problems they have, and which.

    One problem of a page is drawn, or the page is composed for a skill, as `onewhole compose` does it.
    ``remainder`` is how the class writes what is left over, and what its teacher asks for; in a class of
    ``own_forms`` each third of the pupils writes it in its own way, and all are right.
    """

    ideas: tuple[str, ...]
    draw: Draw | WishedSkill
    size: int = TWELVE
    remainder: RemainderForm | None = None
    own_forms: bool = False

    @property
    def seed(self) -> str:
        """Return what its seeds begin with."""
        return self.draw.value if isinstance(self.draw, WishedSkill) else self.draw.__name__

    def page(self, size: int, seed: int) -> tuple[Problem, ...]:
        """Return a page of problems that tell apart the most ideas that are left.

        >>> len(TOPICS["adding measures"].page(3, 1))
        3
        """
        if isinstance(self.draw, WishedSkill):
            return _composed(self.draw, size, seed + 1)
        chance, draw = Random(f"{self.seed} {seed}"), self.draw
        return built_of((_asked(draw(chance)) for _ in range(LOOKED_AT // 2)), self.ideas, size)


def _asked(drawn: str | Problem) -> Problem:
    if isinstance(drawn, Problem):
        return drawn
    statement = read_statement(drawn)
    return Problem("1", statement, text(statement))


@cache
def _composed(skill: WishedSkill, size: int, seed: int) -> tuple[Problem, ...]:
    page = compose(Wishes(skill=skill, number=size, seed=seed)).sheet
    return problems(tuple(problem.typed for problem in page.problems))


def _of(letters: str, *topics: Topic) -> tuple[str, ...]:
    return tuple(key for key in ideas_of(*topics) if key[0] in letters)


_FRACTIONS = _of("C", Topic.EQUAL_AND_COMPARE)[7:]
_FRACTIONS_COMPARED = (
    *_FRACTIONS,
    "N01",
    "N02",
    "N03",
    "N04",
    "N05",
    "N06",
    "N15",
)
#: An idea that calls numbers equal makes no order, and one about the sign has none to turn.
_FRACTIONS_ORDERED = tuple(key for key in _FRACTIONS_COMPARED if key not in {"N01", "N15"})
_DECIMALS_COMPARED = ("F06", "F07", "N08", "N09", "N10", "N11", "N12", "N13", "N15")
_WHOLES_DIVIDED = _of("L", Topic.QUOTIENTS)
#: Ideas about what to do in a story, and some that act on numbers alone too.
_IN_STORIES = ideas_of(Topic.STORIES)
_BESIDE_STORIES = ("E01", "E28", "H01", "K15", "L06", "M17", "W03")
#: Ideas about hours and minutes.
_ON_THE_CLOCK = ("G01", "G02", "G03", "G04", "G05", "G06", "J01", "J04", "J05")

TOPICS: Mapping[str, OtherTopic] = {
    "adding whole numbers": OtherTopic(_of("H", Topic.SUM_COLUMNS), _whole_sum),
    "adding decimals": OtherTopic(("F10", "F11", *_of("I", Topic.DECIMALS)), _decimal_sum),
    "adding measures": OtherTopic(_of("J", Topic.MEASURES), _measure_sum),
    "comparing fractions": OtherTopic(_FRACTIONS_COMPARED, _fractions_compared),
    "comparing fractions, composed, 20 problems": OtherTopic(
        _FRACTIONS_COMPARED, WishedSkill.COMPARE_FRACTIONS, TWENTY
    ),
    "putting three fractions in order": OtherTopic(_FRACTIONS_ORDERED, _fractions_in_order),
    "putting three fractions in order, composed, 20 problems": OtherTopic(
        _FRACTIONS_ORDERED, WishedSkill.ORDER_FRACTIONS, TWENTY
    ),
    "comparing decimals": OtherTopic(_DECIMALS_COMPARED, _decimals_compared),
    "rounding": OtherTopic(ideas_of(Topic.ROUND), _rounded),
    "writing in other units": OtherTopic(ideas_of(Topic.CONVERSIONS), _converted),
    "multiplying whole numbers": OtherTopic(_of("K", Topic.PRODUCTS), times_whole),
    "a whole number times a fraction": OtherTopic(ideas_of(Topic.TIMES), times_fraction),
    "multiplying fractions": OtherTopic(_of("M", Topic.PRODUCTS), fractions_times),
    "dividing whole numbers": OtherTopic(_WHOLES_DIVIDED, divided_whole),
    "dividing, the remainder as a fraction": OtherTopic(
        _WHOLES_DIVIDED, divided_whole, remainder=RemainderForm.FRACTION
    ),
    "dividing, the remainder as a decimal": OtherTopic(
        _WHOLES_DIVIDED, divided_short, remainder=RemainderForm.DECIMAL
    ),
    "dividing, the remainder in forms of their own": OtherTopic(
        _WHOLES_DIVIDED, divided_short, own_forms=True
    ),
    "what a remainder means": OtherTopic(ideas_of(Topic.REMAINDERS), WishedSkill.REMAINDERS, TWENTY),
    "dividing with fractions": OtherTopic(("M14", "M15", "M17", "M18"), divided_fraction),
    "sharing mixed numbers, decimals and measures": OtherTopic(("V08", "V09", "V10"), divided_units),
    "several steps": OtherTopic(ideas_of(Topic.STEPS), steps),
    "factors and multiples": OtherTopic(ideas_of(Topic.LISTS), listed),
    "prime or composite, a multiple or not": OtherTopic(ideas_of(Topic.PRIMES), WishedSkill.PRIMES, TWENTY),
    "clock times": OtherTopic(_ON_THE_CLOCK, _clock_times),
    "line plots": OtherTopic(ideas_of(Topic.PLOTS), _line_plots, TWENTY),
    "stories": OtherTopic(_IN_STORIES, stories, TWENTY),
    "stories, and problems in numbers alone": OtherTopic(
        (*_IN_STORIES, *_BESIDE_STORIES), stories_and_numbers, TWENTY
    ),
    "clock times, composed": OtherTopic(_ON_THE_CLOCK, WishedSkill.CLOCK),
}


def class_of(topic: OtherTopic, which: int) -> tuple[Trial, ...]:
    """Let one invented class write a page of a topic, and diagnose it."""
    seed = f"{topic.seed} {which}"
    page = topic.page(topic.size, which % PAGES)
    forms = OWN_FORMS if topic.own_forms else (topic.remainder,)
    drawn = topic_class(USUAL, topic.ideas, CLASS, seed)
    pupils = [replace(one, remainder=forms[at % len(forms)]) for at, one in enumerate(drawn)]
    return trials(pupils, page, seed, FormWanted(remainder=topic.remainder))


def _error(seen: Sequence[Trial]) -> float:
    return calibration_error(ideas_said(seen))


def other_topics(classes: int, pool: Executor | None, only: Collection[str] = TOPICS) -> Part:
    """Measure classes on pages of the other topics, or of those named, and hold three goals against each."""
    rows = []
    for words, topic in TOPICS.items():
        if words not in only:
            continue
        found = (pool.map if pool else map)(partial(class_of, topic), range(classes))
        seen = [one for some in found for one in some]
        fair = [one for one in seen if one.truth and one.acts >= FAIR]
        steady, going = ([one for one in fair if one.kind is kind] for kind in (Kind.STEADY, Kind.SWITCHING))
        first, wrongly, error = share(steady, named_first), wrongly_given(seen), _error(seen)
        rows.append(
            (
                words,
                str(len(topic.ideas)),
                str(len(steady)),
                percent(first),
                held(first.value >= FIRST),
                percent(share(going, named_first)),
                percent(wrongly),
                held(wrongly.value <= WRONGLY),
                percent(other_named(seen)),
                f"{error:.3f}",
                held(error <= ECE),
            )
        )
    return Part(
        "Pages on other topics",
        "Of 12 problems but where it says 20, in classes of 25; drawn for the ideas, or composed as "
        "by `onewhole compose`. First: the true idea is said first, or as one that the page cannot tell from "
        "it, where it can show on three problems or more; of steady pupils, and of those whose idea comes "
        "and goes. Wrongly: pupils without a steady idea who are said to fit one.",
        (
            "topic",
            "ideas",
            "steady",
            "first",
            "95 % at least",
            "comes and goes: first",
            "wrongly",
            "1 % at most",
            "another",
            "calibration of ideas",
            "0.08 at most",
        ),
        tuple(rows),
    )
