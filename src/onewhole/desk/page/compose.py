"""Compose a page from wishes: chosen from every problem of the grade, with a proof of how good it is."""

from collections.abc import Collection, Hashable, Iterator, Sequence
from fractions import Fraction
from functools import reduce
from hashlib import sha256
from operator import or_
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from onewhole import __version__
from onewhole.desk.page.sheets import sheet_in
from onewhole.findings.habit import Habit
from onewhole.findings.wished_skill import LIKE
from onewhole.languages.english.habits import no_room_for
from onewhole.notations.sentences.text import text_of
from onewhole.presses import space_at_once
from onewhole.presses.files import write
from onewhole.presses.solver import SECONDS, bound, solve
from onewhole.sheets.candidates import PageCandidate, ProblemClass, ProblemSpace
from onewhole.sheets.clash import clash
from onewhole.sheets.composed import Composed, sheet_of, told_by
from onewhole.sheets.document import Sheet
from onewhole.sheets.drawn_space import drawn_space
from onewhole.sheets.header import Header
from onewhole.sheets.learning import Doubt, doubts, most, name_of
from onewhole.sheets.numbers_for import Wanted, numbers_for
from onewhole.sheets.one_plot import on_one_plot
from onewhole.sheets.page_program import Crowded, page_program
from onewhole.sheets.recipe import Recipe, RecipeError, read_recipe
from onewhole.sheets.review import apart_from, reviewed
from onewhole.sheets.told_page import stories_on, told_page
from onewhole.sheets.wishes import Wishes
from onewhole.sheets.writing import write_sheet
from onewhole.statements.statement import Statement
from onewhole.writers.compose_json import Json, composed_object

__all__ = ["SECONDS", "as_object", "compose", "compose_again", "compose_file_again", "keep", "told", "typed"]


#: So many pairs that stay open are named on the terminal; JSON has them all.
MOST_NAMED = 6


class _Choice(Struct, frozen=True):
    """What was chosen: kinds with their counts, problems, review, and under which habits and cuts."""

    kinds: tuple[ProblemClass, ...]
    problems: tuple[PageCandidate, ...]
    review: tuple[Statement, ...]
    habits: tuple[Habit, ...]
    crowded: tuple[Crowded, ...]
    stopped: bool


def compose(
    wishes: Wishes,
    *,
    title: str = "",
    header: Header | None = None,
    seconds: int = SECONDS,
    version: str = __version__,
) -> Composed:
    """Compose a page that teaches the most about the class, within the wishes.

    ``title`` is what the page is called; where there is a ``header``, it stands at the top instead, but for
    the strategy, the minutes and the recipe. The same wishes give the same page with the same version, unless
    the solver's time is up. Raises ClashError for wishes that cannot be met together, with the nearest that
    can.

    >>> composed = compose(Wishes(number=4, denominators=(4, 8)))
    >>> len(composed.sheet.problems), composed.gap < 0.01
    (4, True)
    """
    every = space(wishes, doubts(wishes))
    tellable = _tellable(every)
    open_doubts = doubts(wishes, tellable)
    chosen = _with_habits(every, wishes, open_doubts, seconds)
    if chosen is None:
        raise clash(wishes, _fits)
    recipe = Recipe(version, wishes)
    example = _example(every, wishes, chosen) if wishes.faded else None
    top = Header(title=title) if header is None else header
    sheet = sheet_of(top, recipe, _problems(chosen, wishes, open_doubts), chosen.review, example)
    sheet = told_page(sheet, wishes.told, seed=wishes.seed, minutes=wishes.minutes, but=wishes.back)
    apart, taught = told_by(sheet, open_doubts, [kind.tells for kind in chosen.kinds])
    habits = [habit for habit in chosen.habits if habit is not Habit.NUMBERS]
    program = page_program(
        every.kinds, open_doubts, wishes, habits=habits, crowded=chosen.crowded, ties=False
    )
    return Composed(
        sheet,
        recipe,
        taught,
        bound(program, seconds=seconds),
        most(open_doubts),
        every.listed,
        apart,
        (*_notes(wishes, chosen, open_doubts, tellable), *_not_told(wishes, sheet)),
        chosen.stopped,
        every.drawn,
    )


def composed_apart(
    wishes: Wishes, header: Header, twins: Collection[Hashable] = ()
) -> tuple[Sheet, tuple[str, ...]]:
    """Compose a page of a row of pages, and the notes about it; how good it is is not worked out.

    No problem of it has one of these twins (:attr:`.PageCandidate.twin`), where its problems are not drawn.
    Raises ClashError as :func:`compose` does.
    """
    every = space(wishes, doubts(wishes), twins)
    tellable = _tellable(every)
    open_doubts = doubts(wishes, tellable)
    chosen = _with_habits(every, wishes, open_doubts, SECONDS)
    if chosen is None:
        raise clash(wishes, _fits)
    problems = _problems(chosen, wishes, open_doubts)
    sheet = sheet_of(header, Recipe(__version__, wishes), problems, chosen.review, None)
    return sheet, tuple(_notes(wishes, chosen, open_doubts, tellable))


def _problems(chosen: _Choice, wishes: Wishes, open_doubts: Sequence[Doubt]) -> tuple[Statement, ...]:
    """Return the problems of a page, questions about line plots on as few plots as teach the same."""
    return on_one_plot([one.statement for one in chosen.problems], open_doubts, frozenset(wishes.avoid))


def _tellable(every: ProblemSpace) -> int:
    """Return a bit for each doubt that some problem settles."""
    return reduce(or_, (kind.tells for kind in every.kinds), 0)


def space(wishes: Wishes, open_doubts: Sequence[Doubt], twins: Collection[Hashable] = ()) -> ProblemSpace:
    """Return the problems that a page may be composed of: all that there are, or drawn by the seed.

    Of all that there are those with one of the ``twins`` are left out.
    """
    if wishes.skill in LIKE:
        return space_at_once.space(wishes, open_doubts, crowd=wishes.number, twins=twins)
    return drawn_space(wishes, open_doubts)


def compose_again(sheet: Sheet, *, seconds: int = SECONDS) -> Composed:
    """Compose the page of a sheet again from its recipe; what else stands in its header is kept.

    A note says when another version made it, or when it comes out otherwise. Raises RecipeError for a sheet
    without a recipe.
    """
    if not sheet.header.recipe:
        msg = "this sheet has no recipe: it was not composed"
        raise RecipeError(msg, remedy="Compose a page first: onewhole compose --to SHEET.")
    recipe = read_recipe(sheet.header.recipe)
    again = compose(recipe.wishes, header=sheet.header, seconds=seconds, version=recipe.version)
    notes = list(again.notes)
    if recipe.version != __version__:
        notes.append(f"Version {recipe.version} composed this page; this is {__version__}.")
    if again.sheet.problems != sheet.problems:
        notes.append("The page comes out otherwise than the sheet says.")
    return replace(again, notes=tuple(notes))


def compose_file_again(path: Path, *, seconds: int = SECONDS) -> Composed:
    """Compose the page of the sheet in a file again."""
    return compose_again(sheet_in(path), seconds=seconds)


def keep(composed: Composed, path: Path) -> None:
    """Write a composed page to a file, whole or not at all. Raises FileRefused."""
    write(path, typed(composed).encode())


def typed(composed: Composed) -> str:
    """Return the composed page as the text of a sheet."""
    return write_sheet(composed.sheet)


def as_object(composed: Composed) -> Json:
    """Return a composed page as a JSON object."""
    return composed_object(composed)


def told(composed: Composed) -> tuple[str, ...]:
    """Return in plain lines what the page tells apart, what it leaves open, how good it is, and the notes."""
    apart = sum(1 for one in composed.told if one.labels)
    never = [f"{name_of(one.first)} and {name_of(one.second)}" for one in composed.told if not one.labels]
    less = f"less than {_percent(composed.least_left)}" if composed.gap else "less"
    more = ", which the seed drew from more" if composed.drawn else ""
    left = _percent(composed.doubt_left)
    of_these = "of these problems" if composed.drawn else "with these wishes"
    return (
        f"Chosen from {composed.listed} problems{more}. It leaves {left} of the doubt.",
        f"Proven: no page {of_these} leaves {less}.",
        f"Tells apart {apart} of {len(composed.told)} pairs of patterns.",
        *_open(never),
        *composed.notes,
    )


def _open(never: Sequence[str]) -> Iterator[str]:
    if never:
        more = f" and {len(never) - MOST_NAMED} more pairs" if len(never) > MOST_NAMED else ""
        yield f"Not told apart: {'; '.join(never[:MOST_NAMED])}{more}."


def _percent(share: Fraction) -> str:
    """Write a share in hundredths of a percent."""
    hundredths = round(share * 10_000)
    return f"{hundredths // 100}.{hundredths % 100:02} %"


def _with_habits(
    every: ProblemSpace, wishes: Wishes, open_doubts: Sequence[Doubt], seconds: int
) -> _Choice | None:
    """Choose with all habits of a good page, or with each for which the others before it leave room."""
    if found := _choice(every, wishes, open_doubts, tuple(Habit), seconds):
        return found
    found = _choice(every, wishes, open_doubts, (), seconds)
    for habit in Habit:
        if found is not None:
            found = _choice(every, wishes, open_doubts, (*found.habits, habit), seconds) or found
    return found


def _choice(
    every: ProblemSpace,
    wishes: Wishes,
    open_doubts: Sequence[Doubt],
    habits: tuple[Habit, ...],
    seconds: int,
) -> _Choice | None:
    """Choose problem classes, then problems; where twins leave too few, add that limit and solve again."""
    crowded: tuple[Crowded, ...] = ()
    while True:
        program = page_program(every.kinds, open_doubts, wishes, habits=habits, crowded=crowded)
        solution = solve(program, seconds=seconds)
        if solution is None:
            return None
        wanted = [
            Wanted(place, count, apart_from(wishes.back, every.members(kind)))
            for place, (kind, count) in enumerate(zip(every.kinds, solution.counts, strict=False))
            if count
        ]
        problems = numbers_for(wanted, wishes.seed)
        if isinstance(problems, Crowded):
            crowded = (*crowded, problems)
            continue
        review = reviewed(wishes, [one.statement for one in problems])
        if review is None:
            return None
        kinds = tuple(every.kinds[one.place] for one in wanted for _ in range(one.count))
        return _Choice(kinds, problems, review, habits, crowded, solution.stopped)


def _not_told(wishes: Wishes, sheet: Sheet) -> Iterator[str]:
    told = stories_on(sheet)
    if told < wishes.told:
        yield f"{told} of {wishes.told} stories are told: no easy words, or no minutes, for the others."


def _fits(wishes: Wishes) -> bool:
    """Say whether any page at all keeps to wishes, whatever it teaches and without good habits."""
    return _choice(space(wishes, ()), wishes, (), (), SECONDS) is not None


def _example(every: ProblemSpace, wishes: Wishes, chosen: _Choice) -> PageCandidate | None:
    """Choose the worked example: one whole regrouped, easy for its sort, no twin of a problem on the page."""
    taken = {one.twin for one in chosen.problems}
    kinds = sorted(every.kinds, key=lambda kind: (not kind.sort.regroups, kind.sort.whole_on_top, kind.level))
    for kind in kinds:
        free = [one for one in every.members(kind) if one.twin not in taken]
        if free:
            return min(free, key=lambda one: sha256(f"{wishes.seed} example {one}".encode()).digest())
    return None


def _notes(wishes: Wishes, chosen: _Choice, open_doubts: Sequence[Doubt], tellable: int) -> Iterator[str]:
    for habit in Habit:
        if habit not in chosen.habits:
            yield text_of(no_room_for(habit))
    if any(kind.hidden for kind in chosen.kinds):
        yield "Some numbers hide what a pupil thinks: with these wishes none do better. See the audit."
    if wishes.regrouping in {0, 1} and wishes.number > 1:
        yield "All problems need regrouping, or none, as wished. A mixed page teaches more (K11)."
    asked = {(one.first, one.second): one.weight for one in wishes.questions}
    never = [(one.first, one.second) for at, one in enumerate(open_doubts) if not tellable >> at & 1]
    if open_ones := sorted(filter(asked.__contains__, never), key=lambda pair: -asked[pair]):
        first, second = map(name_of, open_ones[0])
        yield f"No problem of this skill settles all that is open ({first} or {second}): ask the child."
    if chosen.stopped:
        yield "Time was up before the solver was done: the page may come out otherwise another time."
