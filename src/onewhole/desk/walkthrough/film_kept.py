"""A film that is there whole and would be made just so again: it stays as it is."""

from hashlib import sha256
from pathlib import Path

import msgspec
from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.page.put_pages import Made
from onewhole.desk.walkthrough.film_files import FilmFiles
from onewhole.presses.manifest import content_digest
from onewhole.presses.own_code import code_digest
from onewhole.sheets.document import Sheet
from onewhole.sheets.writing import write_sheet

#: The file that tells of the whole film, beside its parts.
_WHOLE = "whole.json"


class _Whole(Struct, frozen=True):
    """What a film was made from, its files (page, name, SHA-256), and what is told of it."""

    made_from: str
    files: tuple[tuple[str, str, str], ...]
    told: FilmFiles


def film_key(sheet: Sheet, wishes: object) -> str:
    """Return the digest of all that a film without recordings comes from: the page, the wishes, the program.

    ``wishes`` are told by their ``repr``, in which no set may stand: its order changes.
    """
    return sha256(repr((code_digest(), write_sheet(sheet), wishes)).encode()).hexdigest()


def kept_film(folder: Path, parts: str, key: str) -> FilmFiles | None:
    """Return what is told of the film in a folder if it was made from the same and no file was changed."""
    try:
        whole = msgspec.json.decode(
            (folder / parts / _WHOLE).read_bytes(), type=_Whole, dec_hook=lambda kind, told: kind(told)
        )
        if whole.made_from != key:
            return None
        if any(content_digest(folder / name)[1] != digest for _, name, digest in whole.files):
            return None
    except (OSError, msgspec.DecodeError, ValueError):
        return None
    filmed = whole.told.filmed
    stays = replace(
        filmed, frames_drawn=0, parts_rendered=0, parts_kept=filmed.parts_kept + filmed.parts_rendered
    )
    made = tuple(Made(page, folder / name) for page, name, _ in whole.files)
    return replace(whole.told, made=made, filmed=stays)


def keep_film(parts: Path, key: str, shown: FilmFiles) -> None:
    """Keep what is told of a film that lies whole in the folder round that of its ``parts``."""
    files = tuple((one.page, one.path.name, content_digest(one.path)[1]) for one in shown.made)
    told = msgspec.json.encode(_Whole(key, files, replace(shown, made=())), enc_hook=str)
    (parts / _WHOLE).write_bytes(told)
