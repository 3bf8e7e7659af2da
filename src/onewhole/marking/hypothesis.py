"""What may lie behind one pupil's answers: no steady error, one steady pattern, or two that live together."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations

from onewhole.marking.expected import Expected
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family


class Footing(StrEnum):
    """How a pupil without a steady pattern stands; wrong answers are slips or ideas used once and dropped."""

    SOUND = "sound"
    SHAKY = "shaky"
    SCATTERED = "scattered"


@dataclass(frozen=True, slots=True)
class Hypothesis:
    """A footing alone, or one or two steady patterns on a sound footing.

    >>> Hypothesis(Footing.SOUND, ("A01",)).steady
    True
    """

    footing: Footing
    patterns: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        """Refuse more than two patterns, and patterns on any but a sound footing."""
        if len(self.patterns) > 2 or (self.patterns and self.footing is not Footing.SOUND):
            msg = "a hypothesis is a footing, or one or two patterns on a sound one"
            raise ValueError(msg)

    @property
    def steady(self) -> bool:
        """Say whether a pattern is supposed."""
        return bool(self.patterns)


NO_PATTERN = tuple(Hypothesis(footing) for footing in Footing)


def hypotheses(asked: Sequence[Expected]) -> tuple[Hypothesis, ...]:
    """Return every hypothesis that the answers to these problems can tell anything about.

    Patterns are those that can show on at least one problem, fact slips left out.
    Two patterns live together when they cannot both act: no problem shows both, so that each keeps its own
    problems (opening a whole wrongly where one must be opened, and opening one where none need be).
    """
    shown = _shown(asked)
    singles = [Hypothesis(Footing.SOUND, (key,)) for key in shown]
    pairs = [Hypothesis(Footing.SOUND, pair) for pair in _pairs(shown)]
    return (*NO_PATTERN, *singles, *pairs)


def _shown(asked: Sequence[Expected]) -> dict[str, frozenset[int]]:
    """Return the places of the problems on which each pattern can show, in the order of the catalogue."""
    keys = sorted({key for one in asked for key in one.shows})
    usable = [key for key in keys if by_id(key).family is not Family.FACT]
    return {key: frozenset(at for at, one in enumerate(asked) if key in one.shows) for key in usable}


def _pairs(shown: dict[str, frozenset[int]]) -> Iterator[tuple[str, str]]:
    for first, second in combinations(shown, 2):
        if not shown[first] & shown[second]:
            yield first, second
