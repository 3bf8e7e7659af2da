"""The hypotheses about one pupil: no steady idea, one pattern or two at once, or an unlisted idea."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from enum import Enum, IntEnum
from itertools import combinations

from msgspec import Struct
from msgspec.structs import replace

from onewhole.marking.diagnosis.unlisted import FEWEST, ActsOn, seen_on, where
from onewhole.marking.reading.expected import Expected, is_fact_slip
from onewhole.number.quantity import Quantity
from onewhole.problems.needs import Needs, Operation
from onewhole.statements.expression import Quotient, Times
from onewhole.statements.statement import Question, Statement

#: More than two patterns at once are not considered: a page is too short to identify them.
MOST = 2


class Reliability(Enum):
    """How reliably a pupil without a steady pattern works; errors are slips or rules used only once."""

    SOUND = "sound"
    SHAKY = "shaky"
    SCATTERED = "scattered"


class Done(IntEnum):
    """What is done where a pattern shows; the first that holds. How many have an idea was counted in two."""

    TAKING = 0
    ADDING_OR_TIMES = 1
    OTHER = 2


class Hypothesis(Struct, frozen=True):
    """A reliability alone, or a steady idea with sound reliability: one or two patterns, or one not listed.

    If both patterns predict an answer, the first wins: the one for the narrower kind of problem. ``done``
    says what is done where they show: how many pupils have one depends on it. ``unlisted`` says where an idea
    acts that no pattern describes; it is then the only idea. A pattern may also be followed ``only`` on some
    sort of problem, and an idea that is not listed may there write what a pattern does (``like``): of a pupil
    who adds the pieces wherever a whole has to be opened, and nowhere else, nobody can say whether that is
    the pattern or an idea beside it. Or it is ``akin`` to a pattern: wherever that one shows, it writes now
    the same, now something close by (:data:`~.chances.AKIN_WRITES`).

    >>> Hypothesis(Reliability.SOUND, ("A20", "A01")).acting({"A01", "A20"})
    'A20'
    """

    reliability: Reliability
    patterns: tuple[str, ...] = ()
    done: Done = Done.TAKING
    unlisted: ActsOn | None = None
    only: ActsOn | None = None
    like: str = ""
    akin: str = ""

    def __post_init__(self) -> None:
        """Refuse more than two patterns, an idea beside another, and one on any but a sound reliability."""
        both = bool(self.patterns) and self.unlisted is not None
        both = both or (bool(self.akin) and (self.unlisted is None or bool(self.like)))
        if len(self.patterns) > MOST or both or (self.steady and self.reliability is not Reliability.SOUND):
            msg = "a hypothesis is a reliability, or one or two patterns or an unlisted idea on a sound one"
            raise ValueError(msg)

    @property
    def steady(self) -> bool:
        """Say whether a steady idea is supposed, listed or not."""
        return bool(self.patterns) or self.unlisted is not None

    @property
    def ids(self) -> tuple[str, ...]:
        """Return the patterns in the order of their ids."""
        in_order = len(self.patterns) < MOST or self.patterns[0] < self.patterns[-1]
        return self.patterns if in_order else self.patterns[::-1]

    def acting(self, shows: Collection[str]) -> str | None:
        """Return the pattern that predicts the answer where these show; None for the right answer."""
        return next((key for key in (*self.patterns, self.like) if key in shows), None)


NO_PATTERN = tuple(Hypothesis(reliability) for reliability in Reliability)


def hypotheses(asked: Sequence[Expected]) -> tuple[Hypothesis, ...]:
    """Return every hypothesis about which the answers to these problems give information.

    Patterns are those that can show on at least one problem, fact slips left out. Two of them form a pair
    when it is clear which one predicts: they show on different kinds of problem (a sum and a difference, with
    and without regrouping, a whole number first), or the kinds of one lie within those of the other, which
    then keeps the rest. Two that show on the same kinds cannot both predict and form no pair. Source: our own
    rule.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> page = [expect(Problem("1", read_statement(one), one)) for one in ("9 5/8 - 4 6/8", "6 7/8 - 3 2/8")]
    >>> found = [one.patterns for one in hypotheses(page)]
    >>> ("A01", "A10") in found, ("A01", "A02") in found
    (True, False)
    """
    kinds = _kinds(asked)
    done = {key: _done([one for one in asked if key in one.shows]) for key in kinds}
    singles = [Hypothesis(Reliability.SOUND, (key,), done[key]) for key in kinds]
    cut = [key for key in kinds if _cut(asked, key)]
    partly = [Hypothesis(Reliability.SOUND, (key,), done[key], only=ActsOn.OPENING) for key in cut]
    likes = [Hypothesis(Reliability.SOUND, unlisted=ActsOn.OPENING, like=key) for key in cut]
    pairs = [Hypothesis(Reliability.SOUND, pair, min(done[pair[0]], done[pair[1]])) for pair in _pairs(kinds)]
    unlisted = [Hypothesis(Reliability.SOUND, unlisted=one) for one in seen_on(asked)]
    akin = [
        Hypothesis(Reliability.SOUND, unlisted=ActsOn.EVERYWHERE, akin=key)
        for key in kinds
        if sum(key in one.shows for one in asked) >= FEWEST
    ]
    return (*NO_PATTERN, *singles, *pairs, *partly, *unlisted, *likes, *akin)


def _done(asked: Sequence[Expected]) -> Done:
    """Return what is done on some problems: taking away counts first, then what was counted beside it.

    Multiplying and dividing was counted in columns of whole numbers. A fraction, a decimal or a measure that
    is multiplied or divided is something else, and so are several steps and a list of factors.
    """
    if any(Operation.SUBTRACT in one.needs.operations for one in asked):
        return Done.TAKING
    if any(Operation.ADD in one.needs.operations or _in_wholes(one.problem.statement) for one in asked):
        return Done.ADDING_OR_TIMES
    return Done.OTHER


def _in_wholes(statement: Statement) -> bool:
    """Say whether two whole numbers are multiplied or divided, with no other step."""
    match statement:
        case Question(Times(Quantity() as one, Quantity() as other)):
            return one.plain and other.plain
        case Question(Quotient(Quantity() as one, Quantity() as other)):
            return one.plain and other.plain and one.value >= other.value
        case _:
            return False


def _cut(asked: Sequence[Expected], key: str) -> bool:
    """Say whether a pattern can show where a whole has to be opened and where not, twice each."""
    inside = [ActsOn.OPENING in where(one) for one in asked if key in one.shows]
    return sum(inside) >= FEWEST <= len(inside) - sum(inside)


def _kinds(asked: Sequence[Expected]) -> dict[str, frozenset[Needs]]:
    """Return the kinds of problem on which each pattern shows, in the order of the ids."""
    found: dict[str, set[Needs]] = {}
    for one in asked:
        for key in one.shows:
            found.setdefault(key, set()).add(kind_of(one.needs))
    return {key: frozenset(found[key]) for key in sorted(found) if not is_fact_slip(key)}


def kind_of(needs: Needs) -> Needs:
    """Return what problems of one kind have in common: not the denominators, nor how often is regrouped."""
    return replace(
        needs, denominators=(), regroupings=min(needs.regroupings, 1), over_one=min(needs.over_one, 1)
    )


def _pairs(kinds: Mapping[str, frozenset[Needs]]) -> Iterator[tuple[str, str]]:
    """Yield the pairs of patterns, the one for the narrower kind of problem first."""
    for first, second in combinations(kinds, 2):
        if kinds[first] < kinds[second] or not kinds[first] & kinds[second]:
            yield first, second
        elif kinds[second] < kinds[first]:
            yield second, first
