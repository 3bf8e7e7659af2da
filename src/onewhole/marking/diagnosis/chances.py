"""The probability of each kind of reply, for a pupil who works rightly or follows a pattern.

Chances are whole numbers per million, so that everything after them is exact. What they rest on is our own
assumption, where no source is named: no published count was found of how often slips of each kind occur in
mixed numbers at this age.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction

from msgspec import Struct, field

from onewhole.marking.diagnosis.reply import OTHER, RIGHT, Reply, ReplyKind, reply
from onewhole.marking.diagnosis.unlisted import ActsOn, where
from onewhole.marking.reading.expected import Expected, is_fact_slip
from onewhole.marking.reading.writing import alike, amount
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import NotOnLadderError, Quantity, usual
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.listing import Listing
from onewhole.statements.statement import NumberRow, Ordering, Relation

MILLION = 1_000_000
#: Chances that are multiplied are counted in these.
SQUARE = MILLION * MILLION

#: What a pupil intends: the right answer, that of a pattern (its id), or that of an idea that is not listed,
#: of which nothing is known or which is akin to a pattern (:func:`akin_to`).
Intention = str
MEANS_RIGHT: Intention = "right"
MEANS_UNLISTED: Intention = "unlisted"

#: What an idea that is not listed writes where it acts, per million: the right answer by luck, what some
#: pattern writes, as much as some pattern gives, what lies one unit beside; each shared out evenly. The rest
#: is unknown. Set on invented classes (docs/lab.md).
UNLISTED_WRITES: Mapping[ReplyKind, int] = {
    ReplyKind.RIGHT: 40_000,
    ReplyKind.WRITTEN: 300_000,
    ReplyKind.AMOUNT: 80_000,
    ReplyKind.NEAR: 230_000,
}

#: What an idea that is akin to a pattern writes where that one shows, per million: just what the pattern
#: writes, and what lies one unit beside; the rest is as of any idea that is not listed. Set on invented
#: classes (docs/lab.md).
AKIN_WRITES, AKIN_BESIDE = 250_000, 450_000
#: How often, per million, an answer as a pattern means it is written in another form of that amount,
IN_ANOTHER_FORM = 60_000
#: and in one of the other ways that the pattern itself has.
OTHERWISE_WRITTEN = 300_000
#: How often, per million, an idea that is used only once is used with a slip of its own.
ONCE_BESIDE = 80_000
#: A problem has so many wrong ways to be tried once, and more where more are listed. Where fewer are, one of
#: the others is tried as often as one of those; it writes anything. Our own assumption.
WAYS_TO_GO_WRONG = 4
#: How often, per million, the first false line of a steady pupil is that of the pattern, where lines are
#: typed.
AS_ITS_LINE = 900_000


class Slips(Struct, frozen=True):
    """What a slip gives, per million: an answer one unit off, a rule used only once, or anything else.

    That many wrong rules are used once and never again: Tatsuoka, ed. (1984), ED 257 665 (abstract). The
    figures are our own. Raises ValueError for shares that do not make a whole.
    """

    beside: int
    once: int
    other: int

    def __post_init__(self) -> None:
        """Refuse shares that do not make a whole."""
        if self.beside + self.once + self.other != MILLION:
            msg = "the shares of slips add up to a million"
            raise ValueError(msg)


#: A sound pupil's slips are nearly all one piece or one whole, a careless pupil's mostly; a scattered pupil
#: tries one idea after another. The shares are as calibrated on invented classes (docs/lab.md).
CAREFUL = Slips(beside=750_000, once=50_000, other=200_000)
CARELESS = Slips(beside=550_000, once=250_000, other=200_000)
SCATTERED = Slips(beside=100_000, once=700_000, other=200_000)


class Chances(Struct, frozen=True):
    """One problem: for every intention, the distribution of replies without and with a slip.

    ``meant`` and ``beside`` go from intention to chances by kind of reply; ``once`` is an idea used once.
    Each row adds up to a million but for rounding. ``shows`` are the patterns that can show here, ``ideas``
    those that are no slips with facts. ``where`` are the sorts of problem on which an idea that is not listed
    would act here, and ``unlisted`` the chance of a reply of each kind where it does; ``akin`` has the
    pattern to which each intention is akin. ``decided`` counts what is decided in one answer, each of which
    may be off: of numbers in order which is more of each two neighbors, else the answer alone.
    """

    shows: frozenset[str]
    ideas: frozenset[str]
    meant: Mapping[Intention, Mapping[Reply, int]]
    beside: Mapping[Intention, Mapping[Reply, int]]
    once: Mapping[Reply, int]
    where: frozenset[ActsOn] = frozenset()
    unlisted: Mapping[ReplyKind, int] = field(default_factory=dict)
    akin: Mapping[Intention, str] = field(default_factory=dict)
    decided: int = 1

    def of(self, given: Reply, intention: Intention, slip: int, slips: Slips) -> int:
        """Return the chance per million of a reply; ``slip`` is how many decisions in a million slip.

        No reply is impossible: a pupil may write anything.
        """
        if intention == MEANS_UNLISTED:
            return self.unlisted.get(given.sort, 1)
        if (pattern := self.akin.get(intention)) is not None:
            return max(1, self._akin(given, pattern))
        once, other = slip * slips.once, slip * slips.other
        own = SQUARE - once - other
        kept: int = (own - slip * slips.beside) ** self.decided // own ** (self.decided - 1)
        found = (
            kept * self._meant(given, intention)
            + (own - kept) * self.beside[intention].get(given, 0)
            + once * self._once(given)
            + other * (MILLION if given == OTHER else 0)
        )
        return max(1, found // SQUARE)

    def rests_on(self, given: Reply, intention: Intention) -> tuple[str, int, int]:
        """Return all that the chance of a reply rests on beside the reply: alike for most intentions."""
        if intention == MEANS_UNLISTED:
            return intention, 0, 0
        pattern = self.akin.get(intention)
        own = intention if pattern is None else pattern
        sort = "meant" if pattern is None else "akin"
        return sort, self._meant(given, own), self.beside[own].get(given, 0)

    def fits(self, given: Reply, intention: Intention) -> bool:
        """Say whether a reply is what an intention leads to when nothing slips."""
        if intention == MEANS_UNLISTED or intention in self.akin:
            return given != RIGHT
        return self._meant(given, intention) > 0

    @property
    def replies(self) -> tuple[Reply, ...]:
        """Return every kind of reply that has a chance of its own, typed lines left out, in a fixed order."""
        rows = (*self.meant.values(), *self.beside.values(), self.once)
        return tuple(dict.fromkeys((RIGHT, *(given for row in rows for given in row), OTHER)))

    def _meant(self, given: Reply, intention: Intention) -> int:
        if isinstance(given.key, frozenset):
            return AS_ITS_LINE if intention in given.key else 0
        return self.meant[intention].get(given, 0)

    def _akin(self, given: Reply, pattern: Intention) -> int:
        """Return the chance of a reply for an idea akin to a pattern that shows here."""
        same, near = self._meant(given, pattern), self.beside[pattern].get(given, 0)
        rest = (MILLION - AKIN_WRITES - AKIN_BESIDE) * self.unlisted.get(given.sort, 1)
        return (AKIN_WRITES * same + AKIN_BESIDE * near + rest) // MILLION

    def _once(self, given: Reply) -> int:
        if isinstance(given.key, frozenset):
            return MILLION * len(self.ideas & given.key) // max(1, len(self.ideas))
        return self.once.get(given, 0)


def akin_to(pattern: str) -> Intention:
    """Return what a pupil intends who follows an idea that is akin to a pattern.

    >>> akin_to("A02")
    'akin to A02'
    """
    return f"akin to {pattern}"


def as_line(patterns: Iterable[str]) -> Reply:
    """Return the reply of a working whose first false line is that of these patterns.

    >>> as_line(["A02"]).sort.value
    'line'
    """
    return Reply(ReplyKind.LINE, frozenset(patterns))


def chances(asked: Expected) -> Chances:
    """Work out the chances of one problem.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_answer, read_statement
    >>> asked = expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> table = chances(asked)
    >>> table.of(reply(asked, read_answer("5 1/8")), "A01", 50_000, CARELESS) > 850_000
    True
    """
    forms = _forms(asked.slips)
    meant = {MEANS_RIGHT: {RIGHT: MILLION}} | {
        slip.pattern: _meant(asked, slip, forms) for slip in asked.slips
    }
    beside = {MEANS_RIGHT: _beside(asked, asked.right)} | {
        slip.pattern: _beside(asked, slip.wrote) for slip in asked.slips
    }
    ideas = frozenset(key for key in asked.shows if not is_fact_slip(key))
    ways = max(len(ideas), WAYS_TO_GO_WRONG)
    once: Counter[Reply] = Counter()
    for key in sorted(ideas):
        for row, part in ((meant[key], MILLION - ONCE_BESIDE), (beside[key], ONCE_BESIDE)):
            for given, share in row.items():
                once[given] += share * part // (MILLION * ways)
    for given, share in _unknown(asked).items():
        once[given] += share * (ways - len(ideas)) // ways
    rows = (*meant.values(), *beside.values())
    unlisted = _unlisted({given for row in rows for given in row})
    akin = {akin_to(key): key for key in ideas}
    return Chances(
        asked.shows,
        ideas,
        meant,
        beside,
        dict(once) or {OTHER: MILLION},
        where(asked),
        unlisted,
        akin,
        _decided(asked),
    )


def _decided(asked: Expected) -> int:
    statement = asked.problem.statement
    return len(statement.parts) - 1 if isinstance(statement, Ordering) else 1


def _unlisted(replies: Iterable[Reply]) -> dict[ReplyKind, int]:
    """Return the chance of each single reply, by its kind, for an idea that is not listed."""
    counted = Counter(given.sort for given in replies)
    found = {sort: share // counted[sort] for sort, share in UNLISTED_WRITES.items() if counted[sort]}
    found[ReplyKind.OTHER] = MILLION - sum(each * counted[sort] for sort, each in found.items())
    found[ReplyKind.LINE] = found.get(ReplyKind.WRITTEN, found[ReplyKind.OTHER])
    return found


def _forms(slips: Sequence[Slip]) -> Mapping[object, tuple[Reply, ...]]:
    """Return all the ways in which the patterns write each amount, as replies."""
    found: dict[object, dict[Reply, None]] = {}
    for slip in slips:
        for outcome in slip.outcomes:
            if (worth := amount(outcome)) is not None:
                found.setdefault(worth, {})[Reply(ReplyKind.WRITTEN, alike(outcome))] = None
    return {worth: tuple(ways) for worth, ways in found.items()}


def _meant(asked: Expected, slip: Slip, forms: Mapping[object, tuple[Reply, ...]]) -> dict[Reply, int]:
    """Distribute a million among the ways to write what a pattern gives."""
    first, *others = (reply(asked, outcome) for outcome in slip.outcomes)
    found: Counter[Reply] = Counter()
    worth = amount(slip.wrote)
    if worth is not None:
        _share(
            found,
            IN_ANOTHER_FORM,
            [Reply(ReplyKind.AMOUNT, worth), *(way for way in forms[worth] if way != first)],
        )
    _share(found, OTHERWISE_WRITTEN, others)
    found[first] += MILLION - found.total()
    return dict(found)


def _share(found: Counter[Reply], share: int, ways: Sequence[Reply]) -> None:
    for way in ways:
        found[way] += share // len(ways)


def _beside(asked: Expected, meant: Outcome) -> dict[Reply, int]:
    """Distribute a million among the answers one unit off what was meant; a sign becomes another one.

    Of numbers in order two neighbors stand in each other's place.
    """
    if isinstance(meant, Relation):
        return _evenly([reply(asked, sign) for sign in Relation if sign is not meant])
    if isinstance(asked.problem.statement, FactorQuestion):
        others = (word for word in asked.problem.statement.choices if word is not meant)
        return _evenly([reply(asked, word) for word in others])
    if isinstance(meant, NumberRow) and isinstance(asked.problem.statement, Listing):
        return _evenly([reply(asked, row) for row in _one_left_out(meant)])
    if isinstance(meant, NumberRow):
        return _evenly([reply(asked, row) for row in meant.with_neighbors_changed()])
    if not isinstance(meant, Quantity):
        return {OTHER: MILLION}
    nears = [near for step in asked.steps for near in (meant.value - step, meant.value + step) if near >= 0]
    return _evenly([reply(asked, found) for near in nears if (found := _written(meant, near))])


def _one_left_out(meant: NumberRow) -> Iterator[NumberRow]:
    """Yield the lists in which one number is missing."""
    for at in range(len(meant.parts)):
        if len(meant.parts) > 1:
            yield NumberRow((*meant.parts[:at], *meant.parts[at + 1 :]))


def _written(like: Quantity, amount: Fraction) -> Quantity | None:
    try:
        return usual(like.ladder, amount)
    except NotOnLadderError:
        return None


def _unknown(asked: Expected) -> dict[Reply, int]:
    """Distribute a million among what a way that is not listed writes: anything, or any sign or word."""
    return _beside(asked, asked.right) if isinstance(asked.right, Relation | WordAnswer) else {OTHER: MILLION}


def _evenly(replies: list[Reply]) -> dict[Reply, int]:
    counted = Counter(replies or [OTHER])
    return {given: MILLION * count // counted.total() for given, count in counted.items()}
