"""What a teacher wishes for when a page is composed."""

from collections.abc import Iterable, Mapping
from enum import StrEnum
from fractions import Fraction
from functools import lru_cache

from msgspec import Struct
from msgspec.structs import force_setattr

from onewhole.errors import InputError
from onewhole.findings.standard import GRADE_4
from onewhole.findings.wished_skill import WITHOUT_REGROUPING, WishedSkill
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.sheets.header import MOST_MINUTES
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategy import Strategy

MOST_PROBLEMS = 40
MOST_WHOLES = 12
#: Grade 4 goes on to 1,000,000 (CCSSM 2010, footnote to grade 4 base ten).
LEAST_DIGITS, MOST_DIGITS = 2, 6
#: Hundredths are met beside tenths (4.NF.C) and are composed only when they are wished for.
USUAL_DENOMINATORS = tuple(sorted(GRADE_4 - {100}))
PATTERNS_AT_ONCE = 2
#: Open questions beyond the weightiest are left out, so that a recipe stays a line.
MOST_QUESTIONS = 40
PER_QUESTION = 1000


class WishError(InputError):
    """A wish cannot be understood, or cannot be met."""


class Review(StrEnum):
    """An earlier skill to review: one problem each."""

    FRACTIONS = "fractions"
    TENS = "tens"
    OPENED = "opened wholes"


class OpenQuestion(Struct, frozen=True):
    """Two sets of patterns between which answers so far leave doubt, and how much that matters.

    An empty set is "no steady pattern". ``weight`` counts thousandths of all the doubt there is.

    >>> OpenQuestion(("A02",), ("A01",), 500).first
    ('A01',)
    """

    first: tuple[str, ...]
    second: tuple[str, ...]
    weight: int

    def __post_init__(self) -> None:
        """Refuse unknown patterns, more than two at once, one set twice and no weight; put both in order."""
        sets = sorted(tuple(sorted({by_id(key).id for key in side})) for side in (self.first, self.second))
        if sets[0] == sets[1] or max(map(len, sets)) > PATTERNS_AT_ONCE or self.weight < 1:
            msg = f"“{' '.join(self.first)}” or “{' '.join(self.second)}” is no open question"
            raise WishError(
                msg, remedy="Ask between two different sets of at most two patterns, weight 1 or more."
            )
        force_setattr(self, "first", sets[0])
        force_setattr(self, "second", sets[1])


def open_questions(
    doubt: Mapping[tuple[frozenset[str], frozenset[str]], Fraction],
) -> tuple[OpenQuestion, ...]:
    """Return the open questions of a class, the weightiest 40, from any measure of doubt between two sets.

    Weights become thousandths of all the doubt; what weighs less than one is left out.

    >>> doubt = {
    ...     (frozenset({"A01"}), frozenset({"A02"})): Fraction(1, 4),
    ...     (frozenset(), frozenset({"A01"})): 0,
    ... }
    >>> open_questions(doubt)
    (OpenQuestion(first=('A01',), second=('A02',), weight=1000),)
    """
    weighed: dict[tuple[tuple[str, ...], tuple[str, ...]], Fraction] = {}
    for pair, amount in doubt.items():
        first, second = sorted(tuple(sorted(side)) for side in pair)
        if first != second:
            weighed[first, second] = weighed.get((first, second), Fraction(0)) + amount
    whole = sum(weighed.values())
    found = [(pair, int(amount * PER_QUESTION / whole)) for pair, amount in weighed.items() if whole]
    found.sort(key=lambda one: (-one[1], one[0]))
    return tuple(OpenQuestion(*pair, weight) for pair, weight in found[:MOST_QUESTIONS] if weight)


class Wishes(Struct, frozen=True):
    """What a page is to be like.

    ``number`` counts all problems of the page and ``regrouping`` is the share of them that needs regrouping
    (None: as it comes). ``denominators`` are those that may occur, ``largest`` the largest number of wholes
    in a number, ``digits`` how many the largest whole number has (None: as is usual for the skill);
    ``doubles`` lets both numbers of a problem be the same. Each problem suits ``strategy``. ``minutes`` is a
    budget (None: none). ``avoid`` are problems of the last nights, as typed: none comes again. ``review`` are
    earlier skills, one problem each; ``back`` are problems that come back just as they are typed. ``faded``
    asks for a worked example with its last line left out. ``questions`` are the class's open questions.
    ``told`` counts the problems that are told as stories; those that come back are not. Another ``seed``
    gives another page. Raises WishError in plain words.

    >>> Wishes(number=8).kept_regrouping
    5
    """

    skill: WishedSkill = WishedSkill.SUBTRACT
    number: int = 12
    denominators: tuple[int, ...] = USUAL_DENOMINATORS
    largest: int = 9
    regrouping: Fraction | None = Fraction(2, 3)
    strategy: Strategy = REGROUP_FIRST
    minutes: int | None = None
    avoid: tuple[str, ...] = ()
    review: tuple[Review, ...] = ()
    back: tuple[str, ...] = ()
    faded: bool = False
    questions: tuple[OpenQuestion, ...] = ()
    seed: int = 1
    digits: int | None = None
    doubles: bool = False
    told: int = 0

    def __post_init__(self) -> None:
        """Refuse each wish that no page can meet; put sets in order."""
        _between("number of problems", self.number, 1, MOST_PROBLEMS)
        _between("number of problems told as stories", self.told, 0, self.number - len(self.back))
        _between("largest whole", self.largest, 1, MOST_WHOLES)
        _between("seed", self.seed, 0, 999_999_999)
        if self.digits is not None:
            _between("number of digits", self.digits, LEAST_DIGITS, MOST_DIGITS)
        if self.minutes is not None:
            _between("minutes", self.minutes, 1, MOST_MINUTES)
        if self.regrouping is not None and not 0 <= self.regrouping <= 1:
            msg = f"the share that needs regrouping is {self.regrouping}"
            raise WishError(msg, remedy="Wish for a share from 0 to 1, such as 2/3.")
        _check_denominators(self.denominators)
        if self.set_aside >= self.number:
            msg = f"{self.set_aside} review problems leave no room on a page of {self.number}"
            raise WishError(msg, remedy="Wish for more problems or for less review.")
        force_setattr(self, "denominators", tuple(sorted(set(self.denominators))))
        force_setattr(self, "back", tuple(dict.fromkeys(_plain(self.back))))
        force_setattr(self, "avoid", tuple(dict.fromkeys(_plain(self.avoid))))
        force_setattr(
            self, "questions", tuple(sorted(self.questions, key=lambda one: (one.first, one.second)))
        )

    @property
    def set_aside(self) -> int:
        """Return how many problems are not chosen for what they tell: review, and those that come back."""
        return len(self.review) + len(self.back)

    @property
    def kept_regrouping(self) -> int | None:
        """Return how many problems are to need regrouping; None when that is open.

        It is open too where the skill regroups nothing. The nearest count to the share. A page of several
        holds both kinds unless the share is 0 or 1 (K11).
        """
        if self.regrouping is None or self.skill in WITHOUT_REGROUPING:
            return None
        nearest = int(self.regrouping * self.number + Fraction(1, 2))
        return max(1, min(nearest, self.number - 1)) if 0 < self.regrouping < 1 < self.number else nearest


def _between(name: str, count: int, least: int, most: int) -> None:
    if not least <= count <= most:
        msg = f"the {name} is {count}"
        raise WishError(msg, remedy=f"Wish for a number from {least} to {most}.")


def _check_denominators(denominators: tuple[int, ...]) -> None:
    named = ", ".join(map(str, sorted(GRADE_4)))
    if odd := [one for one in denominators if one not in GRADE_4]:
        msg = f"grade 4 does not meet the denominator {odd[0]}"
        raise WishError(msg, remedy=f"Wish for some of {named}.")
    if not denominators:
        msg = "no denominator is wished for"
        raise WishError(msg, remedy=f"Wish for some of {named}.")


def _plain(avoid: Iterable[str]) -> Iterable[str]:
    return map(_written, avoid)


@lru_cache(maxsize=4096)
def _written(typed: str) -> str:
    return text(read_statement(typed))
