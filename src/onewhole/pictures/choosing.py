"""Which picture suits which working, and why another does not."""

from functools import lru_cache
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.pictures.area import area, of_sum, too_narrow
from onewhole.pictures.arrays import arrays
from onewhole.pictures.bar import bar
from onewhole.pictures.bar_and_columns import with_columns
from onewhole.pictures.blocks import blocks
from onewhole.pictures.blocks_state import WAYS, blocks_of
from onewhole.pictures.digits import can_be_read
from onewhole.pictures.discs import discs
from onewhole.pictures.grid import grid
from onewhole.pictures.jumps import jump_plan
from onewhole.pictures.limits import (
    MOST_PARTS,
    MOST_PARTS_RECTANGLE,
    PAGE,
    NotDrawnError,
    PicturePaper,
)
from onewhole.pictures.line_plot import line_plot
from onewhole.pictures.measured_out import MOST_GROUPS
from onewhole.pictures.number_line import number_line, ruler
from onewhole.pictures.parts import part_whole
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.quantity_state import renames
from onewhole.pictures.rectangles import rectangles
from onewhole.pictures.ruler import on_ruler
from onewhole.pictures.shared_area import shared_area
from onewhole.pictures.shares import shares
from onewhole.pictures.shares_state import quotient_of
from onewhole.pictures.split import grown, split
from onewhole.pictures.squared import squared, squared_states
from onewhole.pictures.step_bars import drawn_steps
from onewhole.pictures.strips import strips
from onewhole.pictures.uncounted import no_bar, no_shares, off_grid, uncounted
from onewhole.pictures.unpictured import (
    NoArea,
    NoPlaceOnLine,
    NoPlot,
    NoRoom,
    NoTensAndOnes,
    NothingToSplit,
    NotInColumns,
    NotOnRuler,
    NotPlaceByPlace,
    OnlyPlot,
    SeveralSteps,
    TooManyJumps,
    TooMuchForBlocks,
    TooSmallBeside,
    Unpictured,
)
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import quantities
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Ordering, Question
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.products.by_heart import BY_HEART
from onewhole.working.products.equal_jumps import EQUAL_JUMPS
from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
from onewhole.working.products.tops_and_bottoms import TOPS_AND_BOTTOMS
from onewhole.working.quotients.measure_out import MEASURE_OUT
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.quotients.share_units import SHARE_UNITS
from onewhole.working.reasons.renaming import FewestPieces
from onewhole.working.steps.work_steps import has_steps
from onewhole.working.strategies.count_up import COUNT_UP
from onewhole.working.strategies.equal_shift import EQUAL_SHIFT
from onewhole.working.strategies.from_whole import FROM_WHOLE
from onewhole.working.strategies.jump_on import JUMP_ON
from onewhole.working.whole_groups import divided_in_groups
from onewhole.working.working import Working

#: Strategies that are jumps along a line.
JUMPING = {COUNT_UP.key, JUMP_ON.key, EQUAL_SHIFT.key, FROM_WHOLE.key, EQUAL_JUMPS.key, MEASURE_OUT.key}
#: Ways to multiply and to divide that are seen in a rectangle.
AREAS = {PARTIAL_PRODUCTS.key, TOPS_AND_BOTTOMS.key, BY_HEART.key, SHARE_UNITS.key, PARTIAL_QUOTIENTS.key}
#: Pictures that show all steps of several at once: what is added as often as it is taken, or a bar for each
#: step; and a sum taken so many times.
OF_STEPS = (PictureKind.BAR, PictureKind.AREA)
#: More jumps than this run into one another. Common practice, no source.
MOST_JUMPS = 8
MOST_IN_BLOCKS = 999
HUNDREDTHS = 100


class Refusal(Struct, frozen=True):
    """Why a picture does not suit a working, and which one does (None when none does)."""

    reason: Unpictured
    instead: PictureKind | None


class PictureRefusedError(InputError):
    """A picture that was asked for does not suit a working; ``why`` is the reason with its numbers."""

    def __init__(self, kind: PictureKind, refused: Refusal) -> None:
        """Keep the picture and why it is refused."""
        instead = f"Choose “{refused.instead.value}”, or" if refused.instead else "Choose"
        super().__init__(
            f"the picture “{kind.value}” does not suit this problem",
            remedy=f"{instead} no picture.",
        )
        self.kind = kind
        self.why = refused.reason
        self.instead = refused.instead


def refusal(working: Working, kind: PictureKind, paper: PicturePaper = PAGE) -> Refusal | None:
    """Return why a kind of picture does not suit a working, with one that does; None when it suits.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> found = refusal(work(read_statement("3.45 - 1.27"), REGROUP_FIRST), PictureKind.STRIPS)
    >>> found.reason, found.instead.value
    (TooManyParts(parts=100, most=12), 'hundred grid')
    """
    why = _why(working, kind, paper)
    return None if why is None else Refusal(why, chosen(working, paper))


def chosen(working: Working, paper: PicturePaper = PAGE) -> PictureKind | None:
    """Return the picture that suits a working best, or None when none does.

    A whole with a part missing is a bar (on a board over the columns in which it is found), a working in
    columns stands in columns, inches and their parts lie along a ruler, jumping strategies go on a line,
    what is divided is given out to shares, whole numbers go into blocks, hundredths on a grid; anything else
    is cut in strips, in rectangles when there are too many parts, and stands on a line when there are too
    many wholes.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.count_up import COUNT_UP
    >>> from onewhole.working.work import work
    >>> chosen(work(read_statement("7 2/6 - 3 5/6"), COUNT_UP)).value
    'number line'
    """
    return next((kind for kind in _order(working) if _why(working, kind, paper) is None), None)


def picture(working: Working, kind: PictureKind | None = None, paper: PicturePaper = PAGE) -> Picture | None:
    """Draw a working as the kind that was asked for, or as the one that suits it best.

    ``paper`` is what it is drawn on: a page, or the board of a film, where digits that cannot be read on a
    phone do not suit. Returns None when nothing was asked for and nothing suits. Raises PictureRefusedError
    when the kind that was asked for does not suit.
    """
    if kind is None:
        kind = chosen(working, paper)
    elif refused := refusal(working, kind, paper):
        raise PictureRefusedError(kind, refused)
    return None if kind is None else _drawn(working, kind, paper)


def _order(working: Working) -> tuple[PictureKind, ...]:
    """Return the pictures in the order in which they are tried."""
    working = divided_in_groups(working)
    if isinstance(working.statement, Rounding):
        return (PictureKind.LINE,)
    if isinstance(working.statement, PlotQuestion):
        return (PictureKind.PLOT,)
    if quotient_of(working) is not None:
        return (
            PictureKind.COLUMNS,
            PictureKind.SHARES,
            PictureKind.AREA,
            PictureKind.LINE,
            PictureKind.SPLIT,
        )
    if _in_steps(working):
        return OF_STEPS
    if isinstance(working.statement, Listing | FactorQuestion):
        return (PictureKind.AREA, PictureKind.LINE)
    first = [PictureKind.BAR, PictureKind.COLUMNS, PictureKind.AREA, PictureKind.RULER]
    asked = _asked(working)
    if working.strategy in JUMPING and isinstance(working.statement, Question):
        first.append(PictureKind.LINE)
    if isinstance(working.statement, Ordering) and all(one.ladder.style is not Style.MIXED for one in asked):
        first.append(PictureKind.LINE)
    if all(quantity.ladder.style is Style.PLACES for quantity in asked):
        first.append(PictureKind.BLOCKS)
    cut = {quantity.ladder.finest.denominator for quantity in asked}
    gap = working.statement.gap if isinstance(working.statement, MissingNumber) else None
    pointed = working.statement == AnotherName(asked[0], NumberForm.DECIMAL)
    if HUNDREDTHS in cut or pointed or (gap and gap.bottom == HUNDREDTHS):
        first.append(PictureKind.GRID)
    cuts = [PictureKind.STRIPS, PictureKind.RECTANGLES, PictureKind.LINE]
    if isinstance(working.statement, Ordering):
        # Many small rectangles, one under another, show no order; points on one line do.
        cuts = [PictureKind.STRIPS, PictureKind.LINE, PictureKind.RECTANGLES]
    return (*first, *cuts, PictureKind.SPLIT)


def _asked(working: Working) -> tuple[Quantity, ...]:
    match working.statement:
        case Question(asked) | AnotherName(asked):
            return quantities(asked)
        case Comparison(left, right):
            return (*quantities(left), *quantities(right))
        case Ordering(parts):
            return parts
        case AskedInWords():
            return quantities(working.statement.about)
        case MissingNumber(rest):
            return quantities(rest)
        case Rounding(number):
            return (number,)
        case _:
            assert_never(working.statement)


def _why(working: Working, kind: PictureKind, paper: PicturePaper) -> Unpictured | None:
    """Return why a picture cannot be drawn; the last check is to draw it."""
    if isinstance(working.statement, PlotQuestion) and kind is not PictureKind.PLOT:
        return OnlyPlot()
    if _in_steps(working) and kind not in OF_STEPS:
        return SeveralSteps()
    counted = _as_counted(working, kind)
    match kind:
        case PictureKind.STRIPS | PictureKind.DISCS:
            why = uncounted(counted, MOST_PARTS)
        case PictureKind.RECTANGLES:
            why = uncounted(counted, MOST_PARTS_RECTANGLE)
        case PictureKind.GRID:
            why = off_grid(counted)
        case PictureKind.LINE:
            why = _off_line(counted)
        case PictureKind.RULER:
            why = _off_ruler(counted)
        case PictureKind.SPLIT:
            why = None if any(grown(counted)) else NothingToSplit()
        case PictureKind.BLOCKS:
            why = _no_blocks(counted)
        case PictureKind.BAR:
            why = no_bar(counted)
        case PictureKind.SHARES:
            why = no_shares(counted)
        case PictureKind.AREA:
            why = (
                None
                if counted.strategy in AREAS or _times_a_sum(counted) or _of_factors(counted)
                else NoArea()
            )
        case PictureKind.COLUMNS:
            why = None if squared_states(counted) else NotInColumns()
        case PictureKind.PLOT:
            why = None if isinstance(counted.statement, PlotQuestion) else NoPlot()
        case _:
            assert_never(kind)
    if why is not None:
        return why
    if _drawn(working, kind, paper):
        return None
    narrow = kind is PictureKind.AREA and quotient_of(counted) is None and too_narrow(counted)
    return TooSmallBeside() if narrow else NoRoom()


def _in_steps(working: Working) -> bool:
    return isinstance(working.statement, Question) and has_steps(working.statement.asked)


def _of_factors(working: Working) -> bool:
    asked = working.statement
    return isinstance(asked, FactorQuestion) or (
        isinstance(asked, Listing) and asked.sort is ListSort.FACTORS
    )


def _times_a_sum(working: Working) -> bool:
    return isinstance(working.statement, Question) and of_sum(working.statement.asked) is not None


def _as_counted(working: Working, kind: PictureKind) -> Working:
    """Return a working without the lines that no picture shows; of groups it is the division.

    A line that only writes its answer with fewer pieces is seen in a bar.
    """
    if isinstance(working.statement, WholeGroups):
        return divided_in_groups(working)
    only_named = isinstance(working.lines[-1].because, FewestPieces) and not renames(working)
    if kind is PictureKind.BAR or not only_named:
        return working
    return replace(working, lines=working.lines[:-1])


def _draw(working: Working, kind: PictureKind, paper: PicturePaper) -> Picture:
    """Draw a picture of a kind. Raises NotDrawnError where there is no room for it."""
    match kind:
        case PictureKind.STRIPS:
            return strips(working, paper)
        case PictureKind.DISCS:
            return discs(working, paper)
        case PictureKind.RECTANGLES:
            return rectangles(working, paper)
        case PictureKind.GRID:
            return grid(working, paper)
        case PictureKind.LINE:
            return number_line(working, paper)
        case PictureKind.RULER:
            return ruler(working, paper)
        case PictureKind.SPLIT:
            return split(working)
        case PictureKind.BLOCKS:
            return blocks(working, paper)
        case PictureKind.BAR:
            if part_whole(working.statement) is None and _in_steps(working):
                return drawn_steps(working)
            return (with_columns(working) if paper.least else None) or bar(working)
        case PictureKind.SHARES:
            return shares(working, paper)
        case PictureKind.AREA if _of_factors(working):
            return arrays(working)
        case PictureKind.AREA:
            return area(working) if quotient_of(working) is None else shared_area(working)
        case PictureKind.COLUMNS:
            return squared(working)
        case PictureKind.PLOT:
            return line_plot(working, paper)
        case _:
            assert_never(kind)


@lru_cache(maxsize=128)
def _drawn(working: Working, kind: PictureKind, paper: PicturePaper) -> Picture | None:
    """Draw a picture once; None where there is no room for it.

    Writing the answer with fewer pieces changes its name and no amount: what is counted is that of the line
    before.
    """
    try:
        counted = _as_counted(working, kind)
        drawn = _draw(counted, kind, paper)
    except NotDrawnError:
        return None
    if not can_be_read(drawn.scenes, paper):
        return None
    before = counted.lines[0] is not working.lines[0]
    more = len(working.lines) - len(counted.lines) - before
    return replace(
        drawn, scenes=(*drawn.scenes[:before], *drawn.scenes, *(drawn.scenes[-1] for _ in range(more)))
    )


def _off_line(working: Working) -> Unpictured | None:
    if isinstance(working.statement, Rounding):
        return None
    plan = jump_plan(working)
    if plan is None:
        return NoPlaceOnLine()
    most = MOST_GROUPS if plan.measured else MOST_JUMPS
    if len(plan.jumps) > most:
        return TooManyJumps(len(plan.jumps), most)
    return None


def _off_ruler(working: Working) -> Unpictured | None:
    plan = jump_plan(working)
    if plan is None or not on_ruler(plan.ladder, plan.furthest):
        return NotOnRuler()
    return _off_line(working)


def _no_blocks(working: Working) -> Unpictured | None:
    if blocks_of(working) is not None:
        return None
    if any(quantity.ladder.style not in {Style.PLACES, Style.DECIMAL} for quantity in _asked(working)):
        return NoTensAndOnes()
    if working.strategy not in WAYS:
        return NotPlaceByPlace()
    return TooMuchForBlocks(MOST_IN_BLOCKS)
