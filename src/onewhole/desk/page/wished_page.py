"""A page composed by wishes at the page desk, under the header that stands there."""

from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from typing import TypeVar

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.page import compose
from onewhole.desk.page.page_begun import typed_settings
from onewhole.desk.page.parse_wishes import TypedWishes, parse_wishes
from onewhole.findings.wished_skill import WishedSkill
from onewhole.languages.english.wished_skills import wished_heads
from onewhole.problems.needs import needs
from onewhole.sheets.clash import ClashError
from onewhole.sheets.composed import Composed
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.wishes import OpenQuestion, WishError, Wishes
from onewhole.sheets.writing import write_sheet
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import USUAL

_N = TypeVar("_N", bound=int | None)

#: What is said of a problem that is due and finds no room.
_NO_ROOM = "{} is due to come back and finds no room beside these wishes."
#: So many letters of a recipe may tell what does not come again.
_ROOM_TO_AVOID = 2000


class WishForm(Struct, frozen=True):
    """Wishes as typed into a form; what is left empty is as usual.

    ``kind`` is a skill as it is typed (:mod:`onewhole.findings.wished_skill`), ``denominators`` are numbers
    with commas, ``regrouping`` is a share such as 2/3, or any, ``told`` how many are told as stories. Another
    ``seed`` gives another page.
    """

    kind: str = "subtract"
    number: str = ""
    denominators: str = ""
    regrouping: str = ""
    minutes: str = ""
    seed: str = ""
    digits: str = ""
    told: str = ""


def skills_offered() -> tuple[tuple[str, tuple[tuple[WishedSkill, str], ...]], ...]:
    """Return the skills to choose from, under their heads, each with what it is called."""
    return wished_heads()


class Composition(Struct, frozen=True):
    """What is typed now, in plain lines what the page tells apart and how good it is, and its recipe.

    The recipe does not stand in what is typed: on a desk that is changed by hand it would be long and untrue.
    """

    typed: str
    told: tuple[str, ...]
    recipe: str


def composed(
    typed: str,
    form: WishForm,
    *,
    not_again: Sequence[str] = (),
    questions: Sequence[OpenQuestion] = (),
    back: Sequence[str] = (),
) -> Composition:
    r"""Return a page composed by wishes. Of what was ``typed`` the settings stay, and no problem.

    ``not_again`` are typed sheets, the latest last, whose problems do not come again, as far back as a recipe
    has room for them; ``questions`` are those that the class's answers left open; ``back`` are problems of
    skills that are due, taken as far as they find room. Raises WishError for what cannot be read or met, in
    plain words, with the nearest that can be met.

    >>> made = composed("title: Kites\n\n1. 5 - 2", WishForm(number="3", denominators="4"))
    >>> made.typed.splitlines()[0], len(made.told) > 1
    ('title: Kites', True)
    """
    header, wishes = read_wishes(typed, form)
    avoid = tuple(_avoided(not_again, wishes))
    asked = replace(wishes, avoid=avoid, questions=tuple(questions))
    made, told = _coming_back(asked, header, tuple(back)[: wishes.number - 1])
    recipe = made.sheet.header.recipe
    plain = replace(made.sheet, header=replace(made.sheet.header, recipe=""))
    return Composition(write_sheet(plain), (*compose.told(made), *told), recipe)


def _coming_back(wishes: Wishes, header: Header, back: tuple[str, ...]) -> tuple[Composed, tuple[str, ...]]:
    """Compose with what comes back, as much of it as the other wishes leave room for; say what found none."""
    for count in range(len(back), 0, -1):
        with suppress(ClashError):
            made = compose.compose(replace(wishes, back=back[:count]), header=header)
            return made, tuple(map(_NO_ROOM.format, back[count:]))
    return compose.compose(wishes, header=header), tuple(map(_NO_ROOM.format, back))


def read_wishes(typed: str, form: WishForm) -> tuple[Header, Wishes]:
    """Return the settings that stay and the wishes of a form; whether they can be met is not known yet.

    Raises WishError for what cannot be read.

    >>> read_wishes("title: Kites", WishForm(number="3"))[1].number
    3
    """
    header = replace(typed_settings(typed), recipe="")
    return header, parse_wishes(
        TypedWishes(
            skill=form.kind,
            number=_number("number of problems", form.number, TypedWishes().number),
            denominators=form.denominators,
            regrouping=form.regrouping.strip(),
            strategy=header.strategy.key if header.strategy not in {REGROUP_FIRST, USUAL} else "",
            minutes=_number("minutes", form.minutes, header.minutes),
            seed=_number("seed", form.seed, TypedWishes().seed),
            digits=_number("number of digits", form.digits, None),
            told=_number("number of problems told as stories", form.told, TypedWishes().told),
        )
    )


def _avoided(not_again: Sequence[str], wishes: Wishes) -> Iterator[str]:
    """Yield what was asked and could come again by these wishes, the latest first, while there is room."""
    asked = (one for sheet in reversed(not_again) for one in read_sheet(sheet).problems)
    could = (one for one in asked if set(needs(one.statement).denominators) <= set(wishes.denominators))
    yield from with_room_to_avoid(one.typed for one in could)


def with_room_to_avoid(typed: Iterable[str]) -> Iterator[str]:
    """Yield problems while a recipe has room to tell that they do not come again."""
    room = _ROOM_TO_AVOID
    for one in typed:
        room -= len(one) + 1
        if room < 0:
            return
        yield one


def _number(name: str, said: str, usual: _N) -> int | _N:
    """Read a number; nothing typed means the usual."""
    plain = said.strip()
    if not plain:
        return usual
    if not (plain.isascii() and plain.isdigit() and len(plain) <= 9):
        msg = f"“{plain[:40]}” is no {name}"
        raise WishError(msg, remedy="Write it in digits, such as 12.")
    return int(plain)
