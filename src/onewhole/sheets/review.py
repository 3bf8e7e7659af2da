"""Review problems: one problem of each earlier skill that is wished for."""

from collections.abc import Container, Iterable, Iterator
from fractions import Fraction
from hashlib import sha256
from math import ceil

from onewhole.findings.wished_skill import WishedSkill
from onewhole.problems.minutes import minutes_of
from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.candidates import HALVES_PLAIN, HALVES_REGROUPING, LikePair, PageCandidate
from onewhole.sheets.wishes import Review, Wishes
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

TEN = 10


def regroups(review: Review) -> bool:
    """Say whether the problems of an earlier skill need regrouping (:func:`onewhole.problems.needs.needs`).

    >>> [regroups(one) for one in Review]
    [False, True, True]
    """
    return review is not Review.FRACTIONS


def halves(regrouping: bool) -> int:
    """Return how many half minutes a problem takes that needs regrouping, or none."""
    return HALVES_REGROUPING if regrouping else HALVES_PLAIN


def set_aside(wishes: Wishes) -> tuple[bool, ...]:
    """Say of each problem that is not chosen for what it tells whether it needs regrouping.

    >>> set_aside(Wishes(review=(Review.FRACTIONS,), back=("52 - 27",)))
    (True, False)
    """
    back = (needs(read_statement(typed)).regrouping for typed in wishes.back)
    return (*back, *map(regroups, wishes.review))


def halves_aside(wishes: Wishes) -> int:
    """Return how many half minutes those problems take: what comes back by its own work.

    >>> halves_aside(Wishes(review=(Review.FRACTIONS,), back=("817 x 86",)))
    10
    """
    back = map(read_statement, wishes.back)
    minutes = sum((minutes_of(one, needs(one)) for one in back), Fraction(0))
    return ceil(2 * minutes) + sum(halves(regroups(one)) for one in wishes.review)


def listed(review: Review, wishes: Wishes) -> Iterator[str]:
    """Yield all problems of an earlier skill as typed, one after another.

    Fractions below one with like denominators (4.NF.B.3.a), two-digit numbers where a ten is opened
    (3.NBT.A.2) and a whole opened in a mixed number (4.NF.B.3.b; all CCSSM 2010).

    >>> next(listed(Review.OPENED, Wishes(denominators=(6,))))
    '2 1/6 = 1 ?/6'
    """
    match review:
        case Review.FRACTIONS:
            yield from (one.typed for one in _fractions(wishes))
        case Review.TENS:
            for first in range(2 * TEN, TEN * TEN):
                for second in range(TEN, first - TEN + 1):
                    if first % TEN < second % TEN:
                        yield f"{first} - {second}"
        case Review.OPENED:
            for d in wishes.denominators:
                for wholes in range(2, max(3, wishes.largest + 1)):
                    for top in range(1, d):
                        yield f"{wholes} {top}/{d} = {wholes - 1} ?/{d}"


def _fractions(wishes: Wishes) -> Iterator[LikePair]:
    for d in wishes.denominators:
        for first in range(1, d):
            if wishes.skill is not WishedSkill.ADD:
                yield from (LikePair(0, first, 0, second, d, taken=True) for second in range(1, first))
            if wishes.skill is not WishedSkill.SUBTRACT:
                yield from (LikePair(0, first, 0, second, d, taken=False) for second in range(1, d - first))


def reviewed(wishes: Wishes, beside: Iterable[Statement]) -> tuple[Statement, ...] | None:
    """Return what comes back, then one problem for each review, chosen by the seed; None without any left.

    What comes back is as it was typed. Of the review none is a problem of the last nights, nor a twin
    of another or of those ``beside`` it on the page.
    """
    found = [read_statement(typed) for typed in wishes.back]
    taken = {twin_key(one) for one in (*beside, *found)}
    for turn, review in enumerate(wishes.review):
        one = _free(
            sorted(listed(review, wishes), key=lambda typed: _draw(wishes.seed, turn, typed)),
            wishes.avoid,
            taken,
        )
        if one is None:
            return None
        taken.add(twin_key(one))
        found.append(one)
    return tuple(found)


def apart_from(back: Iterable[str], members: tuple[PageCandidate, ...]) -> tuple[PageCandidate, ...]:
    """Return those of some problems that are no twin of a problem that comes back.

    >>> members = (LikePair(5, 1, 2, 3, 4, taken=True), LikePair(6, 1, 2, 3, 4, taken=True))
    >>> [one.typed for one in apart_from(["7 1/4 - 4 3/4"], members)]
    ['6 1/4 - 2 3/4']
    """
    gone = {twin_key(read_statement(typed)) for typed in back}
    if not gone:
        return members
    twins = {one.twin: one for one in members}
    kept = {twin for twin, one in twins.items() if twin_key(one.statement) not in gone}
    return tuple(one for one in members if one.twin in kept)


def _free(typed: Iterable[str], avoid: Container[str], taken: Container[object]) -> Statement | None:
    statements = (read_statement(one) for one in typed if one not in avoid)
    return next((one for one in statements if twin_key(one) not in taken), None)


def _draw(seed: int, turn: int, typed: str) -> bytes:
    return sha256(f"{seed} {turn} {typed}".encode()).digest()
