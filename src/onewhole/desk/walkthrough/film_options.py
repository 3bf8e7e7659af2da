"""What a teacher chose for a problem of a film: strategy, picture and length; and what there is to choose."""

from typing import assert_never

from msgspec import Struct
from msgspec.structs import force_setattr

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.unpictured import unpictured
from onewhole.languages.english.unsuited import unsuited
from onewhole.languages.english.ways import way_of
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.choosing import PictureRefusedError, picture, refusal
from onewhole.pictures.limits import BOARD
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Sum
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
)
from onewhole.statements.whole_groups import WholeGroups
from onewhole.walkthroughs.lesson import Length
from onewhole.working.form import led_to
from onewhole.working.missing import alone_on_its_side
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.questions import DoesNotSuitError, suiting
from onewhole.working.ways import WAYS, way_named
from onewhole.working.whole_groups import ways_of_groups
from onewhole.working.work import work
from onewhole.working.working import Working

#: What stands for no picture at all.
NO_PICTURE = "none"
#: Pictures whose name is a plural.
_MANY = frozenset(
    {
        PictureKind.STRIPS,
        PictureKind.DISCS,
        PictureKind.RECTANGLES,
        PictureKind.BLOCKS,
        PictureKind.COLUMNS,
    }
)


class FilmChoice(Struct, frozen=True):
    """A teacher's choices for one problem; what is empty is left to the page and to what suits.

    ``strategy`` is a key or a name of a strategy, ``picture`` a teacher's name of a picture or "none",
    ``length`` is "in full" or "short". Raises InputError with what there is to choose.

    >>> FilmChoice("Regroup one whole first", "number line", "short").strategy
    'regroup_first'
    """

    strategy: str = ""
    picture: str = ""
    length: str = ""

    def __post_init__(self) -> None:
        """Refuse what cannot be chosen."""
        if self.strategy:
            force_setattr(self, "strategy", way_named(self.strategy).key)
        if self.picture and self.picture != NO_PICTURE:
            kind_named(self.picture)
        if self.length and self.length not in (lengths := [length.value for length in Length]):
            msg = f"a problem cannot be told “{self.length[:40]}”"
            raise InputError(msg, remedy=f"Choose one of: {', '.join(lengths)}.")

    @property
    def told(self) -> Length | None:
        """Return the length that was chosen, if one was."""
        return Length(self.length) if self.length else None


class FilmOptions(Struct, frozen=True):
    """What there is to choose for one problem, each as what is chosen and the words for it.

    ``strategy`` and ``picture`` are what is taken where nothing is chosen. Empty where there is no choice.
    """

    label: str
    title: str
    strategies: tuple[tuple[str, str], ...] = ()
    pictures: tuple[tuple[str, str], ...] = ()
    lengths: tuple[tuple[str, str], ...] = ()
    strategy: str = ""
    picture: str = ""


def kind_named(name: str) -> PictureKind:
    """Return the picture with a teacher's name for it. Raises InputError with the names there are."""
    try:
        return PictureKind(name)
    except ValueError:
        names = ", ".join(kind.value for kind in PictureKind)
        msg = f"there is no picture called “{name[:40]}”"
        raise InputError(msg, remedy=f"Choose one of: {names}.") from None


def by_choice(entry: WorkedProblem, choice: FilmChoice) -> Working | None:
    """Return a problem worked by the strategy that was chosen, or where it does not suit by the class's."""
    if not choice.strategy or entry.working is None:
        return entry.working
    chosen = _by(entry.problem.statement, choice.strategy)
    return entry.working if chosen is None else led_to(chosen, entry.wanted)


def drawn(working: Working, kind: PictureKind | None = None) -> Picture | None:
    """Return the picture that is wanted, or where it cannot be drawn the one that suits."""
    try:
        return picture(working, kind, BOARD)
    except PictureRefusedError:
        return picture(working, paper=BOARD)


def shown(working: Working, choice: FilmChoice, kind: PictureKind | None) -> Picture | None:
    """Return the picture that was chosen for a problem, for all problems, or that suits."""
    if choice.picture == NO_PICTURE:
        return None
    return drawn(working, PictureKind(choice.picture) if choice.picture else kind)


def refusals(entry: WorkedProblem, choice: FilmChoice) -> tuple[str, ...]:
    """Return in sentences what was chosen for a problem and does not suit it, and what is taken."""
    working = by_choice(entry, choice)
    if working is None or entry.working is None:
        return ()
    notes: list[str] = []
    where = f"Problem {entry.problem.label}: "
    if choice.strategy and working.strategy != choice.strategy:
        name = way_named(choice.strategy).name
        notes.append(f"{where}“{name}” does not suit it{_why(entry, choice)} {_taken(working)}")
    if choice.picture and choice.picture != NO_PICTURE:
        try:
            picture(working, PictureKind(choice.picture), BOARD)
        except PictureRefusedError as no:
            instead = _shown_instead(no.instead) if no.instead else "No picture is shown."
            notes.append(f"{where}{no.what}: {text_of(unpictured(no.why, ClassWords()))} {instead}")
    return tuple(notes)


def _shown_instead(kind: PictureKind) -> str:
    """Say which picture is shown; the name of most is a plural."""
    return f"The {kind.value} {'are' if kind in _MANY else 'is'} shown."


def film_options(entry: WorkedProblem, choice: FilmChoice) -> FilmOptions:
    """Return what there is to choose for a problem; pictures are those of the strategy that is chosen."""
    label, title, words = entry.problem.label, entry.problem.typed, ClassWords()
    working = by_choice(entry, choice)
    if working is None or entry.working is None:
        return FilmOptions(label, title)
    ways = _ways(entry.problem.statement)
    kinds = [kind for kind in PictureKind if refusal(working, kind, BOARD) is None]
    suits = picture(working, paper=BOARD)
    return FilmOptions(
        label,
        title,
        tuple((one.strategy, way_of(one, words)) for one in ways) if len(ways) > 1 else (),
        (*((kind.value, kind.value) for kind in kinds), (NO_PICTURE, "no picture")) if kinds else (),
        tuple((length.value, f"told {length.value}") for length in Length),
        entry.working.strategy,
        suits.kind.value if suits else NO_PICTURE,
    )


def _ways(statement: Statement) -> tuple[Working, ...]:
    """Work a problem by every strategy that is offered for its numbers."""
    match statement:
        case Question():
            keys = [one.key for one in suiting(statement)]
        case WholeGroups():
            keys = [one.key for one in ways_of_groups(statement)]
        case MissingNumber():
            rest = alone_on_its_side(statement).rest
            keys = [one.key for one in suiting(Question(rest))] if isinstance(rest, Sum) else []
        case Comparison() | AnotherName() | Rounding() | Ordering() | AskedInWords():
            keys = []
        case _:
            assert_never(statement)
    return tuple(found for found in (_by(statement, key) for key in keys) if found)


def _by(statement: Statement, strategy: str) -> Working | None:
    if isinstance(statement, Comparison | Ordering | Rounding | AskedInWords) and not isinstance(
        statement, WholeGroups
    ):
        return None
    try:
        return work(statement, way_named(strategy))
    except (DoesNotSuitError, NotWorkedError):
        return None


def _why(entry: WorkedProblem, choice: FilmChoice) -> str:
    """Say why a strategy does not suit, after a colon; a full stop where nothing is known."""
    try:
        work(entry.problem.statement, way_named(choice.strategy))
    except DoesNotSuitError as no:
        return f": {text_of(unsuited(no.why))}"
    except NotWorkedError:
        pass
    return "."


def _taken(working: Working) -> str:
    names = [one.name for one in WAYS if one.key == working.strategy]
    return f"It is worked by “{names[0]}”." if names else "It is worked as it always is."
