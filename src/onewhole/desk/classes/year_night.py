"""A night of a year composed: when its day comes, with what the class has shown meanwhile."""

from collections.abc import Collection, Hashable, Iterable, Iterator, Sequence
from contextlib import suppress
from fractions import Fraction
from functools import lru_cache
from hashlib import sha256
from itertools import chain, islice
from math import ceil, floor

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.year_plan import YearNight
from onewhole.desk.page.compose import composed_apart
from onewhole.errors import InputError, OnewholeError
from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.notations.text import text
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.candidates import LikePair
from onewhole.sheets.clash import ClashError
from onewhole.sheets.document import Sheet
from onewhole.sheets.drawing import draw
from onewhole.sheets.header import Header
from onewhole.sheets.spaces.amounts import mixed_numbers
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.spaces.table import forms_of
from onewhole.sheets.told_page import told_page
from onewhole.sheets.wishes import OpenQuestion, Wishes
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.sheets.years.topic import TopicPage
from onewhole.sheets.years.year_wishes import YearWishes
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement, asked_quantities

#: So many problems of a page of a story topic are told as word problems; our own.
STORIES = 2
#: So many problems of a skill are looked at to know how long one takes, and to find one that is free.
LOOKED_AT, SEARCHED = 6, 200
#: A page has at least so many problems of its own skill.
FEWEST = 3
#: So many problems for each of a page stay free to choose from.
KEPT_FREE = 2
PAIR = 2
#: Problems of a skill are drawn so many times over in search of new ones, each time with another seed.
DRAWS, ANOTHER_DRAW = 6, 100


class NoPageError(InputError):
    """No page is composed for a night."""


class NightComposed(Struct, frozen=True):
    """The page of a night as typed, how many minutes it takes, and what was not as usual."""

    sheet: Sheet
    minutes: int
    told: tuple[str, ...]

    @property
    def typed(self) -> str:
        """Return the page as it is typed."""
        return write_sheet(self.sheet)


class _Fresh(Struct, frozen=True):
    """Wishes for a night, and the twins that none of its problems with like denominators is one of."""

    wishes: Wishes
    twins: frozenset[Hashable]


def compose_night(
    night: YearNight,
    year: YearWishes,
    header: Header,
    *,
    before: Collection[str] = (),
    back: Sequence[str] = (),
    questions: Sequence[OpenQuestion] = (),
) -> NightComposed:
    """Compose the page of a night: problems of its topic, and some of topics that come back.

    ``before`` are problems of earlier nights as typed: none comes again while others are left. ``back`` are
    problems with which the class comes back to what its answers say is due: they come before what the plan
    has for the night.
    ``questions`` are those that answers left open. The page keeps to the minutes of the year. Raises
    NoPageError for a night on which nothing can be asked yet.
    """
    if night.page is None or night.of is None:
        what = f"there is nothing yet that could come back on {night.day.isoformat()}"
        raise NoPageError(what, remedy="Type a page on the topic of the week.")
    gone = set(map(_twin, before))
    returning = list(back)
    for topic in night.back:
        if len(returning) >= max(len(night.back), len(back)):
            break
        page = topic.pages[night.at % len(topic.pages)]
        taken = gone | set(map(_twin, returning))
        returning += islice(_free(page, night.at, taken), 1)
    header = replace(header, title=_title(night), date="", minutes=None, recipe="", grade=year.grade)
    number = min(year.problems, _room(night, year, returning))
    wishes = Wishes(
        skill=night.page.skill,
        denominators=night.page.denominators,
        digits=night.page.digits,
        number=number,
        minutes=year.minutes,
        back=tuple(returning),
        questions=tuple(questions),
        seed=night.of.week,
    )
    fresh = _Fresh(_fresh(wishes, before), _like_twins(before) if wishes.skill in LIKE else frozenset())
    sheet, told = _fitting(fresh, header)
    if night.own and night.of.stories:
        sheet = told_page(sheet, STORIES, seed=night.at, minutes=year.minutes)
    return NightComposed(sheet, ceil(WorkedSheet(sheet).minutes), told)


def _fresh(wishes: Wishes, before: Collection[str]) -> Wishes:
    """Return the wishes for a page of which no problem is a twin of one of the year, while there are others.

    Of the problems that are drawn for the week those are avoided of which a twin stood on an earlier night.
    Where too few are left, others are drawn, a few times over; where all of these are used up, problems of
    the nights longest ago may come again, the oldest first. Those of like denominators are all there, and
    are left out by their twins.
    """
    if wishes.skill in LIKE:
        return wishes
    since = {_twin(one): at for at, one in enumerate(before)}
    best, fewest = wishes, None
    for again in range(DRAWS):
        asked = replace(wishes, seed=wishes.seed + again * ANOTHER_DRAW)
        drawn = draw(asked).problems
        used = sorted((one for one in drawn if one.twin in since), key=lambda one: -since[one.twin])
        most = max(0, len(drawn) - KEPT_FREE * wishes.number)
        avoided = tuple(one.typed for one in used[:most])
        left = len(used) - len(avoided)
        if fewest is None or left < fewest:
            best, fewest = replace(asked, avoid=avoided), left
        if not left:
            break
    return best


def _like_twins(before: Iterable[str]) -> frozenset[Hashable]:
    """Return what twins of earlier problems with like denominators have in common."""
    return frozenset(map(_like_twin, before))


@lru_cache(maxsize=8192)
def _like_twin(typed: str) -> Hashable:
    """Return the twin of a problem as all problems with like denominators have theirs; None for another."""
    statement = read_statement(typed)
    wanted = needs(statement)
    signed = asked_quantities(statement) if isinstance(statement, Question) else None
    if signed is None or len(signed) != PAIR or len(wanted.denominators) != 1:
        return None
    (first, _), (second, taken) = signed
    ladder = mixed(wanted.denominators[0])
    if not {first.ladder.style, second.ladder.style} <= {Style.PLACES, Style.MIXED}:
        return None
    (w1, n1), (w2, n2) = (one.on(ladder).amounts for one in (first, second))
    return LikePair(w1, n1, w2, n2, ladder.denominator, taken).twin


@lru_cache(maxsize=8192)
def _twin(typed: str) -> Hashable:
    return twin_key(read_statement(typed))


def _title(night: YearNight) -> str:
    topic = night.of.called if night.of else ""
    return f"Week {night.week.number}: {topic}"


def _fitting(fresh: _Fresh, header: Header) -> tuple[Sheet, tuple[str, ...]]:
    """Compose with as many problems as find room, then with less that comes back.

    Raises ClashError where not even a short page can be composed.
    """
    wishes, twins = fresh.wishes, fresh.twins
    tries = [(number, len(wishes.back)) for number in range(wishes.number, len(wishes.back), -2)]
    tries += [(FEWEST + count, count) for count in range(len(wishes.back) - 1, -1, -1)]
    with suppress(ClashError):
        return _composed(wishes, header, twins)
    open_wishes = replace(wishes, regrouping=None)
    for number, count in tries:
        with suppress(ClashError):
            return _composed(replace(open_wishes, number=number, back=wishes.back[:count]), header, twins)
    return _composed(replace(open_wishes, number=FEWEST, back=(), avoid=()), header)


def _composed(
    wishes: Wishes, header: Header, twins: Collection[Hashable] = ()
) -> tuple[Sheet, tuple[str, ...]]:
    sheet, told = composed_apart(wishes, header, twins)
    return replace(sheet, header=replace(sheet.header, recipe="")), told


def _room(night: YearNight, year: YearWishes, returning: Sequence[str]) -> int:
    """Return how many problems the minutes have room for, by the longest of some of them."""
    assert night.page is not None
    left = year.minutes - sum(_takes(read_statement(one)) for one in returning)
    longest = max(
        (_takes(one) for one in islice(askable(night.page, night.at), LOOKED_AT)), default=Fraction(1)
    )
    return len(returning) + max(FEWEST, floor(left / longest))


def _takes(statement: Statement) -> Fraction:
    return WorkedProblem(Problem("1", statement, text(statement))).minutes


def _free(page: TopicPage, seed: int, taken: Collection[object]) -> Iterator[str]:
    """Yield problems of a skill, none a twin of those that are taken."""
    for one in islice(askable(page, seed), SEARCHED):
        if twin_key(one) not in taken:
            yield text(one)


def askable(page: TopicPage, seed: int) -> Iterator[Statement]:
    """Yield problems of a page, its forms in turn, in an order that the seed gives."""
    wishes = Wishes(skill=page.skill, denominators=page.denominators, digits=page.digits, seed=seed)
    forms = sorted(_forms(wishes), key=lambda form: sha256(f"{seed} {form.template}".encode()).digest())
    walks = [form.walk(seed, SEARCHED) for form in forms]
    for typed in chain.from_iterable(zip(*walks, strict=False)) if walks else ():
        try:
            statement = read_statement(typed)
            right = answer(statement)
        except OnewholeError:
            continue
        if not isinstance(right, Quantity) or right.value:
            yield statement


def _forms(wishes: Wishes) -> Iterable[ProblemForm]:
    if wishes.skill not in LIKE:
        return [form for row in forms_of(wishes) for form in row if form.size]
    signs = {WishedSkill.ADD: "+", WishedSkill.SUBTRACT: "-"}.get(wishes.skill, "+-")
    return [
        ProblemForm(f"{{0}} {sign} {{1}}", (numbers, numbers))
        for sign in signs
        for one in wishes.denominators
        if (numbers := mixed_numbers(one, wishes.largest))
    ]
