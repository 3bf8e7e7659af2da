"""Tell a typed problem as a word problem of the kite club."""

from onewhole.languages.english.words import ClassWords
from onewhole.notations.text import text
from onewhole.sheets.reading_level import AIM, ReadingLevel
from onewhole.sheets.stories import Story, story, structure_named
from onewhole.statements.reading import read_statement

Json = dict[str, object]


def tell(problem: str, *, kind: str | None = None, seed: int = 0, whole: str | None = None) -> Story:
    """Tell a typed problem as a word problem; the same problem, kind and seed give the same words.

    ``kind`` is take from, put together, compare, part unknown or same amount; None lets the seed choose.
    ``whole`` is what the class calls one whole (None: strip of kite paper). Raises ReadingError for text that
    is no problem, NoStoryError for a problem about which no story is told, UnknownStructureError.

    >>> tell("5 1/3 - 2 2/3", kind="compare", whole="strip").words.partition(".")[0]
    'All the strips are the same size'
    """
    return story(
        read_statement(problem),
        structure=None if kind is None else structure_named(kind),
        seed=seed,
        words=None if whole is None else ClassWords.for_whole(whole),
    )


def told(story: Story) -> tuple[str, ...]:
    """Return a story, what is known about it, and its line for a sheet."""
    counted = story.whole.whole in story.words or story.whole.wholes in story.words
    whole = f" with “whole: {story.whole.whole}”" if counted else ""
    return (
        story.words,
        f"  {story.structure.value}; reads {_grade(story.level)}",
        f"  for a sheet{whole}:",
        f"  1. {_line(story)}",
    )


def _grade(level: ReadingLevel) -> str:
    if level.grade < 1:
        return "below grade 1"
    hard = f", above {AIM}: shorter words may help" if level.hard else ""
    return f"at about grade {level.shown}{hard}"


def as_object(story: Story) -> Json:
    """Return a story as a JSON object; ``reading_grade`` is a Fraction."""
    return {
        "problem": text(story.statement),
        "story": story.words,
        "kind": story.structure.value,
        "whole": story.whole.whole,
        "reading_grade": story.level.grade,
        "line": _line(story),
    }


def _line(story: Story) -> str:
    return f"{text(story.statement)} | {story.words}"
