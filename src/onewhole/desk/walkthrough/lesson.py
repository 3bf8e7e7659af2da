"""From a sheet to what is worked aloud: its problems, their workings and their pictures."""

from collections.abc import Collection, Mapping
from fractions import Fraction
from types import MappingProxyType

from msgspec.structs import replace

from onewhole.desk.walkthrough.film_options import NO_PICTURE, FilmChoice, by_choice, refusals, shown
from onewhole.errors import InputError
from onewhole.languages.english.unpictured import unpictured
from onewhole.misconceptions.slip import Slip
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import PictureRefusedError, picture
from onewhole.pictures.digits import can_be_read
from onewhole.pictures.limits import BOARD
from onewhole.pictures.moving import scaled, sized
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Scene
from onewhole.problems.traps import is_core
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header
from onewhole.sheets.story_pictures import story_picture
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.writers.frame import UNTITLED

#: Where nothing is chosen.
_NOTHING: Mapping[str, FilmChoice] = MappingProxyType({})


def lesson(
    worked: WorkedSheet,
    *,
    kind: PictureKind | None = None,
    tried: Collection[str] = (),
    turns: Collection[str] = (),
    mistake: bool = False,
    choices: Mapping[str, FilmChoice] = _NOTHING,
) -> Lesson:
    """Return a sheet as it is worked aloud.

    ``kind`` is the picture that the teacher wants for every problem; where it cannot be drawn, and without a
    wish, the one that suits is taken. ``tried`` are the labels of problems that the family tries first,
    ``turns`` of those whose answer is left to it. With
    ``mistake`` a likely mistake is shown and mended once, in the first problem that is regrouped. ``choices``
    are those for single problems, by label; what does not suit gives way to what does (see
    :func:`refused`). Raises InputError for a label that no problem has.
    """
    labels = [problem.label for problem in worked.problems]
    asked = (("try first", tried), ("stop before its answer", turns), ("choose for", choices))
    for what, label in ((what, label) for what, ones in asked for label in ones):
        if label not in labels:
            msg = f"there is no problem {label[:40]} to {what}"
            raise InputError(msg, remedy=f"The sheet has {', '.join(labels)}.")
    entries = worked.problems
    shown = next((entry for entry in entries if entry.needs.regrouping), None)
    items = tuple(
        _item(
            entry,
            worked.header,
            kind,
            choices.get(entry.problem.label, FilmChoice()),
            tried=entry.problem.label in tried,
            turn=entry.problem.label in turns,
            mistake=_likely(entry) if mistake and entry is shown else None,
        )
        for entry in entries
    )
    header = worked.header
    return Lesson(header.title or UNTITLED, header.date, header.class_name, header.words, items)


def _item(
    entry: WorkedProblem,
    header: Header,
    kind: PictureKind | None,
    choice: FilmChoice,
    *,
    tried: bool,
    turn: bool,
    mistake: Slip | None,
) -> Item:
    problem, working = entry.problem, by_choice(entry, choice)
    drawn = None if working is None else shown(working, choice, kind)
    bars = story_picture(entry, header) if header.story_bars and choice.picture != NO_PICTURE else None
    drawn, blank = _one_size(drawn, bars.blank if bars else None)
    return Item(
        problem.label,
        problem.statement,
        entry.answer,
        working,
        drawn,
        problem.story,
        mistake,
        tried,
        choice.told,
        entry.wanted,
        turn,
        blank,
    )


def _one_size(drawn: Picture | None, bars: Scene | None) -> tuple[Picture | None, Scene | None]:
    """Give a picture and the bars before it one size: one stands where the other stood.

    Without bars where their digits could not be read on a phone.
    """
    if bars is None:
        return drawn, None
    scene = drawn.scenes[0] if drawn else bars
    bars = scaled(bars, min(Fraction(1), scene.width / bars.width, BOARD.height / bars.height))
    if not can_be_read((bars,), BOARD):
        return drawn, None
    if drawn is None:
        return None, bars
    width, height = max(scene.width, bars.width), max(scene.height, bars.height)
    scenes = tuple(sized(one, width, height) for one in drawn.scenes)
    return replace(drawn, scenes=scenes), sized(bars, width, height)


def refused(
    worked: WorkedSheet, kind: PictureKind | None = None, choices: Mapping[str, FilmChoice] = _NOTHING
) -> tuple[str, ...]:
    """Return what was wanted for a problem and does not suit it: why, and what to choose or what is taken."""
    notes: list[str] = []
    for entry in worked.problems:
        choice = choices.get(entry.problem.label, FilmChoice())
        working = by_choice(entry, choice)
        notes += refusals(entry, choice)
        if working is None or kind is None or choice.picture:
            continue
        try:
            picture(working, kind, BOARD)
        except PictureRefusedError as no:
            why = text_of(unpictured(no.why, worked.header.words))
            notes.append(f"Problem {entry.problem.label}: {no.what}: {why} {no.remedy or ''}".strip())
    return tuple(notes)


def _likely(entry: WorkedProblem) -> Slip | None:
    """Return the first mistake of the catalogue about regrouping that shows in the answer."""
    return next(
        (
            slip
            for slip in entry.slips
            if is_core(slip.pattern) and isinstance(slip.wrote, Quantity) and slip.false_at is not None
        ),
        None,
    )
