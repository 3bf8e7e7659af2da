"""How likely each kind of reply is, for a pupil who means to answer rightly or as a pattern does.

Chances are whole numbers per million, so that everything after them is exact. What they rest on is our own
assumption, where no source is named: no published count was found of how often slips of each kind occur in
mixed numbers at this age.
"""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from onewhole.marking.expected import Expected
from onewhole.marking.reply import OTHER, RIGHT, Reply, reply
from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import NotOnLadderError, Quantity, usual
from onewhole.statements.statement import Relation

MILLION = 1_000_000

#: Meant to be right, or as this pattern answers.
Intention = str
MEANS_RIGHT: Intention = "right"

#: Per million: how often an answer as a pattern means it is written in another form of that amount.
IN_ANOTHER_FORM = 50_000
#: Per million: how often another written form of a slip's answer, or the first way, is taken; the first way rest.
OTHERWISE_WRITTEN = 300_000


@dataclass(frozen=True, slots=True)
class Slips:
    """How a slip falls out, per million: beside what was meant, an idea used once and dropped, anything else.

    That many wrong rules are used once and never again: Tatsuoka, ed. (1984), ED 257 665 (abstract).
    """

    beside: int
    once: int
    other: int

    def __post_init__(self) -> None:
        """Refuse shares that do not make a whole."""
        if self.beside + self.once + self.other != MILLION:
            msg = "the shares of slips add up to a million"
            raise ValueError(msg)


#: A careful pupil's slips are mostly one piece or one whole; a scattered pupil tries one idea after another.
CARELESS = Slips(beside=550_000, once=250_000, other=200_000)
SCATTERED = Slips(beside=150_000, once=550_000, other=300_000)


@dataclass(frozen=True, slots=True)
class Chances:
    """One problem: for every intention, where its answers fall when nothing slips and when something does.

    ``meant`` and ``beside`` go from intention to chances by kind of reply; ``once`` is an idea used once.
    All rows add up to a million but for rounding. ``shows`` are the patterns that can show here.
    """

    shows: frozenset[str]
    meant: Mapping[Intention, Mapping[Reply, int]]
    beside: Mapping[Intention, Mapping[Reply, int]]
    once: Mapping[Reply, int]

    def of(self, given: Reply, intention: Intention, slip: int, slips: Slips) -> int:
        """Return the chance per million of a reply; ``slip`` is how many answers in a million slip.

        No reply is impossible: a pupil may write anything.
        """
        kept = (MILLION - slip) * self.meant[intention].get(given, 0)
        fallen = (
            slips.beside * self.beside[intention].get(given, 0)
            + slips.once * self.once.get(given, 0)
            + slips.other * (MILLION if given == OTHER else 0)
        )
        return max(1, (kept + slip * fallen // MILLION) // MILLION)


def chances(asked: Expected, slips: Iterable[Slip]) -> Chances:
    """Work out the chances of one problem; ``slips`` are those of all patterns that show on it.

    >>> from onewhole.marking.expected import expect
    >>> from onewhole.misconceptions.catalogue import shows
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_answer, read_statement
    >>> asked = expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> table = chances(asked, shows(asked.problem.statement))
    >>> table.of(reply(asked, read_answer("5 1/8")), "A01", 50_000, CARELESS) > 900_000
    True
    """
    ideas = [slip for slip in slips if slip.pattern in asked.shows]
    meant: dict[Intention, dict[Reply, int]] = {MEANS_RIGHT: {RIGHT: MILLION}}
    beside = {MEANS_RIGHT: _beside(asked, asked.right)}
    for slip in ideas:
        meant[slip.pattern] = _meant(asked, slip)
        beside[slip.pattern] = _beside(asked, slip.wrote)
    once: Counter[Reply] = Counter()
    steady = [slip for slip in ideas if by_id(slip.pattern).family.value != "fact slip"]
    for slip in steady:
        once.update({given: share // len(steady) for given, share in meant[slip.pattern].items()})
    return Chances(asked.shows, meant, beside, dict(once) or {OTHER: MILLION})


def _meant(asked: Expected, slip: Slip) -> dict[Reply, int]:
    """Share out a million among the ways to write what a pattern gives."""
    ways = [reply(asked, outcome) for outcome in slip.outcomes]
    others = ways[1:]
    found: Counter[Reply] = Counter()
    left = MILLION
    if isinstance(slip.wrote, Quantity):
        same = reply(asked, _another_form(slip.wrote))
        found[same] += IN_ANOTHER_FORM
        left -= IN_ANOTHER_FORM
    if others:
        share = left * OTHERWISE_WRITTEN // MILLION // len(others)
        for way in others:
            found[way] += share
        left -= share * len(others)
    found[ways[0]] += left
    return dict(found)


def _another_form(written: Quantity) -> Quantity:
    """Return an amount written in another way, where there is one."""
    form = usual(written.ladder, written.value)
    return form if form != written else written


def _beside(asked: Expected, meant: Outcome) -> dict[Reply, int]:
    """Share out a million among the answers one unit beside what was meant; a sign turns into another sign."""
    if isinstance(meant, Relation):
        others = [reply(asked, sign) for sign in Relation if sign is not meant]
        return _shared(others)
    if not isinstance(meant, Quantity):
        return {OTHER: MILLION}
    found: list[Reply] = []
    for step in asked.steps:
        for near in (meant.value - step, meant.value + step):
            if near >= 0 and (written := _written(meant, near)):
                found.append(reply(asked, written))
    return _shared(found) if found else {OTHER: MILLION}


def _written(like: Quantity, amount: Fraction) -> Quantity | None:
    try:
        return usual(like.ladder, amount)
    except NotOnLadderError:
        return None


def _shared(replies: list[Reply]) -> dict[Reply, int]:
    return {given: MILLION * count // len(replies) for given, count in Counter(replies).items()}
