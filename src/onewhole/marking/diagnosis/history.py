"""A pupil's own history: which ideas earlier nights have shown, and how likely each is still there tonight.

A hidden Markov model over named sets of ideas. From one night to the next a pupil keeps what is there, or it
is drawn anew from what the class shows; then tonight's answers count. Forward filtering, as in Rabiner
(1989), A tutorial on hidden Markov models, Proceedings of the IEEE 77, 257-286 (from memory). All of it is
whole numbers up to a common factor, so it is exact; only what is kept from night to night is rounded, to
millionths.
"""

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from datetime import date

from msgspec import Struct, field

from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.hypothesis import MOST, NO_PATTERN, Hypothesis
from onewhole.marking.diagnosis.prior import key_of

#: How often, per million, a steady idea is still there a day later, and a way of working without one; what is
#: not there any more is drawn anew from the class. Chosen on invented terms (lab/term.py).
IDEA_STAYS, OTHER_STAYS = 900_000, 950_000
#: A set with a smaller share, in millionths, is not kept by name.
NAMED_FROM = 1000
#: A finding is withdrawn when its ideas have less than half of the shares; our own.
GONE_BELOW = MILLION // 2

_WITHOUT = frozenset(map(key_of, NO_PATTERN))
_SOUND = key_of(NO_PATTERN[0])
#: The ideas that tonight's page cannot show.
_Hidden = tuple[str, ...]


def _check(shares: Mapping[str, int], whole: int) -> None:
    if sum(shares.values()) > whole or min(shares.values(), default=0) < 0:
        msg = "the shares of a history are parts of one whole"
        raise ValueError(msg)


class History(Struct, frozen=True):
    """What all nights up to a day have shown of one pupil.

    ``shares`` are those of named sets of ideas and of the ways of working without one, by
    :func:`~.prior.key_of`; ``whole`` is what they are shares of. What no name stands for follows the class.
    Raises ValueError for shares that are more than the whole.
    """

    on: date
    shares: Mapping[str, int] = field(default_factory=dict)
    whole: int = MILLION

    def __post_init__(self) -> None:
        """Refuse shares that cannot be."""
        _check(self.shares, self.whole)

    def rounded(self) -> "History":
        """Return the same in millionths, rounded down, with the small shares left out.

        >>> History(date(2026, 11, 24), {"A01": 2, "sound": 1}, 3).rounded().shares
        {'A01': 666666, 'sound': 333333}
        """
        shares = {key: share * MILLION // self.whole for key, share in self.shares.items()}
        return History(self.on, {key: share for key, share in sorted(shares.items()) if share >= NAMED_FROM})


class PupilNight(Struct, frozen=True):
    """What one night left of a pupil: the shares of the history after it, and what fitted.

    ``fits`` has for each pattern how many answers on differently built problems were just what it writes; 0
    stands for one that fitted on a recent night, could have shown on this one, and did not. Raises ValueError
    for shares above a million.
    """

    shares: Mapping[str, int] = field(default_factory=dict)
    fits: Mapping[str, int] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Refuse shares that cannot be."""
        _check(self.shares, MILLION)

    def held(self, patterns: Collection[str]) -> int:
        """Return the share, in millionths, of the sets that contain one of these patterns or more.

        >>> PupilNight({"A01": 300_000, "A02": 100_000, "sound": 600_000}).held(("A01", "A02"))
        400000
        """
        return sum(share for key, share in self.shares.items() if not set(patterns).isdisjoint(key.split()))

    def named(self) -> tuple[tuple[tuple[str, ...], int], ...]:
        """Return every set with its share, the largest first; a way of working without an idea is one name.

        >>> PupilNight({"A01 A10": 300_000, "sound": 600_000}).named()
        ((('sound',), 600000), (('A01', 'A10'), 300000))
        """
        rows = sorted(self.shares.items(), key=lambda row: (-row[1], row[0]))
        return tuple((tuple(key.split()), share) for key, share in rows)

    def withdraws(self, patterns: Collection[str], found: "PupilNight | None") -> bool:
        """Say whether the answers of this night withdraw what was found on an earlier one.

        They do where one of the patterns could show, less than half of the shares is left to them, and less
        than half of what they had after the night on which they were found.

        >>> night = PupilNight({"A01": 300_000, "sound": 700_000}, {"A01": 0})
        >>> night.withdraws(("A01",), PupilNight({"A01": 900_000}))
        True
        >>> night.withdraws(("A01",), PupilNight({"A01": 400_000}))
        False
        """
        least = GONE_BELOW if found is None else min(GONE_BELOW, found.held(patterns) // 2)
        return not self.fits.keys().isdisjoint(patterns) and self.held(patterns) < least


class Named(Struct, frozen=True):
    """The hypotheses of tonight's page and their names, worked out once for a class.

    ``places`` go from the name of :func:`~.prior.key_of`; ``sets`` names the ideas of each alone, on whatever
    problems they are followed. ``showing`` are the patterns that tonight can show.
    """

    hypotheses: tuple[Hypothesis, ...]
    places: Mapping[str, int]
    sets: tuple[str, ...]
    showing: frozenset[str]

    @classmethod
    def of(cls, hypotheses: Sequence[Hypothesis]) -> "Named":
        """Name hypotheses."""
        places = {key_of(one): at for at, one in enumerate(hypotheses)}
        sets = tuple(" ".join(sorted(one.patterns)) or key_of(one) for one in hypotheses)
        showing = frozenset(key for one in hypotheses for key in one.patterns)
        return cls(tuple(hypotheses), places, sets, showing)

    def together(self, hidden: "_Hidden", place: int) -> str:
        """Return the name of what is hidden and what shows together; never more than two ideas."""
        if not hidden:
            return self.sets[place]
        shown = self.hypotheses[place]
        if len(hidden) + len(shown.patterns) > MOST:
            return key_of(shown)
        return " ".join(sorted({*hidden, *shown.patterns}))


class Forecast(Struct, frozen=True):
    """One pupil before tonight's answers, in whole numbers up to a common factor.

    ``stays`` has the weight of each way in which all stays as it was: the ideas that tonight cannot show, and
    the place of the hypothesis that shows. ``anew`` has, by what tonight cannot show, the weight of all else:
    there the rest is drawn from ``base``, the prior of the class.
    """

    on: date
    named: Named
    base: tuple[int, ...]
    stays: Mapping[tuple[_Hidden, int], int]
    anew: Mapping[_Hidden, int]

    def priors(self) -> tuple[int, ...]:
        """Return the weight of every hypothesis of tonight's page before the answers."""
        whole, anew = sum(self.base), sum(self.anew.values())
        found = [anew * share for share in self.base]
        for (_, place), weight in self.stays.items():
            found[place] += weight * whole
        return tuple(found)

    def after(self, likelihoods: Sequence[int]) -> History:
        """Return the history with tonight in it; likelihoods as :func:`~.weighing.likelihoods` has them."""
        whole = sum(self.base)
        found: Counter[str] = Counter()
        for (hidden, place), weight in self.stays.items():
            found[self.named.together(hidden, place)] += weight * whole * likelihoods[place]
        for hidden, weight in self.anew.items():
            for place, (share, likely) in enumerate(zip(self.base, likelihoods, strict=True)):
                found[self.named.together(hidden, place)] += weight * share * likely
        return History(self.on, found, found.total())


def forecast(history: History, named: Named, base: Sequence[int], on: date) -> Forecast:
    """Return what is to be expected of a pupil tonight.

    ``base`` is the prior that the class gives each of tonight's hypotheses. An idea that tonight's page
    cannot show keeps its share, but for what goes from day to day.

    >>> from onewhole.marking.diagnosis.hypothesis import Reliability
    >>> ways = Named.of((*NO_PATTERN, Hypothesis(Reliability.SOUND, ("A01",))))
    >>> held = History(date(2026, 11, 24), {"A01": MILLION})
    >>> forecast(held, ways, (6, 2, 1, 1), date(2026, 11, 25)).priors()[3] * 100 // MILLION**2 > 9
    True
    """
    days = max(1, (on - history.on).days)
    idea, other = _stays(IDEA_STAYS, days), _stays(OTHER_STAYS, days)
    stays: Counter[tuple[_Hidden, int]] = Counter()
    anew: Counter[_Hidden] = Counter({(): 2 * (history.whole - sum(history.shares.values())) * MILLION**2})
    for key, share in history.shares.items():
        for hidden, shown in _seen(key, named):
            still = other if shown in _WITHOUT else idea
            for kept, held in ((hidden, idea), ((), MILLION - idea)) if hidden else (((), MILLION),):
                stays[kept, named.places[shown]] += share * held * still
                anew[kept] += share * held * (MILLION - still)
    return Forecast(on, named, tuple(base), stays, anew)


class Histories(Struct, frozen=True):
    """The histories of a class by pupil, before the night of a day; a new pupil follows the class."""

    on: date
    of: Mapping[str, History] = field(default_factory=dict)

    def forecast(self, named: Named, pupil: str, base: Sequence[int]) -> Forecast:
        """Return what is to be expected of one pupil tonight (:func:`forecast`)."""
        return forecast(self.of.get(pupil, History(self.on)), named, base, self.on)


def _seen(key: str, named: Named) -> Iterator[tuple[_Hidden, str]]:
    """Yield, twice half of the time, which ideas of a set tonight hides, and the hypothesis that shows.

    Of two ideas that both show, and of which nobody can say which is followed, one is as if hidden.
    """
    if key in named.places:
        yield from (((), key), ((), key))
        return
    ideas = key.split()
    shown = [one for one in ideas if one in named.showing]
    if len(shown) == MOST:
        first, second = shown
        yield from (((first,), second), ((second,), first))
    else:
        hidden = tuple(one for one in ideas if one not in shown)
        seen = hidden, (shown or [_SOUND])[0]
        yield from (seen, seen)


def _stays(daily: int, days: int) -> int:
    """Return how often, per million, something is still there after so many days."""
    left = MILLION
    for _ in range(days):
        left = left * daily // MILLION
    return left
