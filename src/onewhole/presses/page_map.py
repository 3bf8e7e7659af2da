"""Where everything stands on a page that is pressed, asked of the press itself: nothing is laid out twice."""

from collections.abc import Iterable, Mapping
from typing import Final

from msgspec import Struct

from onewhole.errors import Fault
from onewhole.presses.pdf import press_asked
from onewhole.sheets.header import Paper
from onewhole.sheets.page_map import AnswerBox, MappedPage, PageBox, PageMap
from onewhole.sheets.room import PAPERS
from onewhole.writers.printed import Printed

#: Hundredths of a millimetre.
UNITS: Final = 100
_PARTS: Final = ("whole", "over", "under")


class _Stands(Struct, frozen=True):
    """What stands somewhere: what it is, its page and box, and what else the look of the page says of it."""

    what: str
    page: int
    box: PageBox
    said: Mapping[str, object]


def page_map(page: Printed, key: int) -> PageMap:
    """Return the map of a pupils' page that has marks in its corners.

    ``key`` is what its marks say. Raises PressError, and Fault for a page without marks.
    """
    stands = [_stands(said) for said in press_asked(page.source, "stands", data=page.content)]
    paper = Paper(str(page.data["paper"]))
    pages = sorted({one.page for one in stands})
    if not pages:
        raise Fault("a page without marks has no map")
    return PageMap(
        key, tuple(_mapped(number, paper, [one for one in stands if one.page == number]) for number in pages)
    )


def _stands(said: Mapping[str, object]) -> _Stands:
    box = PageBox(*(_hundredths(said[name]) for name in ("left", "top", "width", "height")))
    return _Stands(str(said["what"]), int(str(said["page"])), box, said)


def _hundredths(length: object) -> int:
    assert isinstance(length, int | float)
    return round(length * UNITS)


def _mapped(number: int, paper: Paper, stands: Iterable[_Stands]) -> MappedPage:
    by_what: dict[str, list[_Stands]] = {}
    for one in stands:
        by_what.setdefault(one.what, []).append(one)

    def boxes(what: str) -> tuple[PageBox, ...]:
        return tuple(one.box for one in sorted(by_what.get(what, ()), key=lambda it: str(it.said["at"])))

    (pupil,) = by_what["pupil"]
    windows = {(one.said["label"], one.said["part"]): one.box for one in by_what.get("window", ())}
    width, height = (int(side * UNITS) for side in PAPERS[paper])
    return MappedPage(
        number,
        width,
        height,
        marks=boxes("corner"),
        pupil=pupil.box,
        pupil_marks=boxes("pupil mark"),
        letters=boxes("letter"),
        cells=tuple(_cell(one, windows) for one in by_what.get("answer", ())),
    )


def _cell(one: _Stands, windows: Mapping[tuple[object, object], PageBox]) -> AnswerBox:
    label = one.said["label"]
    found = tuple(windows[label, part] for part in _PARTS if (label, part) in windows)
    return AnswerBox(str(label), one.box, one.said["line"] is True, found, str(one.said["unit"]))
