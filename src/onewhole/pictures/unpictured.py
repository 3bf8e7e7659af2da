"""Why a picture does not suit a working: a closed family."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class TooManyParts:
    """A whole has ``parts`` equal parts; ``most`` can be counted by looking."""

    parts: int
    most: int


@dataclass(frozen=True, slots=True)
class TooManyWholes:
    """The picture would need ``wholes`` wholes; ``most`` can be counted by looking."""

    wholes: int
    most: int


@dataclass(frozen=True, slots=True)
class NotHundredths:
    """A hundred grid shows tenths and hundredths, and a whole has ``parts`` parts."""

    parts: int


@dataclass(frozen=True, slots=True)
class NoPlaceOnLine:
    """The working is no sum, difference, comparison, counting on or rounding."""


@dataclass(frozen=True, slots=True)
class NotOnRuler:
    """The problem does not count inches in halves, fourths, eighths or sixteenths, up to a foot."""


@dataclass(frozen=True, slots=True)
class TooManyJumps:
    """The line would show ``jumps`` jumps; ``most`` stand apart."""

    jumps: int
    most: int


@dataclass(frozen=True, slots=True)
class NothingToSplit:
    """The working opens nothing and makes nothing."""


@dataclass(frozen=True, slots=True)
class NoTensAndOnes:
    """The numbers do not count in tens and ones."""


@dataclass(frozen=True, slots=True)
class NotPlaceByPlace:
    """The strategy does not go place by place."""


@dataclass(frozen=True, slots=True)
class TooMuchForBlocks:
    """Blocks show two numbers, with ``most`` of the smallest place at most."""

    most: int


@dataclass(frozen=True, slots=True)
class NoPartsOfWhole:
    """The problem does not tell a whole and its parts with one of them missing."""


@dataclass(frozen=True, slots=True)
class TooSmallBeside:
    """One part cannot be seen beside the others."""


@dataclass(frozen=True, slots=True)
class NoRoom:
    """Wholes and parts do not fit on one picture."""


@dataclass(frozen=True, slots=True)
class NoArea:
    """Nothing is multiplied part by part, so there is no rectangle to cut."""


@dataclass(frozen=True, slots=True)
class NoShares:
    """Nothing is given out to shares, unit by unit."""


@dataclass(frozen=True, slots=True)
class TooManyShares:
    """There are ``shares`` shares; ``most`` can be counted by looking."""

    shares: int
    most: int


@dataclass(frozen=True, slots=True)
class NotInColumns:
    """The working does not go column by column."""


@dataclass(frozen=True, slots=True)
class SeveralSteps:
    """Several steps are worked one after another, and a picture of one of them does not show the others."""


@dataclass(frozen=True, slots=True)
class NoPlot:
    """Nothing is asked of a line plot."""


@dataclass(frozen=True, slots=True)
class OnlyPlot:
    """What is asked of a line plot is seen on the plot itself."""


#: Every reason why a picture does not suit a working.
Unpictured = (
    TooManyParts
    | TooManyWholes
    | NotHundredths
    | NoPlaceOnLine
    | NotOnRuler
    | TooManyJumps
    | NothingToSplit
    | NoTensAndOnes
    | NotPlaceByPlace
    | TooMuchForBlocks
    | NoPartsOfWhole
    | TooSmallBeside
    | NoArea
    | NoShares
    | TooManyShares
    | NotInColumns
    | SeveralSteps
    | NoPlot
    | OnlyPlot
    | NoRoom
)
