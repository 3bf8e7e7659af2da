"""Tell a typed problem as a word problem of the class."""

from onewhole.notations.text import text
from onewhole.sheets.reading_level import AIM, ReadingLevel
from onewhole.sheets.settings import header_of
from onewhole.sheets.stories import Story, story, structure_named
from onewhole.statements.reading import read_statement

Json = dict[str, object]


def tell(
    problem: str,
    *,
    kind: str | None = None,
    seed: int = 0,
    whole: str | None = None,
    stories: str | None = None,
) -> Story:
    """Tell a typed problem as a word problem; the same problem, kind and seed give the same words.

    ``kind`` is the name of a structure, such as take from or equal groups; None lets the seed choose.
    ``whole`` is what the class calls one whole (None: strip of kite paper), ``stories`` of whom its stories
    tell, or a setting by its name such as kitchen (None: the kite club, or the class where it has named
    another whole). Raises ReadingError for text that is no problem, NoStoryError for a problem about which no
    story is told, UnknownStructureError, and InputError for ``stories`` that do not say who does what.

    >>> tell("5 1/3 - 2 2/3", kind="compare", whole="strip").words.partition(".")[0]
    'All the strips are the same size'
    """
    header, wrong = header_of({"whole": whole or "", "stories": stories or ""})
    for error in wrong.values():
        raise error
    return story(
        read_statement(problem),
        structure=None if kind is None else structure_named(kind),
        seed=seed,
        words=header.words if whole or stories else None,
    )


def told(story: Story) -> tuple[str, ...]:
    """Return a story, what is known about it, and its line for a sheet."""
    said = [f"“whole: {story.whole.whole}”"] if story.counts_wholes else []
    said += [f"“stories: {story.whole.story.typed}”"] if story.whole.story else []
    own = f" with {' and '.join(said)}" if said else ""
    return (
        story.words,
        f"  {story.structure.value}; reads {_grade(story.level)}",
        f"  for a sheet{own}:",
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
        "stories": story.whole.story.typed if story.whole.story else None,
        "reading_grade": story.level.grade,
        "line": _line(story),
    }


def _line(story: Story) -> str:
    return f"{text(story.statement)} | {story.words}"
