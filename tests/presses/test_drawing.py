"""A scene as pixels, and the agreement with its SVG set by the page press."""

import io
from fractions import Fraction

import numpy as np
import pytest
from PIL import Image, ImageChops

from onewhole.languages.english.words import words_for
from onewhole.notations.svg import svg
from onewhole.pictures.scene import Look, Piece, Scene
from onewhole.pictures.tween import tween
from onewhole.presses.drawing import draw
from onewhole.presses.pdf import press_images
from tests.kit.scenes import box, discs, number_line, strips

WORDS = words_for("strip of kite paper")
SCENES = [strips(), discs(), number_line()]
PAGE = """#set page(width: {0}pt, height: {1}pt, margin: 0pt)
#image(bytes(sys.inputs.data), format: "svg", width: {0}pt, height: {1}pt, fit: "contain")"""


def _on_white(scene: Scene, size: tuple[int, int], *, grid: bool = False) -> Image.Image:
    drawn = draw(scene, WORDS, size=size, grid=grid)
    white = Image.new("RGB", size, "white")
    white.paste(drawn, mask=drawn)
    return white


def _through_press(scene: Scene, size: tuple[int, int]) -> Image.Image:
    (page,) = press_images(PAGE.format(*size), data=svg(scene, WORDS, grid=False).encode())
    return Image.open(io.BytesIO(page)).convert("RGB")


def _dark(image: Image.Image) -> tuple[int, int, int, int]:
    """The box round everything that is at least half as dark as ink."""
    found = image.convert("L").point([255 if value < 128 else 0 for value in range(256)]).getbbox()
    assert found is not None
    return found


def _alone(scene: Scene) -> list[Scene]:
    """A scene and each of its pieces by itself."""
    return [scene, *(Scene(scene.width, scene.height, (piece,)) for piece in scene.pieces)]


@pytest.mark.parametrize("scene", SCENES)
def test_agrees_with_the_svg_in_place(scene: Scene) -> None:
    """Of the scene and of every piece alone, both drawings are dark within the same box, to 2 pixels."""
    size = (760, 640)
    for each in _alone(scene):
        ours, theirs = _dark(_on_white(each, size)), _dark(_through_press(each, size))
        assert max(abs(a - b) for a, b in zip(ours, theirs, strict=True)) <= 2, each.pieces[0].name


@pytest.mark.parametrize("scene", SCENES)
def test_agrees_with_the_svg_in_darkness(scene: Scene) -> None:
    """Seen from afar (in squares of 40 pixels) no place is much lighter in one drawing than in the other."""
    size = (760, 640)
    pair = [image.convert("L").reduce(40) for image in (_on_white(scene, size), _through_press(scene, size))]
    assert max(ImageChops.difference(*pair).tobytes()) <= 20


@pytest.mark.parametrize("share", [Fraction(1, 1000), Fraction(1, 3), Fraction(99, 100)])
@pytest.mark.parametrize("scene", SCENES)
def test_draws_what_has_only_begun(scene: Scene, share: Fraction) -> None:
    """Pieces that have just begun to grow are drawn, however thin."""
    begun = tween(Scene(scene.width, scene.height, ()), scene, share)
    assert draw(begun, WORDS, size=(380, 320)).getchannel("A").getbbox()


def test_clear_where_nothing_is() -> None:
    """Paper hides what is behind a strip; room stays clear inside, and so does everything outside."""
    plain, room = box("a", 5, 5, 20), box("b", 30, 5, 20, Look.DOTTED)
    image = draw(Scene(Fraction(60), Fraction(20), (plain, room)), WORDS, size=(600, 200))
    alpha = image.getchannel("A")
    assert [alpha.getpixel(place) for place in ((150, 110), (400, 110), (20, 20))] == [255, 0, 0]
    assert image.getpixel((150, 110)) == (255, 255, 255, 255)


def test_ink_is_ink_alone_or_on_paper() -> None:
    """Every pixel that is all ink has ink's colour, which is dark enough on white (14 : 1)."""
    image = draw(strips(), WORDS, size=(760, 640))
    pixels = np.asarray(image).reshape(-1, 4)
    solid = pixels[pixels[:, 3] == 255]
    assert solid[:, :3].min(axis=0).tolist() == [43, 43, 51]


def test_squares_behind_the_scene() -> None:
    """Squared paper fills the scene's own paper, in the middle of the picture, and nothing else."""
    alpha = draw(Scene(Fraction(60), Fraction(20), ()), WORDS, size=(120, 100), grid=True).getchannel("A")
    assert alpha.getbbox() == (0, 30, 120, 70)


def test_later_pieces_cover_earlier_ones() -> None:
    """A strip of paper laid over a hatched one hides it."""
    under, over = box("a", 5, 5, 50, Look.FILLED), box("b", 5, 5, 50)
    stacked = Scene(Fraction(60), Fraction(20), (under, over))
    assert draw(stacked, WORDS, size=(240, 80)) == draw(
        Scene(Fraction(60), Fraction(20), (Piece("b", over.shape),)), WORDS, size=(240, 80)
    )
