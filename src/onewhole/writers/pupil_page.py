"""The pupil page and a practice page: problems with the room that their working needs."""

from collections.abc import Iterator, Sequence
from math import ceil
from typing import assert_never

from onewhole.languages.page_words import PageWords
from onewhole.languages.table import spoken_by
from onewhole.notations.sentences.text import text_of
from onewhole.notations.svg import svg
from onewhole.pictures.amounts import amounts
from onewhole.pictures.scene import Scene
from onewhole.pictures.squared import begun
from onewhole.problems.needs import Operation
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.problems.worked import WorkedProblem
from onewhole.sentences.typed import typed_sentences
from onewhole.sheets.document import Instruction
from onewhole.sheets.find_the_slip import FindTheSlip
from onewhole.sheets.header import CornerMarks, Header, PictureSetting
from onewhole.sheets.practice import Practice
from onewhole.sheets.room import Room, WorkPlace, over_a_line, room
from onewhole.sheets.shared_plots import SharedPlot, shared_plots
from onewhole.sheets.story_pictures import story_picture
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question
from onewhole.working.line import leads
from onewhole.writers.drawing import plot_drawn
from onewhole.writers.film_link import film_link
from onewhole.writers.formula import formula, set_words
from onewhole.writers.frame import frame
from onewhole.writers.marked import marked, read_at
from onewhole.writers.printed import Json, Printed

#: Where a page is fitted, so many problems stand side by side at most.
MOST_FITTED = 3


def pupil_page(worked: WorkedSheet, fit: int | None = None) -> Printed:
    """Return the page that a pupil works on, with all the room that the workings need.

    With ``fit`` the press fits it on so many pages where that can be: without boxes, with less room. Raises
    RoomError when a working does not fit the paper.
    """
    header = worked.header
    link = film_link(header.film, spoken_by(header.words).page)
    return Printed("pupil", frame(header) | link | _body(worked, fit, marks=header.marks) | marked(worked))


def practice_page(practice: Practice, whose: str, kite: str, fit: int | None = None) -> Printed:
    """Return the page that one group or one pupil practises on; no pattern is named on it.

    ``whose`` is the group's kite word or the pupil's code; ``fit`` is as for :func:`pupil_page`.
    """
    worked, title = practice.worked, practice.sheet.header.title
    over = frame(worked.header, title=f"{whose}: {title}" if title else whose)
    last = [_slip(practice.slip, worked.header)] if practice.slip else []
    return Printed("practice", over | _body(worked, fit, last) | {"kite": kite})


def _body(
    worked: WorkedSheet,
    fit: int | None,
    last: Sequence[Json] = (),
    *,
    marks: CornerMarks = CornerMarks.NONE,
) -> Json:
    items = [*_begun(worked.header), *_items(worked, marks), *last]
    pitch = worked.rooms[worked.problems[0].label].pitch_mm
    page = spoken_by(worked.header.words).page
    fitted: Json = (
        {} if fit is None else {"fit": fit, "columns_at_most": worked.header.columns or MOST_FITTED}
    )
    return fitted | {
        "columns": worked.columns,
        "pitch_mm": ceil(pitch),
        "items": items,
        "name": page.name,
        "date": page.date,
        "answer": page.answer,
    }


def _items(worked: WorkedSheet, marks: CornerMarks) -> Iterator[Json]:
    """Yield the items of a page; a line plot stands once above the problems about it."""
    shared = dict(shared_plots(worked.sheet.items))
    for item in worked.sheet.items:
        if isinstance(item, Problem) and item.label in shared:
            yield _plot(shared[item.label], worked.header)
        yield _item(item, worked, marks)


def _plot(shared: SharedPlot, header: Header) -> Json:
    """Draw a line plot, under the labels of the problems about it."""
    return {"kind": "plot", "label": shared.labels} | plot_drawn(shared.plot, header)


def _item(item: Instruction | Problem, worked: WorkedSheet, marks: CornerMarks) -> Json:
    if isinstance(item, Instruction):
        return {"kind": "instruction", "words": item.words}
    needed = worked.rooms[item.label]
    found: Json = {
        "kind": "problem",
        "label": f"{item.label}.",
        "room": _room(needed),
    }
    if item.story:
        found["words"] = set_words(typed_sentences(item.story, worked.header.words.language))
    else:
        found["formula"] = formula(item.statement, asks=_asks(item), language=spoken_by(worked.header.words))
    found |= _answer(worked.labelled[item.label], needed, marks)
    if needed.picture:
        found["picture"] = _size(needed.picture) | _drawn(worked.labelled[item.label], worked.header)
    return found


def _begun(header: Header) -> Iterator[Json]:
    """Yield a worked example to finish: its first column on squared paper, or all lines but the last."""
    if header.to_finish is None:
        return
    language = spoken_by(header.words)
    working = as_taught(header.to_finish, header.taught, header.form)
    scene = begun(working) if working else None
    told: Json = {"kind": "example", "words": language.page.to_finish}
    if scene is None:
        written = working.brief() if working else ()
        lines = [
            formula(line.says, leads=leads(written, at), language=language)
            for at, line in enumerate(written[:-1])
        ]
        led = not written or leads(written, len(written) - 1)
        yield told | {"lines": lines or [formula(header.to_finish, language=language)], "led": led}
        return
    alt = text_of(language.working.picture(scene, header.words))
    yield told | {"svg": svg(scene, header.words), "alt": alt, "width_mm": ceil(scene.width)}


def _drawn(problem: WorkedProblem, header: Header) -> Json:
    """Say what is to be drawn in the place for a picture, or draw the amounts of the problem."""
    scene = _drawn_already(problem, header)
    found: Json = {"words": _draw(header, problem)}
    if scene is None:
        return found
    alt = text_of(spoken_by(header.words).working.picture(scene, header.words))
    return found | {"svg": svg(scene, header.words, grid=False), "alt": alt}


def _drawn_already(problem: WorkedProblem, header: Header) -> Scene | None:
    """Return the amounts of a problem, or the bars of a story with a blank for what it asks."""
    if header.picture is PictureSetting.BAR:
        bars = story_picture(problem, header)
        return bars.blank if bars else None
    return amounts(problem.working) if header.picture is PictureSetting.AMOUNTS and problem.working else None


def _draw(header: Header, problem: WorkedProblem) -> str:
    """Say what is done in the place for a picture."""
    page = spoken_by(header.words).page
    match header.picture:
        case PictureSetting.STRIP:
            return page.draw_strips
        case PictureSetting.LINE:
            return page.draw_jumps
        case PictureSetting.AMOUNTS:
            return _cut(page, problem)
        case PictureSetting.BAR:
            return page.blank_found
        case PictureSetting.NONE:
            return ""
        case _:
            assert_never(header.picture)


def _cut(page: PageWords, problem: WorkedProblem) -> str:
    asked = problem.needs.operations
    if Operation.SUBTRACT in asked:
        return page.cut_strips
    return page.cut_to_join if Operation.ADD in asked else page.cut_to_see


def _slip(slip: FindTheSlip, header: Header) -> Json:
    """Return the wrong lines, called wrong over them, and the room to mend them in."""
    language = spoken_by(header.words)
    page = language.page
    return {
        "kind": "slip",
        "label": f"{slip.label}.",
        "tag": page.wrong,
        "words": page.find_the_slip,
        "lines": [formula(line, leads=at > 0, language=language) for at, line in enumerate(slip.lines)],
        "room": _room(room(slip.mended(header), header)),
    }


def _asks(problem: Problem) -> bool:
    """Say whether an equals sign and a blank follow what is printed."""
    return isinstance(problem.statement, Question)


def _answer(problem: WorkedProblem, needed: Room, marks: CornerMarks) -> Json:
    """Give the answer a line, or make the holes or the ring in the formula large enough to write in."""
    size = _size(needed.answer) | read_at(problem, marks)
    return {"answer": size} if over_a_line(problem.problem, marks) else {"inside": size}


def _room(needed: Room) -> Json:
    """Return the size of a room, and of its squares where it is ruled in squares."""
    squares: Json = {"square_mm": ceil(needed.square_mm)} if needed.square_mm else {}
    return _size(needed) | squares


def _size(place: WorkPlace | Room) -> Json:
    return {"width_mm": ceil(place.width_mm), "height_mm": ceil(place.height_mm)}
