"""How a class's papers are read: how sure a reading must be, whether it is learnt from, what is kept."""

import msgspec
from msgspec import Struct, field

from onewhole.errors import InputError
from onewhole.marking.paper.calibration import Calibration
from onewhole.marking.paper.sureness import Sureness
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting


class PaperWishes(Struct, frozen=True):
    """The teacher's wishes on papers.

    ``learns``: what is confirmed moves the threshold for this class; ``learnt`` are the counts of that, and
    nothing of any child. ``keeps``: the pictures of cells stay after checking until the night is deleted.
    """

    sureness: Sureness = Sureness.USUAL
    learns: bool = False
    keeps: bool = False
    learnt: Calibration = field(default_factory=Calibration)

    def limit(self, sureness: Sureness | None = None) -> int:
        """Return the doubt that a setting (left out: the chosen one) allows in this class."""
        chosen = self.sureness if sureness is None else sureness
        return self.learnt.limit(chosen) if self.learns else chosen.limit


def paper_wishes(book: Store, room_number: int) -> PaperWishes:
    """Return the wishes of a class; the usual ones where none can be read."""
    text = setting(book, _name(room_number))
    try:
        return PaperWishes() if text is None else msgspec.json.decode(text, type=PaperWishes)
    except (msgspec.DecodeError, ValueError, RecursionError):
        return PaperWishes()


def keep_wishes(book: Store, room_number: int, wishes: PaperWishes) -> None:
    """Keep wishes as they are, with what was learnt."""
    set_setting(book, _name(room_number), msgspec.json.encode(wishes).decode())


def wishes_text(wishes: PaperWishes) -> str:
    """Return wishes in a few words, without what was learnt.

    >>> wishes_text(PaperWishes(learns=True))
    'Of the answers that are read without a look, about 1 in 200 may be wrong; learns from what is confirmed'
    """
    said = [sureness_told(wishes.sureness)]
    if wishes.learns:
        said.append("learns from what is confirmed")
    if wishes.keeps:
        said.append("keeps the pictures of cells")
    return "; ".join(said)


def sureness_told(sureness: Sureness) -> str:
    """Return what a setting means.

    >>> sureness_told(Sureness.EVERY)
    'Every answer is shown, and none is read without a look'
    """
    if not sureness.one_in:
        return "Every answer is shown, and none is read without a look"
    return f"Of the answers that are read without a look, about 1 in {sureness.one_in} may be wrong"


def sureness_named(typed: str) -> Sureness:
    """Return the setting of a name. Raises InputError.

    >>> sureness_named(" More")
    <Sureness.MORE: 'more'>
    """
    for one in Sureness:
        if one.value == typed.strip().lower():
            return one
    raise InputError(
        f"“{typed[:20]}” does not say how sure an answer must be",
        remedy=f"Write one of: {', '.join(one.value for one in Sureness)}.",
    )


def _name(room_number: int) -> str:
    return f"papers of class {room_number}"
