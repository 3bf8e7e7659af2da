"""A question that a word answers: is 37 prime or composite, is 84 a multiple of 7, is 7 a factor of 84."""

from collections.abc import Iterator
from enum import Enum

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.number.factors import factors
from onewhole.number.quantity import Quantity
from onewhole.statements.asked_in_words import AskedInWords

#: Whether a number is prime is asked up to here: 4.OA.B.4 (CCSSM 2010) has 1 to 100, and a little more is
#: kept. Whether it is a multiple is asked of so many digits as there are words for its thousands.
LARGEST, LARGEST_MULTIPLE = 200, 99_999
#: What a number is a multiple of, at most: 4.OA.B.4 has one digit.
LARGEST_STEP = 100
REMEDY = "Write for example: is 37 prime or composite, is 84 a multiple of 7, is 7 a factor of 84."


class WordAnswer(Enum):
    """A word that answers a question about a number."""

    PRIME = "prime"
    COMPOSITE = "composite"
    NEITHER = "neither"
    YES = "yes"
    NO = "no"


class NotAskedError(InputError, ValueError):
    """The question is asked of a number that is none, or too large."""


class FactorQuestion(AskedInWords, Struct, frozen=True):
    """Is a number prime or composite, or, with ``step``, is it a multiple of that?

    ``gives`` is the word that a line gives as the answer, true or not; None while it is asked. ``of_factor``
    asks the same the other way round: is ``step`` a factor of the number? A number is a multiple of each of
    its factors (4.OA.B.4, CCSSM 2010). A prime has just two factors, 1 and itself; 1 has one and is neither
    (the usual definition). Raises NotAskedError for numbers that are not whole, are 0 or too large, and for
    multiples of 1, which all numbers are.

    >>> from onewhole.number.quantity import whole
    >>> [FactorQuestion(whole(number)).found.value for number in (1, 2, 37, 91)]
    ['neither', 'prime', 'prime', 'composite']
    >>> FactorQuestion(whole(84), whole(7)).found.value
    'yes'
    """

    number: Quantity
    step: Quantity | None = None
    gives: WordAnswer | None = None
    of_factor: bool = False

    def __post_init__(self) -> None:
        """Refuse what is no whole number, and what is too large."""
        for number in self.numbers:
            if not number.plain or not number.parts:
                msg = "this is asked of whole numbers from 1 on"
                raise NotAskedError(msg, remedy=REMEDY)
        largest = LARGEST if self.step is None else LARGEST_MULTIPLE
        if self.number.parts > largest:
            msg = f"this is asked of numbers up to {largest:,}"
            raise NotAskedError(msg, remedy="Choose a smaller number: grade 4 stays at or below 100.")
        if self.step is not None and not 2 - self.of_factor <= self.step.parts <= LARGEST_STEP:
            asked, least = ("factors", 1) if self.of_factor else ("multiples", 2)
            msg = f"{asked} are asked of numbers from {least} to {LARGEST_STEP}"
            raise NotAskedError(msg, remedy="Choose another one: grade 4 has one digit.")

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Return the number, and what it may be a multiple of; a factor stands first, as it is asked."""
        both = (self.number,) if self.step is None else (self.number, self.step)
        return both[::-1] if self.of_factor else both

    @property
    def about(self) -> Quantity:
        """Return the number that the question is about."""
        return self.number

    def with_numbers(self, supply: Iterator[Quantity]) -> "FactorQuestion":
        """Return the same question about the next numbers of a supply."""
        found = [next(supply) for _ in self.numbers][:: -1 if self.of_factor else 1]
        return FactorQuestion(found[0], found[1] if found[1:] else None, of_factor=self.of_factor)

    @property
    def found(self) -> WordAnswer:
        """Return the word that is true."""
        if self.step is not None:
            return WordAnswer.NO if self.number.parts % self.step.parts else WordAnswer.YES
        primes = factors(self.number.parts)
        if not primes:
            return WordAnswer.NEITHER
        return WordAnswer.COMPOSITE if primes[1:] else WordAnswer.PRIME

    @property
    def claims(self) -> WordAnswer:
        """Return the word that a line gives, or the true one where it only asks."""
        return self.gives or self.found

    @property
    def choices(self) -> tuple[WordAnswer, ...]:
        """Return the words that may answer."""
        if self.step is not None:
            return WordAnswer.YES, WordAnswer.NO
        return WordAnswer.PRIME, WordAnswer.COMPOSITE, WordAnswer.NEITHER

    def answered(self, word: WordAnswer) -> "FactorQuestion":
        """Return the line that gives a word as the answer."""
        return replace(self, gives=word)
