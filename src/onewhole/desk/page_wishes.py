"""A page composed by wishes at the page desk, under the header that stands there."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from onewhole.desk import compose
from onewhole.desk.wishing import Typed, wished
from onewhole.errors import InputError
from onewhole.sheets.header import Header
from onewhole.sheets.reading import lines_of, read_sheet
from onewhole.sheets.rows import Rows
from onewhole.sheets.settings import header_of, setting_named
from onewhole.sheets.wishes import WishError
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

_N = TypeVar("_N", bound=int | None)

__all__ = ["Composition", "WishForm", "composed"]


@dataclass(frozen=True, slots=True)
class WishForm:
    """Wishes as typed into a form; what is left empty is as usual.

    ``kind`` is subtract, add or both, ``denominators`` are numbers with commas, ``regrouping`` is a share
    such as 2/3, or any. Another ``seed`` gives another page.
    """

    kind: str = "subtract"
    number: str = ""
    denominators: str = ""
    regrouping: str = ""
    minutes: str = ""
    seed: str = ""


@dataclass(frozen=True, slots=True)
class Composition:
    """What is typed now, and in plain lines what the page tells apart and how good it is."""

    typed: str
    told: tuple[str, ...]


def composed(typed: str, form: WishForm, *, not_again: Sequence[str] = ()) -> Composition:
    r"""Return a page composed by wishes. Of what was ``typed`` the settings stay, and no problem.

    ``not_again`` are typed sheets whose problems do not come again. Raises WishError for what cannot be read
    or met, in plain words, with the nearest that can be met.

    >>> made = composed("title: Kites\n\n1. 5 - 2", WishForm(number="3", denominators="4"))
    >>> made.typed.splitlines()[0], len(made.told) > 1
    ('title: Kites', True)
    """
    header = replace(_header(typed), recipe="")
    wishes = wished(
        Typed(
            skill=form.kind,
            number=_number("number of problems", form.number, Typed().number),
            denominators=form.denominators,
            regrouping=form.regrouping.strip(),
            strategy=header.strategy.key if header.strategy is not REGROUP_FIRST else "",
            minutes=_number("minutes", form.minutes, header.minutes),
            seed=_number("seed", form.seed, Typed().seed),
        )
    )
    avoid = tuple(one.typed for sheet in not_again for one in read_sheet(sheet).problems)
    made = compose.compose(replace(wishes, avoid=avoid), header=header)
    return Composition(compose.typed(made), compose.told(made))


def _number(name: str, said: str, usual: _N) -> int | _N:
    """Read a number; nothing typed means the usual."""
    plain = said.strip()
    if not plain:
        return usual
    if not (plain.isascii() and plain.isdigit() and len(plain) <= 9):
        msg = f"“{plain[:40]}” is no {name}"
        raise WishError(msg, remedy="Write it in digits, such as 12.")
    return int(plain)


def _header(typed: str) -> Header:
    """Return the settings of a typed sheet as far as they can be read; it need have no problem yet."""
    lines, said = lines_of(typed), {}
    for at in Rows.of(typed).settings.values():
        name, _, value = lines[at].partition(":")
        try:
            said[setting_named(name).name] = " ".join(value.split())
        except InputError:
            continue
    return header_of(said)[0]
