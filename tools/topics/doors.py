"""What each door does with a topic's example: the door is run, and the cell tells what came out of it."""

from collections.abc import Callable, Hashable, Iterator, Mapping
from functools import lru_cache
from itertools import islice
from types import MappingProxyType

from onewhole.desk.page.compose import compose
from onewhole.desk.walkthrough.board import ROLES, board
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.errors import OnewholeError
from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect_worked
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.marking.reading.writing import amount
from onewhole.notations.text import printed, text
from onewhole.number.ladder import Style
from onewhole.number.quantity import whole
from onewhole.pictures.choosing import chosen, picture
from onewhole.pictures.picture import Picture
from onewhole.problems.about import about
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.document import Sheet
from onewhole.sheets.drawing import draw
from onewhole.sheets.standards import TENTHS_AND_HUNDREDTHS
from onewhole.sheets.stories import story
from onewhole.sheets.wishes import Wishes
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.walkthroughs.cue import Role
from onewhole.working.questions import suiting

#: So many other problems are looked for.
OTHERS = 5
#: Problems of a page that is composed to see which topics it serves.
COMPOSED = 3


def _typed(one: WorkedProblem) -> str:
    """Return the example as it is written again, when it reads back as the same problem."""
    again = text(one.statement)
    return f"`{again}`" if read_statement(again) == one.statement else ""


def _worked(one: WorkedProblem) -> str:
    if one.working is None:
        return ""
    ways = len(tuple(suiting(one.statement))) if isinstance(one.statement, Question) else 1
    return f"{len(one.working.lines)} lines, {ways} {'way' if ways == 1 else 'ways'}"


def _pictured(one: WorkedProblem) -> str:
    kind = chosen(one.working) if one.working else None
    return kind.value if kind and one.working and isinstance(picture(one.working, kind), Picture) else ""


def _filmed(one: WorkedProblem) -> str:
    """Return how many steps of a working are told on the board, an answer alone is none."""
    part = board(Sheet((one.problem,)), FilmPlan()).part(one.label)
    if part is None or one.working is None:
        return ""
    steps = sum(step.role in {ROLES[Role.LINE], ROLES[Role.ANSWER]} for step in part.steps)
    return f"{steps} {'step' if steps == 1 else 'steps'}"


def _patterns(one: WorkedProblem) -> str:
    if not one.slips:
        return ""
    first = one.slips[0]
    return f"{len(one.slips)}, such as {first.pattern}: {printed(first.wrote)}"


def _marked(one: WorkedProblem) -> str:
    """Return the right answer when it is marked right as it is written, and another one is not."""
    asked, right = expect_worked(one), printed(one.answer)
    untrue = (slip.wrote for slip in one.slips if amount(slip.wrote) != amount(one.answer))
    wrong = printed(next(untrue, whole(1_000_001)))
    verdicts = [mark(asked, read_written(written, one.problem)).verdict for written in (right, wrong)]
    return right if verdicts[0] is Verdict.RIGHT and verdicts[1] is Verdict.WRONG else ""


def _composed(one: WorkedProblem) -> str:
    """Return a skill whose pages are composed of such problems, with one of them."""
    sort = _sort(one.statement)
    return next((f"{skill}: `{found[sort]}`" for skill, found in _composable() if sort in found), "")


def _again(one: WorkedProblem) -> str:
    found = tuple(islice(parallel(one.statement), OTHERS))
    return f"`{text(found[0])}`" if len(found) == OTHERS else ""


def _told(one: WorkedProblem) -> str:
    try:
        return story(one.statement).structure.value
    except NoStoryError:
        return ""


@lru_cache(maxsize=1)
def _composable() -> tuple[tuple[str, Mapping[Hashable, str]], ...]:
    """Return for each skill the sorts of problems that its pages are composed of, with one of each."""
    return tuple((skill.value, _problems_of(Wishes(skill=skill, number=COMPOSED))) for skill in WishedSkill)


def _problems_of(wishes: Wishes) -> Mapping[Hashable, str]:
    problems = compose(wishes).sheet.problems if wishes.skill in LIKE else draw(wishes).problems
    return {_sort(one.statement): one.typed for one in problems}


def _sort(statement: Statement) -> Hashable:
    """Return what problems of one sort have in common: what is done, with which units, how many numbers.

    Of a number that stands alone also whether it has wholes.
    """
    wanted, numbers = needs(statement), numbers_of(statement)
    ladders = frozenset((one.ladder.style, *(unit.mark for unit in one.ladder.units)) for one in numbers)
    styles = frozenset(style for style, *_ in ladders)
    measures = ladders if styles == {Style.MEASURE} else styles
    alone = len(numbers) == 1 and bool(numbers[0].amounts[0])
    tenths = wanted.denominators == TENTHS_AND_HUNDREDTHS
    return type(statement), about(statement, wanted), wanted.numbers, measures, alone, tenths


#: The doors by the heads of their columns; each gives "" for what it does not do.
DOORS: Mapping[str, Callable[[WorkedProblem], str]] = MappingProxyType(
    {
        "typed": _typed,
        "worked": _worked,
        "pictured": _pictured,
        "filmed": _filmed,
        "patterns": _patterns,
        "marked": _marked,
        "composed": _composed,
        "again, practised": _again,
        "told": _told,
    }
)


def cells(typed: str) -> Iterator[str]:
    """Yield what each door makes of a typed problem, "" where it makes nothing of it.

    >>> next(cells("52 - 27")), next(cells("52 minus"))
    ('`52 - 27`', '')
    """
    try:
        statement: Statement | None = read_statement(typed)
    except OnewholeError:
        statement = None
    for door in DOORS.values():
        yield "" if statement is None else _tried(door, WorkedProblem(Problem("1", statement, typed)))


def _tried(door: Callable[[WorkedProblem], str], one: WorkedProblem) -> str:
    """Return what comes out of a door, or "" where it refuses."""
    try:
        return door(one)
    except OnewholeError:
        return ""
