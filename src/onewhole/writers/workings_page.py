"""The workings: every problem line by line, each line with its reason, then the checks."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.squared import stills
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header, Print
from onewhole.sheets.story_pictures import story_picture
from onewhole.sheets.worked import WorkedSheet
from onewhole.working.checks import Agreed, Check, Estimate, Undone
from onewhole.working.line import Line, leads
from onewhole.working.working import Working
from onewhole.writers.drawing import bars_drawing, columns_drawing, drawing
from onewhole.writers.formula import chain, formula, set_words
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed


def workings_page(worked: WorkedSheet) -> Printed:
    """Return every problem worked as the class was taught; what is not worked line by line is answered."""
    page = spoken_by(worked.header.words).page
    data = frame(worked.header, title=page.every_line, small=named(worked.header))
    large = worked.header.print is Print.LARGE
    problems = [_with_bars(entry, worked.header, large=large) for entry in worked.problems]
    return Printed(
        "workings",
        data | {"footer": page.for_the_teacher, "note": page.lighter_lines, "problems": problems},
    )


def _problem(entry: WorkedProblem, words: ClassWords, *, large: bool) -> Json:
    asked = {"label": f"{entry.label}.", "formula": formula(entry.statement, language=spoken_by(words))}
    if entry.working is None:
        line = {
            "formula": formula(entry.answer, leads=True, language=spoken_by(words)),
            "because": spoken_by(words).page.the_answer,
        }
        return asked | {"strategy": "", "lines": [line]}
    found = asked | lines_told(entry.working, words) | _in_columns(entry.working, words, large=large)
    drawn = picture(entry.working)
    if drawn and drawn.kind is PictureKind.COLUMNS:
        return found
    return found | {"drawing": drawing(drawn, words, large=large)} if drawn else found


def _with_bars(entry: WorkedProblem, header: Header, *, large: bool) -> Json:
    """Return a problem with the bars of its story before its lines, with a blank for what it asks."""
    found = _problem(entry, header.words, large=large)
    bars = story_picture(entry, header) if header.story_bars else None
    if bars is None:
        return found
    if entry.working and (drawn := picture(entry.working)) and drawn.kind is PictureKind.BAR:
        found.pop("drawing", None)
    return found | {"bars": bars_drawing(bars.blank, header.words)}


def _in_columns(working: Working, words: ClassWords, *, large: bool) -> Json:
    """Return the columns of a working drawn, and its lines beside them; nothing of any other working.

    A line that a pupil need not write is its reason alone.
    """
    drawn = stills(working)
    if not drawn:
        return {}
    lines = _lines(working, words)
    short = [{"because": told["because"], "aside": True} if told.get("aside") else told for told in lines]
    return {"lines": short, "columns": [columns_drawing(scene, words, large=large) for scene in drawn]}


def _lines(working: Working, words: ClassWords) -> list[Json]:
    """Return the lines after the problem itself, those that are equal to the line before with their sign."""
    return [_line(line, words, leads=leads(working.lines, at)) for at, line in enumerate(working.lines)][1:]


def lines_told(working: Working, words: ClassWords) -> Json:
    """Return the strategy's name, the lines after the problem itself, and the checks of a working."""
    return {
        "strategy": spoken_by(words).working.way(working, words),
        "lines": _lines(working, words),
        "checks": [_check(check, working, words) for check in working.checks],
    }


def _line(line: Line, words: ClassWords, *, leads: bool) -> Json:
    found: Json = {
        "formula": formula(line.says, leads=leads, language=spoken_by(words)),
        "because": set_words(spoken_by(words).working.reason(line.because, words)) if line.because else "",
    }
    if line.aside:
        found["aside"] = True
    if line.facts:
        found["facts"] = [set_words(spoken_by(words).working.fact(fact)) for fact in line.facts]
    return found


def _check(check: Check, working: Working, words: ClassWords) -> Json:
    language = spoken_by(words)
    match check:
        case Estimate():
            said = set_words(language.key.estimate(check), every=True)
            return {"name": language.page.estimate, "words": said, "holds": True}
        case Undone(links):
            return {"name": language.page.put_it_back, "formula": chain(links, language), "holds": True}
        case Agreed(strategy, reached):
            return {
                "name": language.working.way(working, words, strategy),
                "formula": formula(reached, language=language),
                "holds": True,
            }
        case _:
            assert_never(check)
