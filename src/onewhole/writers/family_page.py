"""The page for home: what the class does tonight, in short sentences and the class's own words."""

from collections.abc import Iterable
from fractions import Fraction
from itertools import islice

from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.pictures.choosing import picture
from onewhole.pictures.limits import MOST_WHOLES
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.squared import stills
from onewhole.problems.about import most_first
from onewhole.problems.needs import Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.parallel import parallel
from onewhole.problems.taught import as_taught
from onewhole.problems.worked import WorkedProblem
from onewhole.sentences.sentence import Sentence
from onewhole.sheets.header import Print
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Statement
from onewhole.working.line import leads
from onewhole.working.reasons.columns import InColumns
from onewhole.working.working import Working
from onewhole.writers.drawing import columns_drawing, drawing
from onewhole.writers.film_link import film_link
from onewhole.writers.formula import formula, set_on_page
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed
from onewhole.writers.questions_to_ask import questions_to_ask

#: So many parallel problems are looked at for a small one, of so many wholes.
LOOKED_AT = 20
SMALL = 5


def family_page(worked: WorkedSheet, words: ClassWords | None = None) -> Printed:
    """Return the page for home; its worked example is like tonight's problems and none of them.

    It is in the language of ``words``, the class's own where they are left out.
    """
    sheet = replace(worked.sheet, header=replace(worked.header, words=words or worked.header.words))
    words = sheet.header.words
    shown = _shown(worked)
    language = spoken_by(words)
    data = frame(sheet.header, title=language.page.for_home, small=named(sheet.header))
    data |= film_link(sheet.header.film, language.page) | {
        "opening": _opening(worked, shown, words),
        "asks": _asks(worked, words),
        "closing": set_on_page(language.home.closing(), language.tag),
    }
    if regrouped := [one.needs.operations for one in worked.problems if one.needs.regrouping]:
        taken, added = (any(done in one for one in regrouped) for done in (Operation.SUBTRACT, Operation.ADD))
        data["wording"] = set_on_page(language.home.wording(words, taken=taken, added=added), language.tag)
    if shown:
        data["example"] = _example(shown, words, large=sheet.header.print is Print.LARGE)
    return Printed("family", data)


def _shown(worked: WorkedSheet) -> Working | None:
    """Work a problem parallel to the first that needs regrouping (or to the first of all)."""
    ordered = sorted(worked.problems, key=lambda problem: not _telling(problem))
    asked = {problem.statement for problem in worked.problems}
    for problem in ordered:
        if other := _small(one for one in islice(parallel(problem.statement), LOOKED_AT) if one not in asked):
            return as_taught(other, worked.header.taught, worked.header.form)
    return None


def _small(found: Iterable[Statement]) -> Statement | None:
    """Return the first small problem, or the smallest that there is."""
    looked: list[Statement] = []
    for one in found:
        if _size(one) <= SMALL:
            return one
        looked.append(one)
    return min(looked, key=_size, default=None)


def _size(statement: Statement) -> Fraction:
    """Return how much paper the strips of a problem take: small wholes, but one at least is left."""
    first, *rest = [number.value for number in numbers_of(statement)]
    return first if all(first - other >= 1 for other in rest) else first + MOST_WHOLES


def _telling(problem: WorkedProblem) -> bool:
    found = problem.needs
    return found.regrouping and Operation.SUBTRACT in found.operations and not found.whole_first


def _opening(worked: WorkedSheet, shown: Working | None, words: ClassWords) -> list[object]:
    found = [one.needs for one in worked.problems]
    home = spoken_by(words).home
    told = [home.tonight({operation for one in found for operation in one.operations})]
    parts = _parts(shown)
    if parts and any(
        one.regrouping and one.denominators and Operation.SUBTRACT in one.operations for one in found
    ):
        told += home.opening(parts, words)
    return [set_on_page(paragraph, words.language) for paragraph in told]


def _parts(shown: Working | None) -> int | None:
    """Return how many pieces make a whole in the shown problem, where all numbers have the same pieces."""
    found = needs(shown.statement).denominators if shown else ()
    return found[0] if len(found) == 1 else None


def _example(shown: Working, words: ClassWords, *, large: bool) -> Json:
    steps: list[Json] = []
    said: tuple[Sentence, ...] = ()
    for at, line in enumerate(shown.lines):
        if line.because:
            said += spoken_by(words).working.reason(line.because, words)
        if line.aside and isinstance(line.because, InColumns):
            steps.append({"words": set_on_page(said, words.language)})
            said = ()
        if not line.aside and at:
            steps.append(
                {
                    "words": set_on_page(said, words.language),
                    "formula": formula(line.says, leads=leads(shown.lines, at), language=spoken_by(words)),
                }
            )
            said = ()
    found: Json = {
        "heading": spoken_by(words).page.how_we_do_it,
        "formula": formula(shown.statement, language=spoken_by(words)),
        "steps": steps,
    }
    drawn, columns = picture(shown), stills(shown)
    if drawn and (not columns or drawn.kind is PictureKind.BAR):
        found["drawing"] = drawing(drawn, words, large=large)
    if columns:
        found["columns" if "drawing" in found else "drawing"] = columns_drawing(
            columns[-1], words, large=large
        )
    return found


def _asks(worked: WorkedSheet, words: ClassWords) -> Json:
    language = spoken_by(words)
    abouts = most_first(one.about for one in worked.problems)
    asked = questions_to_ask(abouts, words) or (language.home.guess_asked(),)
    return {
        "heading": language.page.good_questions,
        "items": [set_on_page(one, words.language) for one in asked],
    }
