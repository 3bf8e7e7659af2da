"""Wishes that cannot be met together: which of them clash, and the nearest that can be met."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from fractions import Fraction

from onewhole.sheets.header import MOST_MINUTES
from onewhole.sheets.wishes import MOST_WHOLES, USUAL_DENOMINATORS, WishError, Wishes
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

Fits = Callable[[Wishes], bool]

PAIR = 2


class ClashError(WishError):
    """Wishes clash: ``names`` are those of a set that cannot be met together, and can when one is dropped.

    ``nearest`` are wishes that can be met, each with one of those changed as little as can be.
    """

    names: tuple[str, ...]
    nearest: tuple[Wishes, ...]

    def __init__(
        self, names: Iterable[str], said: Iterable[str], nearest: Iterable[tuple[str, Wishes]]
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
    clashing: list[str] = []
    for name, dropped in _FREE.items():
        without = dropped(kept)
        if without != kept and not fits(without):
            kept = without
        elif without != kept:
            clashing.append(name)
    nearest = (
        next(((_say(name, near), near) for near in _NEARER[name](wishes) if fits(near)), None)
        for name in clashing
    )
    found = [one for one in nearest if one is not None]
    return ClashError(clashing, [_say(name, wishes) for name in clashing], found)


def _fewest(wishes: Wishes) -> Wishes:
    return replace(wishes, number=len(wishes.review) + 1)


#: How each wish is dropped; those that are dropped first are the least likely to be named.
_FREE: dict[str, Callable[[Wishes], Wishes]] = {
    "avoid": lambda wishes: replace(wishes, avoid=()),
    "strategy": lambda wishes: replace(wishes, strategy=REGROUP_FIRST),
    "denominators": lambda wishes: replace(
        wishes, denominators=tuple({*wishes.denominators, *USUAL_DENOMINATORS})
    ),
    "largest": lambda wishes: replace(wishes, largest=max(wishes.largest, MOST_WHOLES)),
    "review": lambda wishes: replace(wishes, review=()),
    "regrouping": lambda wishes: replace(wishes, regrouping=None),
    "minutes": lambda wishes: replace(wishes, minutes=None),
    "number": _fewest,
}


def _say(name: str, wishes: Wishes) -> str:
    match name:
        case "avoid":
            return (
                "none of the last nights' problems" if wishes.avoid else "problems of the last nights again"
            )
        case "strategy":
            return f"the strategy {wishes.strategy.typed}"
        case "denominators":
            many = "s" * (len(wishes.denominators) > 1)
            return f"the denominator{many} {', '.join(map(str, wishes.denominators))}"
        case "largest":
            return f"wholes up to {wishes.largest}"
        case "review":
            return f"review of {' and '.join(wishes.review)}" if wishes.review else "no review"
        case "regrouping":
            return f"{wishes.kept_regrouping} problem{'s' * (wishes.kept_regrouping != 1)} with regrouping"
        case "minutes":
            return f"{wishes.minutes} minute{'s' * (wishes.minutes != 1)}"
        case _:
            return f"{wishes.number} problem{'s' * (wishes.number != 1)}"


def _fewer(wishes: Wishes) -> Iterator[Wishes]:
    yield from (replace(wishes, number=number) for number in range(wishes.number - 1, len(wishes.review), -1))


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


def _less_review(wishes: Wishes) -> Iterator[Wishes]:
    yield from (replace(wishes, review=wishes.review[:n]) for n in reversed(range(len(wishes.review))))


_NEARER: dict[str, Callable[[Wishes], Iterable[Wishes]]] = {
    "avoid": lambda wishes: [replace(wishes, avoid=())],
    "strategy": lambda wishes: [replace(wishes, strategy=REGROUP_FIRST)],
    "denominators": _more_denominators,
    "largest": _larger,
    "review": _less_review,
    "regrouping": _other_shares,
    "minutes": _longer,
    "number": _fewer,
}
