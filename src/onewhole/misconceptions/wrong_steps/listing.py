"""Factors and multiples: some are left out, the other sort is listed, or a wrong rule chooses a word."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.quantity import whole
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.statement import NumberRow, Statement
from onewhole.working.line import Line

#: As many multiples are written where factors are asked for. Common practice, no source.
MULTIPLES = 5

#: What is listed instead; nothing where a rule does not apply.
Instead = Callable[[Listing], tuple[int, ...]]


#: The word that is chosen instead; None where a rule does not apply.
WordInstead = Callable[[FactorQuestion], WordAnswer | None]
TEN, FIVE = 10, 5


def on_word(instead: WordInstead) -> Try:
    """Return the attempt at a question about a number that gives another word."""

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, FactorQuestion):
            return None
        word = instead(statement)
        if word is None or word is statement.found:
            return None
        return Attempt((Line(statement), Line(statement.answered(word))), word)

    return attempt


def odd_is_prime(asked: FactorQuestion) -> WordAnswer | None:
    """Call every odd number but 1 prime, and every even number composite."""
    if asked.step is not None or asked.number.parts == 1:
        return None
    return WordAnswer.PRIME if asked.number.parts % 2 else WordAnswer.COMPOSITE


def one_is_prime(asked: FactorQuestion) -> WordAnswer | None:
    """Call 1 prime."""
    return WordAnswer.PRIME if asked.step is None and asked.number.parts == 1 else None


def not_in_the_tables(asked: FactorQuestion) -> WordAnswer | None:
    """Call prime what is no product of two numbers to 10, unless its last digit shows a factor 2 or 5."""
    number = asked.number.parts
    if asked.step is not None or number == 1 or not number % 2 or not number % FIVE:
        return None
    known = any(not number % by and number // by <= TEN for by in range(2, TEN + 1))
    return WordAnswer.COMPOSITE if known else WordAnswer.PRIME


def multiple_of_it(asked: FactorQuestion) -> WordAnswer | None:
    """Say whether the second number is a multiple of the first."""
    if asked.step is None:
        return None
    return WordAnswer.NO if asked.step.parts % asked.number.parts else WordAnswer.YES


def last_digit_decides(asked: FactorQuestion) -> WordAnswer | None:
    """Look only whether the last digit is a multiple, as is right for 2 and 5."""
    if asked.step is None or not 1 < asked.step.parts < TEN or asked.number.parts < TEN:
        return None
    return WordAnswer.NO if asked.number.parts % TEN % asked.step.parts else WordAnswer.YES


def on_list(sort: ListSort, instead: Instead) -> Try:
    """Return the attempt at listing factors, or multiples, that lists other numbers."""

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, Listing) or statement.sort is not sort:
            return None
        found = instead(statement)
        if not found or found == statement.found:
            return None
        wrote = NumberRow(tuple(map(whole, found)))
        return Attempt((Line(statement), Line(wrote)), wrote)

    return attempt


def without_the_ends(asked: Listing) -> tuple[int, ...]:
    """Leave out 1 and the number itself."""
    return asked.found[1:-1]


def one_of_each_pair(asked: Listing) -> tuple[int, ...]:
    """List only the smaller number of each pair."""
    return tuple(first for first, _ in asked.pairs)


def multiples_instead(asked: Listing) -> tuple[int, ...]:
    """List multiples where factors are asked for."""
    number = asked.number.parts
    return tuple(number * times for times in range(1, MULTIPLES + 1))


def without_the_number(asked: Listing) -> tuple[int, ...]:
    """Begin with twice the number."""
    return asked.found[1:]


def factors_instead(asked: Listing) -> tuple[int, ...]:
    """List factors where multiples are asked for."""
    return Listing(ListSort.FACTORS, asked.number).found
