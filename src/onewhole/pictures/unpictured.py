"""Why a picture does not suit a working: a closed family."""

from msgspec import Struct


class TooManyParts(Struct, frozen=True):
    """A whole has ``parts`` equal parts; ``most`` can be counted by looking."""

    parts: int
    most: int


class TooManyWholes(Struct, frozen=True):
    """The picture would need ``wholes`` wholes; ``most`` can be counted by looking."""

    wholes: int
    most: int


class NotHundredths(Struct, frozen=True):
    """A hundred grid shows tenths and hundredths, and a whole has ``parts`` parts."""

    parts: int


class NoPlaceOnLine(Struct, frozen=True):
    """The working is no sum, difference, comparison, counting on or rounding."""


class NotOnRuler(Struct, frozen=True):
    """The problem does not count inches in halves, fourths, eighths or sixteenths, up to a foot."""


class TooManyJumps(Struct, frozen=True):
    """The line would show ``jumps`` jumps; ``most`` stand apart."""

    jumps: int
    most: int


class NothingToSplit(Struct, frozen=True):
    """The working opens nothing and makes nothing."""


class NoTensAndOnes(Struct, frozen=True):
    """The numbers do not count in tens and ones."""


class NotPlaceByPlace(Struct, frozen=True):
    """The strategy does not go place by place."""


class TooMuchForBlocks(Struct, frozen=True):
    """Blocks show two numbers, with ``most`` of the smallest place at most."""

    most: int


class NoPartsOfWhole(Struct, frozen=True):
    """The problem does not tell a whole and its parts with one of them missing."""


class TooSmallBeside(Struct, frozen=True):
    """One part cannot be seen beside the others."""


class NoRoom(Struct, frozen=True):
    """Wholes and parts do not fit on one picture."""


class NoArea(Struct, frozen=True):
    """Nothing is multiplied part by part, so there is no rectangle to cut."""


class NoShares(Struct, frozen=True):
    """Nothing is given out to shares, unit by unit."""


class TooManyShares(Struct, frozen=True):
    """There are ``shares`` shares; ``most`` can be counted by looking."""

    shares: int
    most: int


class NotInColumns(Struct, frozen=True):
    """The working does not go column by column."""


class SeveralSteps(Struct, frozen=True):
    """Several steps are worked one after another, and a picture of one of them does not show the others."""


class NoPlot(Struct, frozen=True):
    """Nothing is asked of a line plot."""


class OnlyPlot(Struct, frozen=True):
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
