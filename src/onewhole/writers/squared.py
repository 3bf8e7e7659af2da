"""Drawings on squared paper that are no picture of a problem: lines, words, hatched boxes, names of days."""

from datetime import date
from fractions import Fraction
from functools import lru_cache
from xml.etree.ElementTree import Element, SubElement

from onewhole.notations.pencil import APART, FAINT, GRID, HATCH, INK, LINE, PAPER, SQUARE
from onewhole.notations.svg import image, mm

#: The size of ordinary letters, in millimetres.
LETTERS = Fraction(33, 10)
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def squared_page(
    name: str, title: str, told: str, width: Fraction, height: Fraction, *, grid: bool = True
) -> Element:
    """Return an empty drawing of squared paper with its title and what it says in words.

    ``name`` is its class, and begins the ids of title and description. Without ``grid`` the paper is blank.
    """
    page = image(width, height, {"class": name, "aria-labelledby": f"{name}-title {name}-told"})
    SubElement(page, "title", {"id": f"{name}-title"}).text = title
    SubElement(page, "desc", {"id": f"{name}-told"}).text = told
    SubElement(page, "rect", {"width": mm(width), "height": mm(height), "fill": PAPER})
    if grid:
        line(page, _squares(width, height), FAINT, GRID)
    return page


def day_name(day: date) -> str:
    """Return a day in short, such as 23 Nov.

    >>> day_name(date(2026, 11, 23))
    '23 Nov'
    """
    return f"{day.day} {month_name(day)}"


def month_name(day: date) -> str:
    """Return the month of a day in short.

    >>> month_name(date(2026, 11, 23))
    'Nov'
    """
    return _MONTHS[day.month - 1]


def hatched(page: Element, left: Fraction, top: Fraction, wide: Fraction, tall: Fraction) -> None:
    """Draw a box with hatching in it."""
    place = {"x": mm(left), "y": mm(top), "width": mm(wide), "height": mm(tall)}
    SubElement(page, "rect", {**place, "fill": PAPER})
    line(page, f"M{mm(left)} {mm(top)}{_hatching(wide, tall)}", HATCH)
    SubElement(page, "rect", {**place, "fill": "none", "stroke": INK, "stroke-width": mm(LINE)})


def line(page: Element, way: str, thick: Fraction, color: str = INK) -> None:
    """Draw a line; nothing where there is no way."""
    if way:
        SubElement(page, "path", {"d": way, "fill": "none", "stroke": color, "stroke-width": mm(thick)})


def words(
    page: Element, x: Fraction, y: Fraction, said: str, anchor: str, *, size: Fraction = LETTERS
) -> None:
    """Write words at a point, with clear paper round them."""
    SubElement(
        page,
        "text",
        {
            "x": mm(x),
            "y": mm(y),
            "font-size": mm(size),
            "font-family": "Lexend, sans-serif",
            "text-anchor": anchor,
            "fill": INK,
            "stroke": PAPER,
            "stroke-width": "1",
            "stroke-linejoin": "round",
            "paint-order": "stroke",
        },
    ).text = said


@lru_cache(maxsize=64)
def _hatching(wide: Fraction, tall: Fraction) -> str:
    """Lines that rise to the right, as in every drawing of ours, as a path from the box's corner on."""
    found, x, y, at = [], Fraction(0), Fraction(0), APART
    while at < wide + tall:
        low, high = max(at - tall, Fraction(0)), min(at, wide)
        found.append(f"m{mm(low - x)} {mm(at - low - y)}l{mm(high - low)} {mm(low - high)}")
        x, y, at = high, at - high, at + APART
    return "".join(found)


def _squares(width: Fraction, height: Fraction) -> str:
    across = (f"M{mm(at * SQUARE)} 0V{mm(height)}" for at in range(int(width / SQUARE) + 1))
    down = (f"M0 {mm(at * SQUARE)}H{mm(width)}" for at in range(int(height / SQUARE) + 1))
    return "".join([*across, *down])
