"""From what a teacher types to the wishes for a page."""

import re
from collections.abc import Sequence
from enum import StrEnum
from fractions import Fraction
from pathlib import Path
from typing import TypeVar

from msgspec import Struct

from onewhole.desk.marking.mark import mark_files
from onewhole.desk.page.open_questions import left_open
from onewhole.desk.page.sheets import sheet_in
from onewhole.findings.wished_skill import WishedSkill
from onewhole.marking.diagnosis.diagnosis import diagnose
from onewhole.sheets.wishes import OpenQuestion, Review, WishError, Wishes, open_questions
from onewhole.working.strategies.table import strategy_named

_Choice = TypeVar("_Choice", bound=StrEnum)
USUAL = Wishes()
#: The skills that may be wished for, as they are typed.
SKILLS = tuple(skill.value for skill in WishedSkill)


class TypedWishes(Struct, frozen=True):
    """Wishes as typed; None and empty mean the usual.

    ``denominators`` are numbers with commas or blanks between them, ``regrouping`` is a share such as 2/3,
    or ``any``. ``told`` is how many problems are told as stories. ``back`` are problems that come back as
    typed. ``not_again`` are sheets whose problems do not come again. ``answers`` are those of a class to the
    sheet ``after``: what they leave open is asked.
    """

    skill: str = USUAL.skill.value
    number: int = USUAL.number
    denominators: str = ""
    largest: int = USUAL.largest
    regrouping: str = ""
    strategy: str = ""
    minutes: int | None = None
    review: Sequence[str] = ()
    back: Sequence[str] = ()
    faded: bool = False
    seed: int = USUAL.seed
    digits: int | None = None
    doubles: bool = False
    told: int = USUAL.told
    not_again: Sequence[Path] = ()
    after: Path | None = None
    answers: Path | None = None


def parse_wishes(typed: TypedWishes) -> Wishes:
    """Return the wishes. Raises WishError and UnknownStrategyError for what cannot be read, SheetError and
    AnswersError with every mistake of a file.

    >>> parse_wishes(TypedWishes(skill="both", denominators="8, 4", regrouping="1/2")).denominators
    (4, 8)
    """
    if typed.answers and not typed.after:
        msg = "answers were given, and not the sheet that they answer"
        raise WishError(msg, remedy="Name the sheet too: --after SHEET --answers FILE.")
    nights = [*typed.not_again, *([typed.after] if typed.after else [])]
    return Wishes(
        skill=_one_of(WishedSkill, "skill", typed.skill),
        number=typed.number,
        denominators=_numbers(typed.denominators) or USUAL.denominators,
        largest=typed.largest,
        regrouping=_share(typed.regrouping) if typed.regrouping else USUAL.regrouping,
        strategy=strategy_named(typed.strategy) if typed.strategy else USUAL.strategy,
        minutes=typed.minutes,
        avoid=tuple(problem.typed for night in nights for problem in sheet_in(night).problems),
        review=tuple(_one_of(Review, "review", one) for one in typed.review),
        back=tuple(typed.back),
        faded=typed.faded,
        questions=_asked(typed.after, typed.answers) if typed.after and typed.answers else (),
        seed=typed.seed,
        digits=typed.digits,
        doubles=typed.doubles,
        told=typed.told,
    )


def _asked(sheet: Path, answers: Path) -> tuple[OpenQuestion, ...]:
    return open_questions(left_open(diagnose(mark_files(sheet, answers).marks)))


def _one_of(choices: type[_Choice], name: str, said: str) -> _Choice:
    plain = " ".join(said.lower().replace("_", " ").replace("-", " ").split())
    try:
        return choices(plain)
    except ValueError:
        msg = f"there is no {name} “{said}” to compose"
        raise WishError(msg, remedy=f"Wish for one of: {', '.join(choices)}.") from None


def _numbers(said: str) -> tuple[int, ...]:
    parts = re.findall(r"[^\s,;]+", said)
    for part in parts:
        if not (part.isascii() and part.isdigit() and len(part) <= 3):
            msg = f"“{part[:40]}” is no denominator"
            raise WishError(msg, remedy="Write numbers with commas between them, such as 4,6,8.")
    return tuple(map(int, parts))


def _share(said: str) -> Fraction | None:
    if said.strip().lower() == "any":
        return None
    try:
        return Fraction(said.replace(" ", ""))
    except (ValueError, ZeroDivisionError):
        msg = f"“{said[:40]}” is no share of a page"
        raise WishError(msg, remedy="Write a share from 0 to 1, such as 2/3, or any.") from None
