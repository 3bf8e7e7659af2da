"""A picture as a page takes it: a drawing, and the words that do its job."""

from fractions import Fraction
from math import ceil

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.notations.sentences.text import text_of
from onewhole.notations.svg import svg
from onewhole.pictures.amounts import counted
from onewhole.pictures.line_plot import plot_scene
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Scene
from onewhole.sheets.header import Header
from onewhole.sheets.room import PLOT_SCALE
from onewhole.statements.line_plot import LinePlot
from onewhole.writers.printed import Json

#: Pictures that are counted and need no writing in them; the page's own words stand beside them.
COUNTED = frozenset(
    {PictureKind.STRIPS, PictureKind.DISCS, PictureKind.RECTANGLES, PictureKind.GRID, PictureKind.BLOCKS}
)

#: Columns are drawn in such a size that their small numbers are over 10 points, and over 18 in large print.
COLUMNS_SCALE = {False: Fraction(3, 4), True: Fraction(13, 10)}


def drawing(picture: Picture, words: ClassWords, *, large: bool) -> Json:
    """Return the scene that tells most as SVG without squares, and its text alternative.

    A drawing with numbers in it is ``wide``, so that they can be read. In large print it is left out, because
    its numbers would be under 18 points, and its words stand alone. The numbers of a bar,
    of shares, of an area and of a line plot can be read in large print at its own width, ``across``
    millimetres.
    """
    scene = picture.telling
    if picture.kind is PictureKind.COLUMNS:
        return columns_drawing(scene, words, large=large)
    found = _told(scene, words)
    if picture.kind in COUNTED:
        bare = counted(scene, hatched=picture.kind is PictureKind.GRID)
        return found | {"svg": svg(bare, words, grid=False), "wide": False}
    if picture.kind in {PictureKind.BAR, PictureKind.AREA, PictureKind.SHARES, PictureKind.PLOT}:
        return found | {"svg": svg(scene, words, grid=False), "wide": False, "across": int(scene.width)}
    return found if large else found | {"svg": svg(scene, words, grid=False), "wide": True}


def bars_drawing(scene: Scene, words: ClassWords) -> Json:
    """Return the bars of a story; their numbers can be read in large print at their own width."""
    return _told(scene, words) | {
        "svg": svg(scene, words, grid=False),
        "wide": False,
        "across": int(scene.width),
    }


def columns_drawing(scene: Scene, words: ClassWords, *, large: bool) -> Json:
    """Return what stands in columns, so wide that its small numbers can be read, also in large print."""
    return _told(scene, words) | {
        "svg": svg(scene, words, grid=False),
        "wide": False,
        "across": ceil(scene.width * COLUMNS_SCALE[large]),
    }


def plot_drawn(plot: LinePlot, header: Header) -> Json:
    """Return a line plot as SVG, with its words, so wide that its numbers can be read."""
    scene = plot_scene(plot)
    return {
        "svg": svg(scene, header.words, grid=False),
        "alt": text_of(spoken_by(header.words).working.picture(scene, header.words)),
        "width_mm": ceil(scene.width * PLOT_SCALE[header.print]),
    }


def _told(scene: Scene, words: ClassWords) -> Json:
    """Return the words of a scene, and their language where it is not that of the ``words``."""
    said = spoken_by(words).working.picture(scene, words)
    others = {sentence.language for sentence in said} - {words.language}
    found: Json = {"alt": text_of(said)}
    return found | ({"lang": others.pop()} if others else {})
