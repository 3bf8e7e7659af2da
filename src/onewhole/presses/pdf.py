"""The page press: Typst source and data go in, the bytes of a PDF come out."""

import datetime as dt
import json
import re
from collections.abc import Sequence
from functools import cache
from importlib.resources import files
from threading import Lock
from typing import Final, Literal

import typst

from onewhole.errors import OnewholeError

Standard = Literal["ua-1", "1.7"]

_FONTS: Final = ("fontpkg_lexend", "fontpkg_atkinson_hyperlegible")
_PLACE: Final = re.compile(r"([\w.-]+\.typ):(\d+):\d+")
_NO_SIGN: Final = re.compile(r'the text `"(.*?)"` could not be displayed')
#: What a look file refuses (``refused`` in ``writers/look/ink.typ``), as the compiler tells it.
_REFUSED: Final = re.compile(r"assertion failed: (\{.*\})", re.DOTALL)
_FAULT: Final = "This is a fault in how the page is made, not in what you typed: please report it."


class PressError(OnewholeError, RuntimeError):
    """A page that the press cannot print: what is wrong, in which part of the page, what to do next."""


class MissingSignError(PressError):
    """No font here has some of the page's signs."""

    signs: tuple[str, ...]

    def __init__(self, signs: tuple[str, ...]) -> None:
        super().__init__(
            f"No font here has the sign {' '.join(signs)}",
            where="the words of the page",
            remedy="Take it out, or write it in letters.",
        )
        self.signs = signs

    def __reduce__(self) -> tuple[type["MissingSignError"], tuple[tuple[str, ...]]]:
        """Be copied by the signs alone."""
        return MissingSignError, (self.signs,)


def press(source: str, *, data: bytes | None = None, when: dt.datetime, standard: Standard = "ua-1") -> bytes:
    r"""Return the PDF that `source` describes.

    `source` is Typst text; it may import the look of the pages as `/look.typ`. `data` is UTF-8 text that the
    source reads as `sys.inputs.data` (a page's data is JSON). `when` is the date written into the PDF and has
    a time zone. The default standard is PDF/UA-1 (ISO 14289-1), tagged for a screen reader: a page without a
    title, or with a formula or picture that has no spoken words, is refused.

    Only the fonts that are installed with this package are used, so the same input gives the same bytes on
    every machine with the same Typst. Any number of threads may press; they take turns.

    Raises `PressError`, and `ValueError` for a `when` without a time zone.

    >>> pdf = press("#set document(title: [Kites])\nSix kites.", when=dt.datetime(2025, 3, 6, tzinfo=dt.UTC))
    >>> pdf[:5]
    b'%PDF-'
    """
    if when.tzinfo is None:
        raise ValueError("The date of a page needs a time zone: two places would print two pages.")
    compiler, turn = _machine()
    inputs = {} if data is None else {"data": data.decode("utf-8")}
    try:
        with turn:
            made = compiler.compile(
                source.encode(),
                format="pdf",
                sys_inputs=inputs,
                pdf_standards=[standard],
                timestamp=int(when.timestamp()),
            )
    except typst.TypstError as error:
        raise _refusal(error) from error
    assert isinstance(made, bytes)
    return made


def press_images(source: str, *, data: bytes) -> tuple[bytes, ...]:
    r"""Return each page that `source` describes as a PNG, a point for a pixel; otherwise as :func:`press`.

    >>> pages = press_images("#set page(width: 3pt, height: 2pt, margin: 0pt)\n#pagebreak()", data=b"")
    >>> [page[1:4] for page in pages]
    [b'PNG', b'PNG']
    """
    compiler, turn = _machine()
    try:
        with turn:
            made = compiler.compile(
                source.encode(), format="png", ppi=72, sys_inputs={"data": data.decode("utf-8")}
            )
    except typst.TypstError as error:
        raise _refusal(error) from error
    return _each(made)


def press_drawings(source: str, *, data: bytes) -> tuple[bytes, ...]:
    r"""Return each page that `source` describes as an SVG, for a screen; otherwise as :func:`press`.

    Letters are drawn as shapes, so it needs no font and holds no words. A labelled part of the page carries
    its label as `data-typst-label`.

    >>> pages = press_drawings("#set page(width: 3pt, height: 2pt, margin: 0pt)\n#pagebreak()", data=b"")
    >>> [page[:4] for page in pages]
    [b'<svg', b'<svg']
    """
    compiler, turn = _machine()
    try:
        with turn:
            made = compiler.compile(source.encode(), format="svg", sys_inputs={"data": data.decode("utf-8")})
    except typst.TypstError as error:
        raise _refusal(error) from error
    return _each(made)


def press_asked(source: str, label: str, *, data: bytes) -> list[dict[str, object]]:
    r"""Return what the page that `source` describes says of itself, in metadata under a label.

    Otherwise as :func:`press`.

    >>> press_asked("#metadata((kites: 7))<told>", "told", data=b"")
    [{'kites': 7}]
    """
    _, turn = _machine()
    asked = _compiler(source.encode(), {"data": data.decode("utf-8")})
    try:
        with turn:
            told: list[dict[str, object]] = json.loads(asked.query(f"<{label}>", field="value"))
    except typst.TypstError as error:
        raise _refusal(error) from error
    return told


def _each(made: bytes | list[bytes] | None) -> tuple[bytes, ...]:
    """Return the pages of a drawing, of which one alone comes by itself."""
    assert made is not None
    return (made,) if isinstance(made, bytes) else tuple(made)


@cache
def _machine() -> tuple[typst.Compiler, Lock]:
    """One compiler for the life of the program: it reads the fonts and the look once. One page at a time."""
    return _compiler(), Lock()


def _compiler(source: bytes = b"", inputs: dict[str, str] | None = None) -> typst.Compiler:
    """Return a compiler; what is asked of a page is asked of one that has nothing but that page."""
    look = str(files("onewhole") / "writers")
    return typst.Compiler(source, root=look, font_paths=_fonts(), sys_inputs=inputs or {})


@cache
def _fonts() -> typst.Fonts:
    """The fonts of the package and those of the press itself, read once."""
    ours = [str(files(package)) for package in _FONTS]
    return typst.Fonts(include_system_fonts=False, include_embedded_fonts=True, font_paths=ours)


def _refusal(error: typst.TypstError) -> PressError:
    """Put the compiler's words into a teacher's; what a look file refuses comes with its own."""
    if signs := tuple(dict.fromkeys(_NO_SIGN.findall(error.diagnostic))):
        return MissingSignError(signs)
    what, remedy = error.message, _hinted(error.hints)
    if ours := _REFUSED.fullmatch(error.message):
        told = json.loads(ours[1])
        what, remedy = told["what"], told["next"]
    return PressError(f"The page cannot be printed: {what}", where=_where(error), remedy=remedy)


def _hinted(hints: Sequence[str]) -> str:
    hint = "; ".join(hints)
    return f"{hint[:1].upper()}{hint[1:]}." if hint else _FAULT


def _where(error: typst.TypstError) -> str:
    """The file and line of the page's source, without the folders of this machine."""
    place = _PLACE.search(error.diagnostic)
    if place is None:
        return "the page"
    name = "the source" if place[1].startswith("__") else place[1]
    return f"{name}, line {place[2]}"
