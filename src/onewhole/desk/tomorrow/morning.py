"""Tomorrow morning: the class's ideas, whom to see first, who works with whom, what findings rest on."""

from collections.abc import Mapping, Sequence
from datetime import date
from hashlib import sha256
from threading import Lock
from types import GenericAlias
from typing import get_type_hints

from msgspec import Struct
from msgspec.json import Decoder
from msgspec.structs import replace

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.classes.group_settings import settings_text
from onewhole.desk.classes.marked_nights import MarkedNight, is_last, marked_from, night_to_mark
from onewhole.desk.classes.notebooks import failures_told
from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.heat import Heat, heat_of
from onewhole.desk.marking.mark import Marked, shown_ideas, shown_place
from onewhole.desk.tomorrow.held_morning import Parts, held_morning, hold_morning
from onewhole.desk.tomorrow.idea_cards import IdeaCard, idea_cards
from onewhole.desk.tomorrow.overrides import Overrides, group_key, key_of_seat
from onewhole.desk.tomorrow.talks import Talk, shown_written, talks
from onewhole.desk.tomorrow.unseen import unkept_seats
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import FindingSetAside
from onewhole.languages.english.placing import first_because, placed_because
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.notebook import Stay
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import GroupSettings
from onewhole.marking.grouping.keeping import SeatChange
from onewhole.marking.grouping.placement import Placement
from onewhole.marking.grouping.see_first import see_first
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.text import text_of
from onewhole.store.opening import Store

__all__ = ["CAUTION", "Card", "First", "Morning", "Seat", "fingerprint", "morning", "target"]


class First(Struct, frozen=True):
    """A pupil to see first: why, the problem to ask about and what was written there (MathML or text)."""

    code: str
    because: str
    label: str
    ask_about: str
    wrote: str
    is_formula: bool


class Seat(Struct, frozen=True):
    """A pupil in a group: why, whether the teacher moved the pupil there or set the finding aside.

    ``stays`` says that the pupil is kept there on later nights too. ``chosen`` is the key of the group that
    the teacher chose, empty for none.
    """

    code: str
    because: str
    moved: bool
    aside: bool
    stays: bool
    chosen: str


class IdeaShown(Struct, frozen=True):
    """One of a group's ideas: what it is called, who has it, and what to ask (empty where none is named)."""

    called: str
    codes: tuple[str, ...]
    ask: str


class ChangeShown(Struct, frozen=True):
    """A pupil whom the answers now put elsewhere: from which group to which, and why."""

    code: str
    was: str
    to: str
    because: str


class Card(Struct, frozen=True):
    """A group: its key, what it is about, its ideas, its pupils.

    ``takes`` says whether a pupil can be moved to it, ``meets`` whether it uses up a meeting.
    """

    name: str
    key: str
    about: str
    takes: bool
    meets: bool
    ideas: tuple[IdeaShown, ...]
    seats: tuple[Seat, ...]


class Morning(Struct, frozen=True):
    """All that stands on the page for tomorrow; ``until`` is the last day on which findings are good.

    ``ideas`` are the class's, that of most pupils first, ``told`` the most useful findings in sentences.
    ``stamp`` changes with everything that the printed pages rest on. ``changes`` are what the answers now ask
    for in groups that are kept, ``offer`` the stamp under which they are taken; ``settings`` are the class's,
    ``settings_told`` the same in words; ``failed`` tells of recent nights on which the program failed, and
    ``unseen`` says that the groups are not kept yet.
    """

    page: NightPage
    ideas: tuple[IdeaCard, ...]
    told: tuple[str, ...]
    first: tuple[First, ...]
    cards: tuple[Card, ...]
    changes: tuple[ChangeShown, ...]
    offer: str
    settings: GroupSettings
    settings_told: str
    talks: Mapping[str, Talk]
    heat: Heat
    papers: int
    until: date | None
    stamp: str
    failed: tuple[str, ...] = ()
    unseen: bool = False


#: What is held of a morning: everything but the night's page, which is read anyway.
_PARTS = tuple(name for name in Morning.__struct_fields__ if name != "page")
_KINDS = get_type_hints(Morning)
_READER: Decoder[Parts] = Decoder(GenericAlias(tuple, tuple(_KINDS[name] for name in _PARTS)))
#: One morning is worked out after another: who asks for one that is being worked out gets the same.
_TURN = Lock()


def morning(book: Store, room_number: int, night_number: int) -> Morning:
    """Return tomorrow's page of a night. Raises NotThere.

    Earlier nights that are not marked yet are marked first: ask :func:`missing_before` how many.
    """
    with _TURN:
        found = night_to_mark(book, room_number, night_number)
        held = held_morning(book, found, _READER) if found.is_read else None
        made = Morning(found.page, *held) if held else shown(marked_from(book, found))
    if held is None:
        hold_morning(book, found, [getattr(made, name) for name in _PARTS])
    return replace(made, unseen=made.unseen and is_last(book, room_number, night_number))


def shown(found: MarkedNight) -> Morning:
    """Return tomorrow's page of a night that is marked, as of the last night of its class."""
    marked = found.marked
    seating = marked.seating
    return Morning(
        found.page,
        idea_cards(marked),
        most_useful(marked),
        _first(marked),
        tuple(_card(group, found) for group in marked.groups),
        tuple(_change(one) for one in seating.changes),
        stamp_of(seating.changes),
        marked.settings,
        settings_text(marked.settings),
        talks(found.given),
        heat_of(found.given),
        sum(group.place is not GroupKind.ABSENT for group in found.said.groups for _ in group.pupils),
        marked.tonight.until if marked.tonight else None,
        fingerprint(found),
        failures_told(marked.tonight) if marked.tonight else (),
        bool(unkept_seats(found)),
    )


def stamp_of(changes: Sequence[SeatChange]) -> str:
    """Return a short name of changes: an offer that was shown is taken only as it was shown."""
    said = repr([(one.pupil, one.was.group, one.to.group) for one in changes])
    return sha256(said.encode()).hexdigest()[:16]


def fingerprint(found: MarkedNight) -> str:
    """Return a short name of all that tomorrow's printed pages rest on."""
    given, word = found.given, found.overrides
    seats = sorted((code, group.id) for group in found.marked.groups for code in group.pupils)
    rests = (given.typed, given.answers, given.day, given.talks, sorted(word.aside), seats)
    said = repr((*rests, sorted(_stays(found))))
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


def _card(group: Group, found: MarkedNight) -> Card:
    seats = tuple(_seat(placed, found.overrides) for placed in group.placings)
    return Card(
        group.name,
        group_key(group).text,
        shown_place(group),
        group.place is not GroupKind.ABSENT,
        group.place.meets,
        tuple(IdeaShown(*one) for one in shown_ideas(group, found.marked)),
        seats,
    )


def _change(one: SeatChange) -> ChangeShown:
    return ChangeShown(one.pupil, one.was.name, one.to.name, text_of(placed_because(one.because)))


def _stays(found: MarkedNight) -> list[tuple[str, str]]:
    return [(one.pupil, one.stays.value) for group in found.marked.groups for one in group.placings]


def _seat(placed: Placement, word: Overrides) -> Seat:
    aside, chosen = placed.pupil in word.aside, word.places.get(placed.pupil)
    because = (*placed.because, FindingSetAside()) if aside else placed.because
    moved = placed.stays is not Stay.FREE
    key = key_of_seat(chosen).text if chosen else ""
    stays = placed.stays is Stay.ALWAYS
    return Seat(placed.pupil, text_of(placed_because(because)), moved, aside, stays, key)
