"""Numbers of a recording that were heard otherwise, and which of them the teacher keeps as they were said."""

import hashlib
from collections.abc import Collection, Mapping, Sequence

import msgspec
from msgspec import Struct

from onewhole.desk.walkthrough.listening import ToldSlip
from onewhole.desk.walkthrough.recordings import Heard
from onewhole.desk.walkthrough.soundtrack_choice import called
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from onewhole.store.settings import set_setting, setting


class FilmSlip(Struct, frozen=True):
    """A number heard otherwise in a film: in which part, at which millisecond, what was said and is written.

    ``key`` tells it from every other one as long as its part is not recorded again.
    """

    label: str
    at: int
    said: str
    board: str
    key: str

    @property
    def second(self) -> float:
        """Return where the film is wound to: a moment before it is said."""
        return max(0, self.at - 1500) / 1000

    @property
    def time(self) -> str:
        """Write the time as a player shows it: 2:18."""
        minutes, seconds = divmod(self.at // 1000, 60)
        return f"{minutes}:{seconds:02}"

    @property
    def part(self) -> str:
        """Return what its part is called in a sentence."""
        return called(self.label)


def film_slips(slips: Sequence[ToldSlip], recorded: Mapping[str, Heard]) -> tuple[FilmSlip, ...]:
    """Return the slips of a film that was made of recordings."""
    return tuple(_slip(slip, recorded) for slip in slips)


def _slip(slip: ToldSlip, recorded: Mapping[str, Heard]) -> FilmSlip:
    which = recorded[slip.label].which if slip.label in recorded else ""
    said = repr((slip.label, which, str(slip.within), slip.said, slip.board))
    key = hashlib.sha256(said.encode()).hexdigest()[:16]
    return FilmSlip(slip.label, int(slip.at * 1000), slip.said, slip.board, key)


def kept_slips(book: Store, night: int) -> frozenset[str]:
    """Return the keys of the slips that the teacher keeps as they were said."""
    try:
        return frozenset(msgspec.json.decode(setting(book, _name(night)) or "[]", type=list[str]))
    except msgspec.DecodeError:
        return frozenset()


def keep_slip(book: Store, night: int, slips: Collection[FilmSlip], key: str, *, kept: bool) -> None:
    """Keep a slip of the film as it was said, or tell it again; those of older recordings are forgotten.

    Raises NotThere where the film has no such slip, and StoreRefused.
    """
    keys = {slip.key for slip in slips}
    if key not in keys:
        raise NotThere(
            "The film does not have this number any more",
            where=key[:20],
            remedy="Load the page again: the film was made anew.",
        )
    with book.transaction() as within:
        stands = set(kept_slips(within, night)) & keys
        now = stands | {key} if kept else stands - {key}
        set_setting(within, _name(night), msgspec.json.encode(sorted(now)).decode() if now else None)


def _name(night: int) -> str:
    return f"kept slips of night {night}"
