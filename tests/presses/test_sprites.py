import numpy as np
from msgspec.structs import replace

from onewhole.presses.sprites import Sprite, sprites
from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.cue import Place, Write

PLACE = Place(60, 40, 900, 102)
LINE = Write("b", read_expression("6 8/6 - 3 5/6"), leads=True, place=PLACE)
#: A sprite's clear rim, and how far brackets may reach over a place.
RIM = 12


def _contrast(rgb: tuple[int, ...]) -> float:
    """Contrast with the film's paper. Source: WCAG 2.2, relative luminance."""

    def luminance(colour: tuple[int, ...]) -> float:
        linear = [c / 255 / 12.92 if c <= 10 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in colour]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    return (luminance((255, 253, 246)) + 0.05) / (luminance(rgb) + 0.05)


def _ink(sprite: Sprite) -> tuple[int, ...]:
    """The colour in the middle of all that is well covered with ink."""
    covered = sprite.pixels[sprite.pixels[..., 3] > 200][:, :3]
    return tuple(int(value) for value in np.median(covered, axis=0))


def test_ink_stands_in_its_place() -> None:
    """A sprite is cut down to its ink and stands at the left of its place, inside it."""
    (sprite,) = sprites([LINE])
    assert PLACE.x - 3 <= sprite.x < PLACE.x + 10
    assert sprite.y >= PLACE.y - RIM
    assert sprite.y + sprite.height <= PLACE.y + PLACE.height + RIM
    assert sprite.x + sprite.width < PLACE.x + PLACE.width


def test_too_long_is_made_smaller() -> None:
    """A formula is shrunk, words go on to a second line; neither leaves its place."""
    narrow = Place(60, 40, 150, 102)
    words = Write("w", "One strip of kite paper is six sixths of a strip.", place=replace(narrow, width=300))
    for sprite, wide in zip(sprites([replace(LINE, place=narrow), words]), (150, 300), strict=True):
        assert sprite.width <= wide + RIM
        assert sprite.height <= narrow.height + RIM


def test_alike_but_for_the_place() -> None:
    """The same line further down is the same sprite further down."""
    first, second = sprites([LINE, replace(LINE, name="c", place=replace(PLACE, y=240))])
    assert (first.pixels == second.pixels).all()
    assert (second.x, second.y) == (first.x, first.y + 200)


def test_one_size_of_digits() -> None:
    """A whole number is not written larger than one with a fraction beside it."""
    seven = Write("s", read_expression("7"), place=PLACE)
    mixed = Write("m", read_expression("7 2/6"), place=PLACE)
    alone, beside = sprites([seven, mixed])
    ink = np.flatnonzero(beside.pixels[:, : alone.width - 8, 3].any(axis=1))
    assert abs((ink[-1] - ink[0]) - (alone.height - 5)) <= 2


def test_aside_is_smaller_and_lighter_and_still_dark_enough() -> None:
    """Ink for a line aside: lighter, 4.5:1 on paper at least (WCAG 2.2, 1.4.3)."""
    full, aside = sprites([LINE, replace(LINE, aside=True)])
    assert aside.height < full.height
    assert _contrast(_ink(full)) > _contrast(_ink(aside)) >= 4.5


def test_nothing_to_write() -> None:
    """No lines, no sprites, and the page press is not asked."""
    assert sprites([]) == ()
