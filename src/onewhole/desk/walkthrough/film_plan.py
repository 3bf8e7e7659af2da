"""How a night is to be filmed, as the teacher left it on the page: kept in the class's file by night."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from onewhole.desk.walkthrough.film import FilmWishes
from onewhole.desk.walkthrough.film_options import FilmChoice, choices_json, choices_of
from onewhole.desk.walkthrough.soundtrack_choice import Recorded
from onewhole.errors import InputError
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting

#: A film is fitted into so many minutes at most.
MOST_MINUTES = 120


@dataclass(frozen=True, slots=True)
class FilmPlan:
    """Choices by problem, the problems to try first, minutes to fit into, and whether a mistake is shown.

    Raises InputError for minutes that are none.
    """

    choices: Mapping[str, FilmChoice] = field(default_factory=dict)
    tried: tuple[str, ...] = ()
    minutes: int | None = None
    mistake: bool = False

    def __post_init__(self) -> None:
        """Refuse minutes that cannot be."""
        if self.minutes is not None and not 1 <= self.minutes <= MOST_MINUTES:
            msg = f"a film takes from 1 to {MOST_MINUTES} minutes"
            raise InputError(msg, remedy="Give another number, or leave it empty.")

    def wishes(self, recorded: Mapping[str, Recorded] | None = None) -> FilmWishes:
        """Return the plan as wishes for a film, with what was recorded."""
        return FilmWishes(
            minutes=self.minutes,
            tried=self.tried,
            mistake=self.mistake,
            choices=self.choices,
            recorded=recorded or {},
        )


def keep_plan(book: Store, night: int, plan: FilmPlan) -> None:
    """Keep how a night is to be filmed. Raises StoreRefused."""
    set_setting(book, _name(night), plan_text(plan))


def plan_of(book: Store, night: int) -> FilmPlan:
    """Return how a night is to be filmed; without any choices where none were kept. Raises InputError."""
    typed = setting(book, _name(night))
    return FilmPlan() if typed is None else plan_read(typed)


def plan_text(plan: FilmPlan) -> str:
    """Write a plan as JSON; the same plan is the same text.

    >>> plan_text(FilmPlan({"1": FilmChoice(length="short")}, minutes=5))
    '{"choices": {"1": {"length": "short"}}, "tried": [], "minutes": 5, "mistake": false}'
    """
    kept = {
        "choices": json.loads(choices_json(plan.choices)),
        "tried": list(plan.tried),
        "minutes": plan.minutes,
        "mistake": plan.mistake,
    }
    return json.dumps(kept, ensure_ascii=False)


def plan_read(typed: str) -> FilmPlan:
    """Read a plan as it was written. Raises InputError."""
    try:
        kept: dict[str, Any] = json.loads(typed)
        return FilmPlan(
            choices_of(json.dumps(kept["choices"])),
            tuple(str(label) for label in kept["tried"]),
            kept["minutes"],
            bool(kept["mistake"]),
        )
    except (ValueError, TypeError, KeyError) as error:
        msg = "the choices for this film cannot be read"
        raise InputError(msg, remedy="Choose again.") from error


def _name(night: int) -> str:
    return f"film plan of night {night}"
