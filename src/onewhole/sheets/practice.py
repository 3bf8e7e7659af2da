"""A practice page: problems parallel to those missed, one review problem, one mistake to find."""

from collections.abc import Hashable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import islice

from msgspec.structs import replace

from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.telling import ToldAs
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.traps import core_traps
from onewhole.problems.twins import twin_key
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.earlier_skill import review
from onewhole.sheets.find_the_slip import FindTheSlip, find_the_slip
from onewhole.sheets.header import CornerMarks, Header
from onewhole.sheets.labelled import labelled
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Statement

#: How many problems a practice page has, the review among them; our own.
PRACTICE = 6
#: With a mistake to find below them there are fewer, so that they fit on one page of paper.
BESIDE_A_SLIP = 4
#: So many parallels are tried for the one that best distinguishes the open patterns.
WINDOW = 4


@dataclass(frozen=True)
class Practice:
    """A practice page.

    ``review`` is the label of the review problem, or None. ``slip`` is a wrong worked example to mend after
    the last problem, or None. Raises ValueError for labels that do not fit the page.
    """

    sheet: Sheet
    review: str | None = None
    slip: FindTheSlip | None = None

    def __post_init__(self) -> None:
        """Refuse a review that is not there, and a slip under a label that is taken."""
        labels = {problem.label for problem in self.sheet.problems}
        if self.review is not None and self.review not in labels:
            msg = f"there is no problem {self.review} to come back to"
            raise ValueError(msg)
        if self.slip is not None and self.slip.label in labels:
            msg = f"the label {self.slip.label} is taken"
            raise ValueError(msg)

    @cached_property
    def worked(self) -> WorkedSheet:
        """Return the page with its problems worked, once for the page and its key."""
        return WorkedSheet(self.sheet)


def practice(
    header: Header,
    models: Sequence[Problem],
    words: str,
    *,
    patterns: Sequence[str] = (),
    earlier: Sequence[Statement] = (),
    due: Sequence[Statement] = (),
    find_slip: bool = False,
    count: int | None = None,
    skip: int = 0,
) -> Practice | None:
    """Return a page of problems with the structure of the given ones and new numbers, or None without any.

    ``models`` come in order of importance: each gives one problem in turn, those first on which one of the
    open ``patterns`` shows and is told apart; of each model's parallels, too, those are taken. A parallel of
    a word problem is told as a story. One of the ``count`` problems is a review: of a skill
    that is ``due``, from ``earlier``, or of a skill before tonight's
    (:func:`onewhole.sheets.earlier_skill.review`). With ``find_slip`` a wrong worked
    example of an open pattern stands last; it has no place on a first night. ``skip`` passes over so many
    parallels, so that two groups practise on different numbers as long as there are others. Without a
    ``count`` there are 6 problems, and 4 above a slip to find. ``words`` is the instruction at the top. The
    page climbs from easy to hard, so that the review is mixed in.

    >>> from onewhole.sheets.reading import read_sheet
    >>> night = read_sheet("1. 9 5/8 - 4 6/8")
    >>> made = practice(night.header, night.problems, "Work these.", patterns=["A02"], find_slip=True)
    >>> len(made.sheet.problems), made.review, made.slip.label
    (4, '1', '5')
    """
    if not models:
        return None
    if count is None:
        count = BESIDE_A_SLIP if find_slip else PRACTICE
    order = sorted(models, key=lambda model: not settles(model.statement, patterns, model.told))
    asked = [model.statement for model in models]
    back = review(asked, earlier, asked, due=due, skip=skip)
    told: dict[Statement, ToldAs | None] = {} if back is None else {back: None}
    told |= _chosen(order, patterns, count - len(told), skip, beside=tuple(told))
    if set(told) <= {back}:
        return None
    own, problems = labelled(
        replace(header, title="Practice", minutes=None, marks=CornerMarks.NONE, to_finish=None, recipe=""),
        told,
    )
    slip = None
    if find_slip:
        last, taken = str(len(problems) + 1), {*asked, *told}
        slip = find_the_slip(asked, patterns, header.strategy, label=last, taken=taken, skip=skip)
    came_back = next((one.label for one in problems if one.statement == back), None)
    return Practice(Sheet((Instruction(words), *problems), own), came_back, slip)


def settles(statement: Statement, patterns: Sequence[str], telling: ToldAs | None = None) -> int:
    """Return how many of the patterns show on a statement and can be distinguished there.

    ``telling`` is how a story tells it.
    A pattern is distinguished when no other of them, and no core pattern, writes the same.

    >>> from onewhole.statements.reading import read_statement
    >>> [settles(read_statement(typed), ["A01"]) for typed in ("9 5/8 - 4 6/8", "5 1/8 - 2 5/8")]
    [1, 0]
    """
    if not patterns:
        return 0
    near = dict.fromkeys((*patterns, *core_traps(statement).shown))
    slips = [slip for key in near if (slip := by_id(key).slip(statement, telling))]
    wrote = [slip.wrote for slip in slips]
    return sum(slip.pattern in patterns and wrote.count(slip.wrote) == 1 for slip in slips)


def _chosen(
    models: Sequence[Problem], patterns: Sequence[str], count: int, skip: int, *, beside: Sequence[Statement]
) -> dict[Statement, ToldAs | None]:
    """Take parallels of the models in turn, and say of each how it is told, None for numbers alone.

    No model itself is among them, and no twin of one that is taken already or stands ``beside`` them.
    """
    asked = {model.statement for model in models}
    taken: set[Hashable] = {twin_key(one) for one in beside}
    streams = [(_turned(model, patterns, skip), model.told) for model in models]
    chosen: dict[Statement, ToldAs | None] = {}
    while streams and len(chosen) < count:
        for stream, tell in tuple(streams):
            found = next((one for one in stream if one not in asked and twin_key(one) not in taken), None)
            if found is None:
                streams.remove((stream, tell))
            elif len(chosen) < count:
                taken.add(twin_key(found))
                chosen[found] = tell
    return chosen


def _turned(model: Problem, patterns: Sequence[str], skip: int) -> Iterator[Statement]:
    """Yield parallels of a model after the first few, and then those: some models have hardly any."""
    yield from islice(_best_first(model, patterns), skip, None)
    yield from islice(_best_first(model, patterns), skip)


def _best_first(model: Problem, patterns: Sequence[str]) -> Iterator[Statement]:
    """Yield parallels of a model in small batches, in each batch those first that settle most."""
    stream = parallel(model.statement)
    while window := list(islice(stream, WINDOW if patterns else 1)):
        yield from sorted(window, key=lambda one: -settles(one, patterns, model.told))
