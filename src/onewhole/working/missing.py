"""Working an equation with a number missing: 7 2/6 = 6 ?/6. Every line keeps the missing number."""

from fractions import Fraction

from msgspec.structs import replace

from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.statements.expression import Expression, Over, Sum, Term, plus, quantities, value
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.statement import MissingNumber, Question, gap_amount, meaning
from onewhole.working.equal_pieces import recut
from onewhole.working.line import Line, without_repeats
from onewhole.working.questions import work_as_taught
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import GapRead, PartTaken, TakenAndLeft, UndoneToFind
from onewhole.working.reasons.regrouping import AreWorth, MakesLarger, OpensToMatch, PutTogether
from onewhole.working.reasons.renaming import RenamedSameAmount
from onewhole.working.reasons.taking import InAll, Left, SoFar
from onewhole.working.strategies.moves import one_on, parted, something
from onewhole.working.strategies.same_units import row
from onewhole.working.strategies.table import STRATEGIES, USUAL
from onewhole.working.strategy import Strategy
from onewhole.working.working import Working

KEY = "find_the_missing_number"


def work_missing(asked: MissingNumber, taught: Strategy | None = None) -> Working:
    """Find the missing number line by line.

    First the number with the gap is left alone on its side (undoing, or part and whole), then the other side
    is worked by the taught strategy, then it is renamed until it looks like the number with the gap: cut each
    piece again (4.NF.A.1) or open wholes (4.NF.B.3.b, CCSSM 2010).

    >>> from onewhole.statements.reading import read_statement
    >>> work_missing(read_statement("7 2/6 = 6 ?/6")).answer == whole(8)
    True
    """
    taught = taught or USUAL
    lines = [Line(asked)]
    alone = alone_on_its_side(asked)
    if alone != asked:
        lines.append(Line(alone, _why_alone(asked)))
    amount = gap_amount(asked)
    rest = _worked(lines, alone, taught, part_taken=asked.gap_taken)
    if not asked.gap.alone:
        _renamed(lines, replace(alone, rest=rest), amount)
    found = meaning(asked)
    answer = whole(found) if isinstance(found, int) else rest
    return Working(KEY, asked, without_repeats(lines), answer)


def alone_on_its_side(asked: MissingNumber) -> MissingNumber:
    """Undo what is added or taken beside the gap: 9 - ? = 3 1/2 is found by 9 - 3 1/2.

    >>> from onewhole.statements.reading import read_statement
    >>> alone_on_its_side(read_statement("? + 2 = 5")).rest == read_statement("5 - 2").asked
    True
    """
    if not asked.beside and not asked.gap_taken:
        return asked
    terms: list[Term] = []
    if asked.gap_taken:
        terms = [*(Term(part, taken) for part, taken in asked.beside), Term(asked.rest, taken=True)]
    else:
        terms = [Term(asked.rest), *(Term(part, not taken) for part, taken in asked.beside)]
    flat: list[Term] = []
    for term in terms:
        inner = term.part.terms if isinstance(term.part, Sum) else (Term(term.part),)
        flat.extend(Term(part.part, part.taken != term.taken) for part in inner)
    flat.sort(key=lambda term: term.taken)
    return MissingNumber(Sum(tuple(flat)), asked.gap)


def _why_alone(asked: MissingNumber) -> Reason:
    """Say why the blank may be left alone: taken from a whole it is a part, and else it is undone."""
    if not asked.gap_taken:
        return UndoneToFind()
    return TakenAndLeft(row(asked.beside), asked.rest)


def _worked(lines: list[Line], alone: MissingNumber, taught: Strategy, *, part_taken: bool) -> Quantity:
    """Work the side without the gap; where the gap is a part that is taken, that part is not called left."""
    if isinstance(alone.rest, Quantity):
        return alone.rest
    first, taken = _added_first(alone.rest)
    working = work_as_taught(Question(first), taught, checked=False)
    for line in working.lines[1:]:
        if isinstance(line.says, Expression):
            because = line.because
            if part_taken and isinstance(because, Left) and because.result.value == value(alone.rest):
                because = PartTaken(because.result)
            if taken and isinstance(because, InAll):
                because = SoFar(because.result)
            says = _less(line.says, taken)
            lines.append(Line(replace(alone, rest=says), because, line.aside, line.facts))
    if not isinstance(working.answer, Quantity):
        msg = "a question is answered by a quantity"
        raise TypeError(msg)
    if not taken:
        return working.answer
    less = replace(alone, rest=_less(working.answer, taken))
    # Numbers of one digit are not added in columns: what is left is not found in columns either.
    went = next((one for one in STRATEGIES if one.key == working.strategy), taught)
    return _worked(lines, less, went, part_taken=part_taken)


def _added_first(rest: Expression) -> tuple[Expression, tuple[Term, ...]]:
    """Part 8 + 4 - 5 into the sum, which is worked first, and what is taken from it.

    Only whole numbers: they are worked in columns, and no columns hold a sum and a difference at once.
    """
    terms = rest.terms if isinstance(rest, Sum) else ()
    added = tuple(term for term in terms if not term.taken)
    in_places = all(number.ladder.style is Style.PLACES for number in quantities(rest))
    if len(added) < 2 or len(added) == len(terms) or not in_places:
        return rest, ()
    return Sum(added), tuple(term for term in terms if term.taken)


def _less(says: Expression, taken: tuple[Term, ...]) -> Expression:
    terms = says.terms if isinstance(says, Sum) else (Term(says),)
    return Sum((*terms, *taken)) if taken else says


def _renamed(lines: list[Line], here: MissingNumber, amount: Fraction) -> None:
    """Rename the known side until it looks like the number with the gap."""
    target = _filled(here.gap, amount)
    rest = here.rest
    if not isinstance(rest, Quantity):
        return
    bottom = target.ladder.denominator
    spread = (
        rest.on(mixed(bottom)) if _counts_in(rest, bottom) else usual(mixed(bottom), amount).on(mixed(bottom))
    )
    before = rest.ladder.denominator if rest.ladder.style is Style.MIXED else bottom
    if before != bottom:
        if rest.amounts[-1] and _counts_in(rest, bottom):
            lines += [_with_gap(here, line) for line in recut(rest, bottom)]
        _say(lines, here, trimmed(spread), RenamedSameAmount(spread.ladder.units[-1]))
    opening = spread.amounts[0] - target.amounts[0]
    if opening > 0:
        _open(lines, here, spread, opening)
    elif opening < 0:
        made = MakesLarger(spread.ladder.units[0], spread.ladder.units[-1], -opening, -opening * bottom)
        _say(lines, here, target, made)
    _say(lines, here, target, GapRead())


def _filled(gap: Gap, amount: Fraction) -> Quantity:
    """Return the number with the gap, filled so that it is worth ``amount``."""
    found = gap.filling(amount)
    number = found if isinstance(found, int) else found.numerator
    wholes = number if gap.wholes is HOLE else gap.wholes
    top = number if gap.top is HOLE else gap.top
    bottom = number if gap.bottom is HOLE else gap.bottom
    return Quantity(mixed(bottom or 1), (wholes, top or 0))


def _counts_in(quantity: Quantity, bottom: int) -> bool:
    wholes_apart = quantity.ladder.style is Style.MIXED
    return wholes_apart and (quantity.amounts[1] * bottom) % quantity.ladder.denominator == 0


def _with_gap(here: MissingNumber, line: Line) -> Line:
    """Return a line on the side without the gap as a line of the equation."""
    assert isinstance(line.says, Quantity | Sum | Over)
    return replace(line, says=replace(here, rest=line.says))


def _open(lines: list[Line], here: MissingNumber, spread: Quantity, times: int) -> None:
    units, ratio = spread.ladder.units, spread.ladder.ratios[0]
    wholes, pieces = spread.amounts
    loose = one_on(spread, 1, times * ratio)
    stay, lower = one_on(spread, 0, wholes - times), one_on(spread, 1, pieces)
    opened = one_on(spread, 0, times)
    large, small = units
    after = spread.regroup(0, times)
    parting = parted(trimmed(spread), (stay, opened, lower), loose, trimmed(after), after.only(1))
    why = OpensToMatch(large, small, times, parting)
    _say(lines, here, plus(*something(stay, opened, lower)), why, aside=True)
    worth = AreWorth(large, small, times, times * ratio)
    _say(lines, here, plus(*something(stay, loose, lower)), worth, aside=True)
    together = PutTogether(small, times * ratio, pieces, after.amounts[1])
    _say(lines, here, trimmed(after), together)


def _say(
    lines: list[Line], here: MissingNumber, rest: Expression, reason: Reason, *, aside: bool = False
) -> None:
    lines.append(Line(replace(here, rest=rest), reason, aside=aside))
