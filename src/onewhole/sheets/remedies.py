"""What one click may do about a finding of the audit, as something that a program can do."""

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property
from itertools import chain, islice

from onewhole.errors import OnewholeError
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.problems.parallel import of_the_other_sort
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.sheets.audit import Audit, AuditFinding
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import PictureSetting
from onewhole.sheets.standards import GRADE_3, GRADE_4, notes
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

#: One that needs no regrouping and one that needs it, where a page's own numbers give none.
PLAIN, REGROUPS = "5 4/6 - 2 1/6", "9 5/8 - 4 6/8"
#: So many problems of the other sort are looked at for one that is no twin.
LOOKED_AT = 10
#: So many names stand on a button.
MOST_TOLD = 4

_BOTTOM = re.compile(r"/(\d+)(?!\d)")


class RemedyAct(StrEnum):
    """What a remedy does to the page."""

    ADD = "add"
    LEAVE_OUT = "leave out"
    NEW_NUMBERS = "new numbers"
    ASK_INSTEAD = "ask instead"
    NO_WORDS = "no words"
    ORDER = "order"
    SET = "set"
    NUMBER = "number"
    GO = "go"


@dataclass(frozen=True, slots=True)
class Remedy:
    """One click: what it does, in words for a button, to which problems, with what.

    ``values`` are problems to add, problems to ask instead (one for each label), or settings. ``GO`` changes
    nothing: it leads to the problem, where only the teacher can help.
    """

    act: RemedyAct
    words: str
    labels: tuple[str, ...] = ()
    values: tuple[str, ...] = ()


def remedies(found: AuditFinding, seen: Audit) -> tuple[Remedy, ...]:
    r"""Return what one click may do about a finding, the best first; there is always something.

    >>> from onewhole.sheets.audit import audit
    >>> from onewhole.sheets.reading import read_sheet
    >>> looked = audit(WorkedSheet(read_sheet("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6")))
    >>> [remedy.words for remedy in remedies(looked.findings[0], looked)]
    ['Change the numbers of 2', 'Leave out 2']
    """
    return tuple(_Desk(found, seen).remedies())


@dataclass(frozen=True)
class _Desk:
    """A finding and the page it is about."""

    found: AuditFinding
    seen: Audit

    @property
    def sheet(self) -> Sheet:
        return self.seen.page.sheet

    @cached_property
    def about(self) -> tuple[Problem, ...]:
        return tuple(one for one in self.sheet.problems if one.label in self.found.labels)

    def remedies(self) -> Iterator[Remedy]:
        match self.found.key:
            case "twins":
                yield from self._twins()
            case "minutes":
                yield from self._fewer(self.sheet.problems[-1:])
                if self.found.sets:
                    yield _set(self.found.sets)
            case "alike" | "hidden":
                adds = self.found.adds
                yield _add(adds) if adds else self._go("ask the child to show the pieces")
            case "climb":
                yield Remedy(RemedyAct.ORDER, "Put the page in order from easy to hard")
            case "reading" | "story" | "K7":
                yield self._go("only you can write these words")
                labels = self.found.labels
                yield Remedy(RemedyAct.NO_WORDS, f"Ask {listed(labels)} without words", labels)
            case "K4":
                yield from self._instead(lambda one: _turned_round(one.statement))
            case "K1" | "K2" | "K12":
                yield from self._instead(lambda one: _other_bottoms(one.statement, self._met, one=False))
            case "K3" | "K9":
                yield from self._instead(lambda one: _other_bottoms(one.statement, self._met, one=True))
            case "K5":
                yield _set("mixed form: no", "simplest form: no")
            case "K6":
                yield _set(f"picture: {PictureSetting.LINE if self._hundredths else PictureSetting.STRIP}")
            case "K13":
                yield _set(f"picture: {PictureSetting.LINE}")
            case "K11":
                yield _add(self._other_sort())
            case _:
                yield self._go("see what you mean there")
                yield from self._fewer(self.about)

    @property
    def _met(self) -> Sequence[int]:
        """Return the denominators that the grade meets."""
        return sorted(GRADE_3 if self.sheet.header.grade == 3 else GRADE_4)

    @property
    def _hundredths(self) -> bool:
        return any(100 in one.needs.denominators for one in self.seen.page.problems)

    def _twins(self) -> Iterator[Remedy]:
        """Keep one of the twins, a story where there is one: its words would not fit other numbers."""
        kept = next((one for one in self.about if one.story), self.about[0])
        rest = [one for one in self.about if one is not kept]
        if plain := tuple(one.label for one in rest if not one.story):
            yield Remedy(RemedyAct.NEW_NUMBERS, f"Change the numbers of {listed(plain)}", plain)
        yield from self._fewer(rest)

    def _fewer(self, gone: Sequence[Problem]) -> Iterator[Remedy]:
        if gone and len(gone) < len(self.sheet.problems):
            labels = tuple(one.label for one in gone)
            yield Remedy(RemedyAct.LEAVE_OUT, f"Leave out {listed(labels)}", labels)

    def _go(self, why: str) -> Remedy:
        labels = self.found.labels[:1]
        return Remedy(
            RemedyAct.GO, f"Go to {labels[0]}: {why}" if labels else f"Go to the page: {why}", labels
        )

    def _instead(self, other: Callable[[Problem], Iterator[str]]) -> Iterator[Remedy]:
        """Ask something near instead, where that takes the finding away; no words of a story are changed."""
        asked: dict[str, str] = {}
        for one in self.about:
            fits = (said for said in other(one) if self._mended(said)) if not one.story else iter(())
            if (said := next(fits, None)) is not None:
                asked[one.label] = said
        if asked:
            words = listed(tuple(f"{label} to {said}" for label, said in asked.items()))
            yield Remedy(RemedyAct.ASK_INSTEAD, f"Change {words}", tuple(asked), tuple(asked.values()))
        if left := [one for one in self.about if one.label not in asked]:
            labels = tuple(one.label for one in left)
            yield Remedy(RemedyAct.GO, f"Go to {labels[0]}: choose other numbers", labels[:1])
        yield from self._fewer(self.about)

    def _mended(self, said: str) -> bool:
        """Say whether a problem can stand here and has not what was found."""
        try:
            statement = read_statement(said)
            answer(statement)
            alone = Sheet((Problem("1", statement, said),), self.sheet.header)
            return self.found.key not in {note.standard.code for note in notes(WorkedSheet(alone))}
        except OnewholeError:
            return False

    def _other_sort(self) -> str:
        """Return a problem like one of the page, of the sort that is not there, and no twin of any."""
        taken = {twin_key(one.statement) for one in self.sheet.problems}
        worked = [one.needs.regrouping for one in self.seen.page.problems]
        near = chain.from_iterable(
            islice(of_the_other_sort(one.statement), LOOKED_AT) for one in reversed(self.sheet.problems)
        )
        free = next((text(one) for one in near if twin_key(one) not in taken), None)
        return free or (PLAIN if any(worked) else REGROUPS)


def _turned_round(statement: Statement) -> Iterator[str]:
    """Yield a problem with its numbers the other way round."""
    yield text(with_numbers(statement, numbers_of(statement)[::-1]))


def _other_bottoms(statement: Statement, met: Sequence[int], *, one: bool) -> Iterator[str]:
    """Yield a problem with other denominators, the nearest first, those that keep its sort before others.

    With ``one`` all its fractions get the same; otherwise only those that are not met are changed.
    """
    said, own = text(statement), needs(statement)
    largest = max(own.denominators, default=0)
    near = sorted(met, key=lambda bottom: (abs(bottom - largest), -bottom))
    found = [
        _BOTTOM.sub(lambda at, to=bottom: at[0] if not one and int(at[1]) in met else f"/{to}", said)  # type: ignore[misc]
        for bottom in near
    ]
    found = [other for other in found if other != said]
    same = [other for other in found if _sort(other) == own.regrouping]
    yield from same
    yield from (other for other in found if other not in same)


def _sort(said: str) -> bool | None:
    try:
        return needs(read_statement(said)).regrouping
    except OnewholeError:
        return None


def _add(asked: str) -> Remedy:
    return Remedy(RemedyAct.ADD, f"Add {asked}", values=(asked,))


def _set(*said: str) -> Remedy:
    return Remedy(RemedyAct.SET, f"Set {listed(said)}", values=said)


def listed(names: Sequence[str]) -> str:
    """Write names as a list for a button; of many only the first few.

    >>> listed(["1", "2", "3"]), listed([str(at) for at in range(1, 30)])
    ('1, 2 and 3', '1, 2, 3, 4 and 25 more')
    """
    if len(names) > MOST_TOLD + 1:
        names = [*names[:MOST_TOLD], f"{len(names) - MOST_TOLD} more"]
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))
