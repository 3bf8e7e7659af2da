"""Tomorrow morning: whom to see first, who works with whom and why, what every finding rests on."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from hashlib import sha256

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.classes.marked_nights import MarkedNight, marked_night
from onewhole.desk.classes.notebooks import failures_told
from onewhole.desk.marking.heat import Heat, heat_of
from onewhole.desk.marking.mark import Marked, shown_place
from onewhole.desk.tomorrow.overrides import Overrides, group_key
from onewhole.desk.tomorrow.talks import Talk, shown_written, talks
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import FindingSetAside, MovedHere
from onewhole.languages.english.placing import first_because, placed_because
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.placement import Placement
from onewhole.marking.grouping.see_first import see_first
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.text import text_of
from onewhole.store.opening import Store

__all__ = ["CAUTION", "Card", "First", "Morning", "Seat", "fingerprint", "morning", "target"]


@dataclass(frozen=True, slots=True)
class First:
    """A pupil to see first: why, the problem to ask about and what was written there (MathML or text)."""

    code: str
    because: str
    label: str
    ask_about: str
    wrote: str
    is_formula: bool


@dataclass(frozen=True, slots=True)
class Seat:
    """A pupil in a group: why, whether the teacher moved the pupil there or set the finding aside.

    ``chosen`` is the key of the group that the teacher chose, empty for none.
    """

    code: str
    because: str
    moved: bool
    aside: bool
    chosen: str


@dataclass(frozen=True, slots=True)
class Card:
    """A group: its key, what it is about, its pupils. ``takes`` says whether a pupil can be moved to it."""

    name: str
    key: str
    about: str
    takes: bool
    seats: tuple[Seat, ...]


@dataclass(frozen=True, slots=True)
class Morning:
    """All that stands on the page for tomorrow; ``until`` is the last day on which findings are good.

    ``stamp`` changes with everything that the printed pages rest on; ``failed`` tells of recent nights
    on which the program failed.
    """

    page: NightPage
    first: tuple[First, ...]
    cards: tuple[Card, ...]
    talks: Mapping[str, Talk]
    heat: Heat
    papers: int
    until: date | None
    stamp: str
    failed: tuple[str, ...] = ()


def morning(book: Store, room_number: int, night_number: int) -> Morning:
    """Return tomorrow's page of a night. Raises NotThere.

    Earlier nights that are not marked yet are marked first: ask :func:`missing_before` how many.
    """
    found = marked_night(book, room_number, night_number)
    marked = found.marked
    return Morning(
        found.page,
        _first(marked),
        tuple(_card(group, found.overrides) for group in marked.groups),
        talks(found.given),
        heat_of(found.given),
        sum(group.place is not GroupKind.ABSENT for group in found.said.groups for _ in group.pupils),
        marked.tonight.until if marked.tonight else None,
        fingerprint(found),
        failures_told(marked.tonight) if marked.tonight else (),
    )


def fingerprint(found: MarkedNight) -> str:
    """Return a short name of all that tomorrow's printed pages rest on."""
    given, word = found.given, found.overrides
    said = repr((given.typed, given.answers, given.day, given.talks, sorted(word.aside), _places(word)))
    digest = sha256(said.encode(errors="replace"))
    for text in given.before:
        digest.update(text.encode())
    return digest.hexdigest()[:16]


def target(found: MarkedNight, key: str) -> Group:
    """Return the group of a key, to which a pupil may be moved. Raises InputError where it is not there."""
    for group in found.marked.groups:
        if group_key(group).text == key and group.place is not GroupKind.ABSENT:
            return group
    raise InputError("There is no such group any more", remedy="Load the page again and choose another.")


def _first(marked: Marked) -> tuple[First, ...]:
    asked = {problem.label: problem for problem in marked.sheet.problems}
    made = []
    for one in see_first(marked.marks.pupils, marked.findings, marked.groups):
        wrote, is_formula = shown_written(one.wrote)
        formula = mathml(asked[one.ask_about].statement)
        because = text_of(first_because(one.because))
        made.append(First(one.pupil, because, one.ask_about, formula, wrote, is_formula))
    return tuple(made)


def _card(group: Group, word: Overrides) -> Card:
    seats = tuple(_seat(placed, word) for placed in group.placings)
    return Card(
        group.name, group_key(group).text, shown_place(group), group.place is not GroupKind.ABSENT, seats
    )


def _places(word: Overrides) -> list[tuple[str, str]]:
    return sorted((code, group.text) for code, group in word.places.items())


def _seat(placed: Placement, word: Overrides) -> Seat:
    aside, chosen = placed.pupil in word.aside, word.places.get(placed.pupil)
    because = (*placed.because, FindingSetAside()) if aside else placed.because
    moved = any(isinstance(why, MovedHere) for why in placed.because)
    return Seat(placed.pupil, text_of(placed_because(because)), moved, aside, chosen.text if chosen else "")
