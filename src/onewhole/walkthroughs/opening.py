"""The beginning and the end of a film: what tonight is about, the big picture, and good night."""

import re

from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import Language
from onewhole.languages.table import spoken_by
from onewhole.number.unit import Unit
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Question, asked_quantities
from onewhole.walkthroughs.cue import Act, Chapter, Cue, Fresh, Role, Write
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.manner import MOST_MERGED
from onewhole.walkthroughs.memory import Memory
from onewhole.working.reasons.columns import ColumnOpened
from onewhole.working.reasons.regrouping import OpensOne

_JOINED = re.compile(r"\d[/.-]\d")


def opening_chapter(lesson: Lesson, memory: Memory, merge: int) -> Chapter:
    """Greet, name the page and the whole, and say what most problems have in common, if it is so."""
    acts: list[Act] = [Fresh(), Write("title", lesson.title, heading=True)]
    lines = (("class", lesson.class_name), ("date", lesson.date))
    acts += [Write(name, said) for name, said in lines if said]
    told = spoken_by(lesson.words).opening
    says = told.greeting(lesson.class_name if _sayable(lesson.class_name) else "")
    says += told.date(lesson.date) if _sayable(lesson.date) else ()
    says += told.title(lesson.title) if _sayable(lesson.title) else ()
    says += told.count(len(lesson.items))
    if lesson.words.whole != spoken_by(lesson.words).usual.whole:
        says += told.whole(lesson.words)
    cues = [Cue(Role.OPENING, memory.tell(says), tuple(acts))]
    view = overview(lesson.items, spoken_by(lesson.words).short(lesson.words))
    if view and merge < MOST_MERGED:
        cues.append(Cue(Role.OVERVIEW, memory.tell(view)))
    return Chapter("", told.tonight, tuple(cues))


def closing_chapter(memory: Memory, language: Language) -> Chapter:
    """End the film."""
    told = language.opening
    return Chapter("", told.the_end, (Cue(Role.CLOSING, memory.tell(told.closing())),))


def overview(items: tuple[Item, ...], words: ClassWords) -> Sentences:
    """Say what is true of the problems, counted from their workings; nothing for a single problem.

    >>> overview((), ClassWords())
    ()
    """
    count = len(items)
    if count == 1:
        return ()
    told = spoken_by(words).opening
    says: Sentences = ()
    opened = [reasons for item in items if (reasons := _opened(item))]
    columns = sum(map(_column_opened, items))
    if columns and not opened:
        says = told.column_opened(columns, count, words)
    if opened:
        small, large = _units(opened)
        says = told.opened(len(opened), count, small, large, words, lacking=_lacking(opened))
    return says + _signs(items, spoken_by(words))


def _signs(items: tuple[Item, ...], language: Language) -> Sentences:
    """Warn of both signs on one page."""
    added, taken = ([item.label for item in items if _takes(item) is wanted] for wanted in (False, True))
    if not added or not taken:
        return ()
    if len(added) == 1:
        return language.opening.one_adds(added[0])
    if len(taken) == 1:
        return language.opening.one_takes(taken[0])
    return language.opening.both_signs(len(added), len(taken))


def _opened(item: Item) -> tuple[OpensOne, ...]:
    lines = item.working.lines if item.working else ()
    return tuple(line.because for line in lines if isinstance(line.because, OpensOne))


def _column_opened(item: Item) -> bool:
    """Say whether a column of a problem gets ten more from the next one."""
    lines = item.working.lines if item.working else ()
    return any(isinstance(line.because, ColumnOpened) for line in lines)


def _lacking(opened: list[tuple[OpensOne, ...]]) -> bool:
    """Say whether in every one of them a smaller unit is lacking: fewer there than are taken."""
    return all(any(one.have < one.need for one in reasons) for reasons in opened)


def _units(opened: list[tuple[OpensOne, ...]]) -> tuple[Unit | None, Unit | None]:
    """Return what is lacking and what is opened, each None where they are not the same in all of them."""
    found = [one for reasons in opened for one in reasons]
    smalls, larges = {one.small for one in found}, {one.large for one in found}
    return smalls.pop() if len(smalls) == 1 else None, larges.pop() if len(larges) == 1 else None


def _takes(item: Item) -> bool | None:
    """Say whether a plain question takes away every time; None where it does both, or something else."""
    signed = asked_quantities(item.statement) if isinstance(item.statement, Question) else None
    signs = {taken for _, taken in signed[1:]} if signed else set()
    return signs.pop() if len(signs) == 1 else None


def _sayable(words: str) -> bool:
    """Say whether words can be read out: 11/25 and 2026-11-25 are dates, and would be said as problems."""
    return bool(words) and not _JOINED.search(words)
