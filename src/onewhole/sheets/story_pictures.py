"""The bar picture of a word problem on a sheet: by its own words, where they are ours, how it is built."""

from msgspec import Struct

from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Scene
from onewhole.pictures.story_bar import story_scenes
from onewhole.problems.story_bars import story_shape
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header
from onewhole.sheets.stories import SHARED, told_as


class StoryPicture(Struct, frozen=True):
    """The bars of a story: with a blank for what it asks, and with what was found in its place."""

    blank: Scene
    found: Scene


def story_picture(entry: WorkedProblem, header: Header) -> StoryPicture | None:
    """Return the bars of a word problem; None for a problem without words, and where no bars are drawn.

    A story in words of the class's own gets the bars that hold for every story of its equation: 52 - 27 is a
    whole and its parts, also where two amounts are compared.

    >>> from onewhole.sheets.reading import read_sheet
    >>> from onewhole.sheets.worked import WorkedSheet
    >>> told = "The red kite takes 9 strips. The blue kite takes 5 strips. How many more is that?"
    >>> worked = WorkedSheet(read_sheet(f"1. 9 - 5 | {told}"))
    >>> len(story_picture(worked.problems[0], worked.header).blank.descriptions)
    3
    """
    problem, left = entry.problem, header.remainder
    if not problem.story:
        return None
    structure = told_as(problem, header.words, left)
    shared = left in SHARED
    blank = story_shape(problem.statement, structure, shared_out=shared)
    found = story_shape(problem.statement, structure, entry.answer, shared_out=shared)
    if blank is None or found is None:
        return None
    try:
        return StoryPicture(*story_scenes(blank, found))
    except NotDrawnError:
        return None
