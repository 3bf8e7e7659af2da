"""Some problems of a page told as stories: spread over the page, built otherwise from one to the next."""

from collections import Counter
from collections.abc import Collection, Iterator
from dataclasses import replace as changed

from msgspec.structs import replace

from onewhole.languages.table import spoken_by
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import NoStoryError
from onewhole.problems.story_structure import Structure
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.labelled import WAYS
from onewhole.sheets.reading_level import AIM
from onewhole.sheets.stories import Story, story
from onewhole.sheets.worked import WorkedSheet


def told_page(
    sheet: Sheet,
    number: int,
    *,
    seed: int = 0,
    minutes: int | None = None,
    but: Collection[str] = (),
) -> Sheet:
    r"""Return a page with so many problems told in the class's words, fewer where no more can be.

    They are spread over the page. Each story names one whole throughout (:class:`.Story`), reads at the grade
    aimed at, and is built as few of the others are. The page keeps to its ``minutes``; problems typed as in
    ``but`` stay as they are, and so do those that are told already. The header names what stories count.

    >>> from onewhole.sheets.reading import read_sheet
    >>> page = told_page(read_sheet("1. 52 - 27\n2. 84 / 4\n3. 64 - 18\n4. 7 x 8"), 2)
    >>> [bool(one.story) for one in page.problems]
    [False, True, False, True]
    """
    items = list(sheet.items)
    own = replace(sheet.header, words=spoken_by(sheet.header.words).stories.whole(sheet.header.words))
    open_places = [at for at, one in enumerate(items) if _open(one, but)]
    used: Counter[Structure] = Counter()
    for at in _spread(open_places, number):
        if used.total() == number:
            break
        before = items[at]
        assert isinstance(before, Problem), "only problems are told"
        if (made := _told(before, own, seed + at, used)) is None:
            continue
        told = made.problem(before.label)
        items[at] = changed(before, story=told.story, telling=told.telling)
        if minutes is not None and WorkedSheet(replace(sheet, items=tuple(items))).minutes > minutes:
            items[at] = before
        else:
            used[made.structure] += 1
    return replace(sheet, items=tuple(items), header=own) if used else sheet


def stories_on(sheet: Sheet) -> int:
    r"""Return how many problems of a page are told.

    >>> from onewhole.sheets.reading import read_sheet
    >>> stories_on(read_sheet("1. 52 - 27 | Ana has 52 kites and sells 27. How many are left?\n2. 5 - 2"))
    1
    """
    return sum(bool(one.story) for one in sheet.problems)


def _open(item: object, but: Collection[str]) -> bool:
    return isinstance(item, Problem) and not item.story and item.typed not in but


def _spread(places: list[int], number: int) -> Iterator[int]:
    """Yield so many places at equal distances, and then the others in their order."""
    wanted = min(number, len(places))
    first = [places[(2 * one + 1) * len(places) // (2 * wanted)] for one in range(wanted)]
    yield from first
    yield from (place for place in places if place not in first)


def _told(problem: Problem, header: Header, seed: int, used: Counter[Structure]) -> Story | None:
    """Tell a problem in easy words, built as few stories before it are; None where it cannot be told so."""
    try:
        ways = [
            story(problem.statement, seed=seed + more, words=header.words, remainder=header.remainder)
            for more in range(WAYS)
        ]
    except NoStoryError:
        return None
    easy = [one for one in ways if one.level.grade <= AIM]
    return min(easy, key=lambda one: used[one.structure], default=None)
