"""The beginning and the end of a film: what tonight is about, the big picture, and good night."""

import re

from onewhole.languages.english.words import ClassWords, unit_name
from onewhole.notations.amounts import short
from onewhole.statements.statement import Question, asked_quantities
from onewhole.walkthroughs.cue import Act, Chapter, Cue, Fresh, Role, Write
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.manner import MOST_MERGED
from onewhole.walkthroughs.memory import Memory
from onewhole.working.reasons.regrouping import OpensOne

_JOINED = re.compile(r"\d[/.-]\d")


def opening_chapter(lesson: Lesson, memory: Memory, merge: int) -> Chapter:
    """Greet, name the page and the whole, and say what most problems have in common, if it is so."""
    acts: list[Act] = [Fresh(), Write("title", lesson.title, heading=True)]
    lines = (("class", lesson.class_name), ("date", lesson.date))
    acts += [Write(name, said) for name, said in lines if said]
    says = [f"Hello, {lesson.class_name}." if _sayable(lesson.class_name) else "Hello."]
    says += [f"Today is {lesson.date}."] if _sayable(lesson.date) else []
    says += [f"This page is called {lesson.title}."] if _sayable(lesson.title) else []
    count = len(lesson.items)
    says.append("There is 1 problem tonight." if count == 1 else f"There are {count} problems tonight.")
    if lesson.words.whole != "whole":
        says.append(f"One whole is one {lesson.words.whole}.")
    cues = [Cue(Role.OPENING, memory.tell(*says), tuple(acts))]
    view = overview(lesson.items, short(lesson.words))
    if view and merge < MOST_MERGED:
        cues.append(Cue(Role.OVERVIEW, memory.tell(*view)))
    return Chapter("", "Tonight", tuple(cues))


def closing_chapter(memory: Memory) -> Chapter:
    """End the film."""
    says = memory.tell(
        "That was the last one.",
        "If your answer is another one, look for the line where it changes.",
        "Good night, and well done.",
    )
    return Chapter("", "The end", (Cue(Role.CLOSING, says),))


def overview(items: tuple[Item, ...], words: ClassWords) -> tuple[str, ...]:
    """Say what is true of the problems, counted from their workings; nothing for a single problem.

    >>> overview((), ClassWords())
    ()
    """
    count = len(items)
    if count == 1:
        return ()
    says: list[str] = []
    opened = [reasons for item in items if (reasons := _opened(item))]
    if opened:
        small, large = _names(opened, words)
        there = "there are not enough" if _lacking(opened) else "we need more"
        says.append(f"In {_how_many(len(opened), count)} {there} {small}, so {words.regroup} one {large}.")
    return (*says, *_signs(items))


def _signs(items: tuple[Item, ...]) -> tuple[str, ...]:
    """Warn of both signs on one page."""
    added, taken = ([item.label for item in items if _takes(item) is wanted] for wanted in (False, True))
    if not added or not taken:
        return ()
    if len(added) == 1:
        return (f"Look at the sign of number {added[0]}: there you add.",)
    if len(taken) == 1:
        return (f"Look at the sign of number {taken[0]}: there you take away.",)
    return (
        "Look at the signs.",
        f"You add in {len(added)} and take away in {len(taken)} of the problems.",
    )


def _how_many(some: int, every: int) -> str:
    if some == every:
        return "all of these"
    return "most of these" if 2 * some > every else f"{some} of these"


def _opened(item: Item) -> tuple[OpensOne, ...]:
    lines = item.working.lines if item.working else ()
    return tuple(line.because for line in lines if isinstance(line.because, OpensOne))


def _lacking(opened: list[tuple[OpensOne, ...]]) -> bool:
    """Say whether in every one of them a smaller unit is lacking: fewer there than are taken."""
    return all(any(one.have < one.need for one in reasons) for reasons in opened)


def _names(opened: list[tuple[OpensOne, ...]], words: ClassWords) -> tuple[str, str]:
    """Name what is lacking and what is opened, by names that are right for all of them."""
    found = [one for reasons in opened for one in reasons]
    smalls = {unit_name(one.small) for one in found}
    larges = {unit_name(one.large, 1, words) for one in found}
    small = smalls.pop() if len(smalls) == 1 else "pieces"
    return small, larges.pop() if len(larges) == 1 else "larger unit"


def _takes(item: Item) -> bool | None:
    """Say whether a plain question takes away every time; None where it does both, or something else."""
    signed = asked_quantities(item.statement) if isinstance(item.statement, Question) else None
    signs = {taken for _, taken in signed[1:]} if signed else set()
    return signs.pop() if len(signs) == 1 else None


def _sayable(words: str) -> bool:
    """Say whether words can be read out: 11/25 and 2026-11-25 are dates, and would be said as problems."""
    return bool(words) and not _JOINED.search(words)
