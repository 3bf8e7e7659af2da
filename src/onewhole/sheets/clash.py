"""Wishes that cannot be met together: which of them clash, and the nearest that can be met."""

from collections.abc import Callable, Iterable, Iterator
from enum import Enum, auto
from fractions import Fraction
from typing import assert_never

from msgspec.structs import replace

from onewhole.sheets.header import MOST_MINUTES
from onewhole.sheets.wishes import MOST_WHOLES, USUAL_DENOMINATORS, WishError, Wishes
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

Fits = Callable[[Wishes], bool]

PAIR = 2


class Wish(Enum):
    """What a teacher may wish of a page; those that are dropped first are the least likely to be named."""

    AVOID = auto()
    STRATEGY = auto()
    DENOMINATORS = auto()
    LARGEST = auto()
    REVIEW = auto()
    REGROUPING = auto()
    MINUTES = auto()
    NUMBER = auto()


class ClashError(WishError):
    """Wishes clash: ``names`` are those of a set that cannot be met together, and can when one is dropped.

    ``nearest`` are wishes that can be met, each with one of those changed as little as can be.
    """

    names: tuple[Wish, ...]
    nearest: tuple[Wishes, ...]

    def __init__(
        self, names: Iterable[Wish], said: Iterable[str], nearest: Iterable[tuple[str, Wishes]]
    ) -> None:
        found, words = tuple(nearest), tuple(said)
        how = {1: "", PAIR: " both"}.get(len(words), " all")
        listed = " and ".join(filter(None, (", ".join(words[:-1]), words[-1])))
        offers = ", or ".join(offer for offer, _ in found)
        super().__init__(
            f"{listed} cannot{how} be met",
            remedy=f"The nearest that can: {offers}." if offers else "Change more than one of these wishes.",
        )
        self.names = tuple(names)
        self.nearest = tuple(wishes for _, wishes in found)


def clash(wishes: Wishes, fits: Fits) -> ClashError:
    """Return what clashes in wishes that do not fit (``fits`` says so of any wishes, without habits).

    Each wish in turn is dropped if the others clash without it too; what stays is irreducible. For each wish
    that stays, the nearest change that fits is looked for with all other wishes kept.
    """
    kept = wishes
    clashing: list[Wish] = []
    for name in Wish:
        without = _dropped(name, kept)
        if without != kept and not fits(without):
            kept = without
        elif without != kept:
            clashing.append(name)
    nearest = (
        next(((_say(name, near), near) for near in _nearer(name, wishes) if fits(near)), None)
        for name in clashing
    )
    found = [one for one in nearest if one is not None]
    return ClashError(clashing, [_say(name, wishes) for name in clashing], found)


def _dropped(name: Wish, wishes: Wishes) -> Wishes:
    """Return wishes without one of them."""
    match name:
        case Wish.AVOID:
            return replace(wishes, avoid=())
        case Wish.STRATEGY:
            return replace(wishes, strategy=REGROUP_FIRST)
        case Wish.DENOMINATORS:
            return replace(wishes, denominators=tuple({*wishes.denominators, *USUAL_DENOMINATORS}))
        case Wish.LARGEST:
            return replace(wishes, largest=max(wishes.largest, MOST_WHOLES))
        case Wish.REVIEW:
            return replace(wishes, review=(), back=())
        case Wish.REGROUPING:
            return replace(wishes, regrouping=None)
        case Wish.MINUTES:
            return replace(wishes, minutes=None)
        case Wish.NUMBER:
            return replace(wishes, number=wishes.set_aside + 1)
        case _:
            assert_never(name)


def _say(name: Wish, wishes: Wishes) -> str:
    match name:
        case Wish.AVOID:
            return (
                "none of the last nights' problems" if wishes.avoid else "problems of the last nights again"
            )
        case Wish.STRATEGY:
            return f"the strategy {wishes.strategy.typed}"
        case Wish.DENOMINATORS:
            many = "s" * (len(wishes.denominators) > 1)
            return f"the denominator{many} {', '.join(map(str, wishes.denominators))}"
        case Wish.LARGEST:
            return f"wholes up to {wishes.largest}"
        case Wish.REVIEW:
            return _said_review(wishes)
        case Wish.REGROUPING:
            return f"{wishes.kept_regrouping} problem{'s' * (wishes.kept_regrouping != 1)} with regrouping"
        case Wish.MINUTES:
            return f"{wishes.minutes} minute{'s' * (wishes.minutes != 1)}"
        case Wish.NUMBER:
            return f"{wishes.number} problem{'s' * (wishes.number != 1)}"
        case _:
            assert_never(name)


def _fewer(wishes: Wishes) -> Iterator[Wishes]:
    yield from (replace(wishes, number=number) for number in range(wishes.number - 1, wishes.set_aside, -1))


def _longer(wishes: Wishes) -> Iterator[Wishes]:
    most = (wishes.minutes or MOST_MINUTES) + 2 * wishes.number
    yield from (
        replace(wishes, minutes=n) for n in range((wishes.minutes or 0) + 1, min(most, MOST_MINUTES) + 1)
    )


def _other_shares(wishes: Wishes) -> Iterator[Wishes]:
    now = wishes.kept_regrouping or 0
    counts = sorted(range(wishes.number + 1), key=lambda count: (abs(count - now), count))
    for count in counts[1:]:
        near = replace(wishes, regrouping=Fraction(count, wishes.number))
        if near.kept_regrouping == count:
            yield near


def _more_denominators(wishes: Wishes) -> Iterator[Wishes]:
    own = wishes.denominators
    others = [one for one in USUAL_DENOMINATORS if one not in own]
    others.sort(key=lambda one: min(abs(one - mine) for mine in own))
    for count in range(1, len(others) + 1):
        yield replace(wishes, denominators=(*own, *others[:count]))


def _larger(wishes: Wishes) -> Iterator[Wishes]:
    yield from (replace(wishes, largest=n) for n in range(wishes.largest + 1, MOST_WHOLES + 1))


def _said_review(wishes: Wishes) -> str:
    review = f"review of {' and '.join(wishes.review)}" if wishes.review else ""
    back = f"{' and '.join(wishes.back)} once more" if wishes.back else ""
    return " and ".join(filter(None, (review, back))) or "no review"


def _less_review(wishes: Wishes) -> Iterator[Wishes]:
    yield from (replace(wishes, back=wishes.back[:n]) for n in reversed(range(len(wishes.back))))
    none = replace(wishes, back=())
    yield from (replace(none, review=none.review[:n]) for n in reversed(range(len(none.review))))


def _nearer(name: Wish, wishes: Wishes) -> Iterable[Wishes]:
    """Return wishes with one of them changed, the smallest change first."""
    match name:
        case Wish.AVOID | Wish.STRATEGY:
            return [_dropped(name, wishes)]
        case Wish.DENOMINATORS:
            return _more_denominators(wishes)
        case Wish.LARGEST:
            return _larger(wishes)
        case Wish.REVIEW:
            return _less_review(wishes)
        case Wish.REGROUPING:
            return _other_shares(wishes)
        case Wish.MINUTES:
            return _longer(wishes)
        case Wish.NUMBER:
            return _fewer(wishes)
        case _:
            assert_never(name)
