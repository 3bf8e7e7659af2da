"""A film's address on paper: the words, and a square code (QR) that a phone's camera opens it by."""

from xml.etree.ElementTree import Element, SubElement, tostring

from onewhole.languages.page_words import PageWords
from onewhole.writers.printed import Json

#: White round the code, in squares. Source: ISO/IEC 18004:2015, 6.3.8 (quiet zone of four modules).
QUIET = 4
#: A square of the code, in hundredths of a millimetre: a child's page is copied and folded, and 0.6 mm are
#: seven dots of a copier of 300 dots an inch. Our own choice, no source.
SQUARE = 60


def film_link(address: str, page: PageWords) -> Json:
    """Return what a page prints of a film's address; nothing for no address.

    The code can be read with about 15 % of it covered (level M of ISO/IEC 18004), or more where that takes no
    more squares.

    >>> from onewhole.languages.english.round_page import ROUND_PAGE
    >>> film_link("https://example.org/k", ROUND_PAGE)["film"]["side_mm"]
    '19.80'
    """
    if not address:
        return {}
    from segno import make  # noqa: PLC0415 - most sheets have no film

    rows = tuple(bytes(row) for row in make(address, error="m", micro=False).matrix)
    side = len(rows) + 2 * QUIET
    drawn = _drawn(rows, side)
    code: Json = {
        "words": page.film,
        "address": address,
        "svg": drawn,
        "alt": page.film_code,
        "side_mm": _mm(side),
        "quiet_mm": _mm(QUIET),
    }
    return {"film": code}


def _mm(squares: int) -> str:
    return f"{squares * SQUARE // 100}.{squares * SQUARE % 100:02}"


def _drawn(rows: tuple[bytes, ...], side: int) -> str:
    """Draw the black squares as one shape, a run of a row a rectangle, so that no seam shows between them."""
    root = Element(
        "svg",
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "viewBox": f"0 0 {side} {side}",
            "shape-rendering": "crispEdges",
        },
    )
    parts = (
        f"M{start + QUIET} {at + QUIET}h{length}v1h-{length}z"
        for at, row in enumerate(rows)
        for start, length in _black(row)
    )
    SubElement(root, "path", {"fill": "#000", "d": "".join(parts)})
    return tostring(root, encoding="unicode")


def _black(row: bytes) -> tuple[tuple[int, int], ...]:
    """Return where the black runs of a row start, and how long they are."""
    found: list[tuple[int, int]] = []
    for at, black in enumerate(row):
        if black and found and sum(found[-1]) == at:
            found[-1] = (found[-1][0], found[-1][1] + 1)
        elif black:
            found.append((at, 1))
    return tuple(found)
