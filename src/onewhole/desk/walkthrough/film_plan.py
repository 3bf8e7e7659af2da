"""How a night is to be filmed, as the teacher left it on the page: kept in the class's file by night."""

from collections.abc import Mapping
from typing import TypeVar

import msgspec
from msgspec import Struct, field

from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.walkthrough.film import BOTH, FilmWishes, shapes_named, tidy_wishes
from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.soundtrack_choice import Recorded
from onewhole.errors import InputError
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting

_T = TypeVar("_T")

#: A film is fitted into so many minutes at most.
MOST_MINUTES = 120


class FilmPlan(Struct, frozen=True):
    """Choices by problem, the problems to try first, minutes to fit into, whether a mistake is shown, the
    shape of the film (wide, upright or both), the problems whose answer is left to the family, and what is
    done to recordings.

    Raises InputError for minutes that are none, and for another shape.
    """

    choices: Mapping[str, FilmChoice] = field(default_factory=dict)
    tried: tuple[str, ...] = ()
    minutes: int | None = None
    mistake: bool = False
    shape: str = BOTH
    turns: tuple[str, ...] = ()
    tidy: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        """Refuse minutes and shapes that cannot be."""
        shapes_named(self.shape)
        tidy_wishes(",".join(self.tidy))
        if self.minutes is not None and not 1 <= self.minutes <= MOST_MINUTES:
            msg = f"a film takes from 1 to {MOST_MINUTES} minutes"
            raise InputError(msg, remedy="Give another number, or leave it empty.")

    def __hash__(self) -> int:
        """Hash the choices whatever their order, as they are compared."""
        return hash(
            (
                frozenset(self.choices.items()),
                self.tried,
                self.minutes,
                self.mistake,
                self.shape,
                self.turns,
                self.tidy,
            )
        )

    def wishes(self, recorded: Mapping[str, Recorded] | None = None) -> FilmWishes:
        """Return the plan as wishes for a film, with what was recorded."""
        return FilmWishes(
            minutes=self.minutes,
            tried=self.tried,
            turns=self.turns,
            mistake=self.mistake,
            choices=self.choices,
            recorded=recorded or {},
            shapes=shapes_named(self.shape),
            tidy=tidy_wishes(",".join(self.tidy)),
        )


class _KeptChoice(msgspec.Struct, frozen=True, omit_defaults=True, forbid_unknown_fields=True):
    """A choice as it is kept: only what was chosen."""

    strategy: str = ""
    picture: str = ""
    length: str = ""


class _KeptPlan(msgspec.Struct, frozen=True, omit_defaults=True, forbid_unknown_fields=True):
    """A plan as it is kept; both shapes are not written, so that older plans stay as they are."""

    choices: dict[str, _KeptChoice]
    tried: tuple[str, ...]
    minutes: int | None
    mistake: bool
    shape: str = BOTH
    turns: tuple[str, ...] = ()
    tidy: tuple[str, ...] = ()


def keep_plan(book: Store, night: int, plan: FilmPlan, saw: FilmPlan | None = None) -> None:
    """Keep how a night is to be filmed.

    ``saw`` is the plan that the window began with: what it left as it was stays as it stands now. Raises
    ChangedMeanwhile where another window chose otherwise for the same problem, and StoreRefused.
    """
    with book.transaction() as within:
        kept = plan if saw is None else _merged(plan, saw, _plan_shown(within, night))
        set_setting(within, _name(night), plan_text(kept))


def _plan_shown(book: Store, night: int) -> FilmPlan:
    """Return the plan that the page shows: none of the choices where they cannot be read."""
    try:
        return plan_of(book, night)
    except InputError:
        return FilmPlan()


def _merged(plan: FilmPlan, saw: FilmPlan, stands: FilmPlan) -> FilmPlan:
    """Return what stands with what one window changed in it. Raises ChangedMeanwhile."""
    labels = dict.fromkeys((*stands.choices, *saw.choices, *plan.choices))
    choices = {
        label: _one(
            f"The choice for problem {label}", *(one.choices.get(label) for one in (plan, saw, stands))
        )
        for label in labels
    }
    return FilmPlan(
        {label: choice for label, choice in choices.items() if choice is not None},
        _marked("What is tried first:", plan.tried, saw.tried, stands.tried),
        _one("How long the film may be", plan.minutes, saw.minutes, stands.minutes),
        _one("Whether a mistake is shown", plan.mistake, saw.mistake, stands.mistake),
        _one("The shape of the film", plan.shape, saw.shape, stands.shape),
        _marked("What is left to the family:", plan.turns, saw.turns, stands.turns),
        _one("How recordings are tidied", plan.tidy, saw.tidy, stands.tidy),
    )


def _marked(
    what: str, mine: tuple[str, ...], saw: tuple[str, ...], stands: tuple[str, ...]
) -> tuple[str, ...]:
    """Return the labels that are marked. Raises ChangedMeanwhile."""
    return tuple(
        label
        for label in dict.fromkeys((*mine, *stands, *saw))
        if _one(f"{what} problem {label}", label in mine, label in saw, label in stands)
    )


def _one(what: str, mine: _T, saw: _T, stands: _T) -> _T:
    """Return what is chosen by whoever changed it. Raises ChangedMeanwhile where two did, each otherwise."""
    if mine == saw:
        return stands
    if stands in {saw, mine}:
        return mine
    raise ChangedMeanwhile(
        f"{what} was changed in another window",
        stands="",
        remedy="Nothing of this form was kept. Load the page again, and choose once more.",
    )


def plan_of(book: Store, night: int) -> FilmPlan:
    """Return how a night is to be filmed; without any choices where none were kept. Raises InputError."""
    typed = setting(book, _name(night))
    return FilmPlan() if typed is None else plan_read(typed)


def plan_text(plan: FilmPlan) -> str:
    """Write a plan as JSON; the same plan is the same text.

    >>> plan_text(FilmPlan({"1": FilmChoice(length="short")}, minutes=5))
    '{"choices": {"1": {"length": "short"}}, "tried": [], "minutes": 5, "mistake": false}'
    """
    chosen = {
        label: _KeptChoice(one.strategy, one.picture, one.length)
        for label, one in plan.choices.items()
        if one != FilmChoice()
    }
    kept = msgspec.json.encode(
        _KeptPlan(chosen, plan.tried, plan.minutes, plan.mistake, plan.shape, plan.turns, plan.tidy)
    )
    return msgspec.json.format(kept, indent=0).decode()


def plan_read(typed: str) -> FilmPlan:
    """Read a plan as it was written. Raises InputError."""
    try:
        kept = msgspec.json.decode(typed, type=_KeptPlan)
    except (msgspec.DecodeError, UnicodeEncodeError, RecursionError) as error:
        msg = "the choices for this film cannot be read"
        raise InputError(msg, remedy="Choose again.") from error
    choices = {
        label: FilmChoice(one.strategy, one.picture, one.length) for label, one in kept.choices.items()
    }
    return FilmPlan(choices, kept.tried, kept.minutes, kept.mistake, kept.shape, kept.turns, kept.tidy)


def _name(night: int) -> str:
    return f"film plan of night {night}"
