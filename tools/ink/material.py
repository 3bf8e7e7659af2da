"""What cells are composed of: real digits and the glyphs of handwriting fonts, as small grey pictures."""

import gzip
import shutil
import subprocess
import tarfile
import tomllib
from io import BytesIO
from pathlib import Path
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont

HERE: Final = Path(__file__).parent
#: Every sign that is ever written or printed in a cell; a digit's place is its worth.
SIGNS: Final = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ$?+=.,'\"!"
#: The side of a glyph's picture, and the longer side of the glyph in it.
SIDE: Final = 64
LONG: Final = 56
_DRAWN_AT = 120
#: What the network said of test cells is kept in so many files.
PARTS: Final = 4

Grey = NDArray[np.uint8]
Measures = NDArray[np.float32]


def fetch_fonts(into: Path) -> None:
    """Fetch the fonts of `fonts.toml` with npm into a folder; those that are there stay."""
    npm = shutil.which("npm")
    if npm is None:
        raise SystemExit("the fonts are fetched with npm, which is not on this machine")
    into.mkdir(parents=True, exist_ok=True)
    for name in (name for role in ("train", "tune", "test", "print") for name in font_names(role)):
        if not _package(into, name).exists():
            done = subprocess.run(  # noqa: S603 - npm with a name from our own list
                [npm, "pack", "--silent", "--pack-destination", str(into), f"@fontsource/{name}"],
                check=True,
                capture_output=True,
                text=True,
            )
            (into / done.stdout.split()[-1]).rename(_package(into, name))


def font_names(role: str) -> tuple[str, ...]:
    """Return the fonts of a role: train, tune, test, print."""
    return tuple(tomllib.loads((HERE / "fonts.toml").read_text())[role])


def _package(into: Path, name: str) -> Path:
    return into / f"{name}.tgz"


def _font(into: Path, name: str) -> ImageFont.FreeTypeFont:
    with tarfile.open(_package(into, name)) as package:
        held = package.extractfile(f"package/files/{name}-latin-400-normal.woff")
        assert held is not None, name
        return ImageFont.truetype(BytesIO(held.read()), _DRAWN_AT)


def glyphs_of(into: Path, name: str) -> tuple[Grey, Measures]:
    """Return the pictures of all signs of a font, and of each: width, height, height and middle in digits.

    Width and height are those of the glyph in its picture. The last two are told in heights of the font's
    digits: how high the sign is, and how far its middle stands above the line. A sign that the font lacks has
    width 0.
    """
    font = _font(into, name)
    tops, bottoms = zip(*(font.getbbox(digit, anchor="ls")[1::2] for digit in "0123456789"), strict=True)
    digit = float(np.median(np.subtract(bottoms, tops)))
    pictures = np.zeros((len(SIGNS), SIDE, SIDE), np.uint8)
    measures = np.zeros((len(SIGNS), 4), np.float32)
    for at, sign in enumerate(SIGNS):
        left, top, right, bottom = (int(edge) for edge in font.getbbox(sign, anchor="ls"))
        if right <= left or bottom <= top:
            continue
        picture = Image.new("L", (right - left, bottom - top), 0)
        ImageDraw.Draw(picture).text((-left, -top), sign, 255, font, anchor="ls")
        box = picture.getbbox()
        if box is None:
            continue
        picture, middle = picture.crop(box), top + (box[1] + box[3]) / 2
        pictures[at], (wide, high) = fitted(picture)
        measures[at] = (wide, high, picture.height / digit, -middle / digit)
    return pictures, measures


def fitted(picture: Image.Image) -> tuple[Grey, tuple[int, int]]:
    """Return a glyph in the middle of its square, its longer side `LONG` long, and its width and height."""
    more = LONG / max(picture.size)
    wide, high = (max(1, round(side * more)) for side in picture.size)
    square = Image.new("L", (SIDE, SIDE), 0)
    square.paste(
        picture.resize((wide, high), Image.Resampling.BICUBIC), ((SIDE - wide) // 2, (SIDE - high) // 2)
    )
    return np.asarray(square, np.uint8), (wide, high)


def digits_of(folder: Path, part: str) -> tuple[Grey, NDArray[np.int64]]:
    """Return the real digits of a part (train, t10k) of the MNIST set in idx format, and what they are."""
    images = gzip.decompress((folder / f"{part}-images-idx3-ubyte.gz").read_bytes())
    labels = gzip.decompress((folder / f"{part}-labels-idx1-ubyte.gz").read_bytes())
    return (
        np.frombuffer(images, np.uint8, offset=16).reshape(-1, 28, 28),
        np.frombuffer(labels, np.uint8, offset=8).astype(np.int64),
    )


def fitted_digits(digits: Grey) -> tuple[Grey, Measures]:
    """Return real digits as `glyphs_of` returns those of a font."""
    pictures = np.zeros((len(digits), SIDE, SIDE), np.uint8)
    measures = np.zeros((len(digits), 4), np.float32)
    for at, digit in enumerate(digits):
        rows, columns = (np.flatnonzero((digit > 60).any(axis)) for axis in (1, 0))
        box = (columns[0], rows[0], columns[-1] + 1, rows[-1] + 1)
        pictures[at], (wide, high) = fitted(Image.fromarray(digit).crop(box))
        measures[at] = (wide, high, 1, 0.5)
    return pictures, measures


def gather(fonts: Path, into: Path) -> None:
    """Draw the glyphs of all fonts into one file, which is all that training needs of them."""
    held: dict[str, Any] = {}
    for role in ("train", "tune", "test", "print"):
        drawn = [glyphs_of(fonts, name) for name in font_names(role)]
        held[f"{role}_pictures"] = np.stack([pictures for pictures, _ in drawn])
        held[f"{role}_measures"] = np.stack([measures for _, measures in drawn])
    np.savez_compressed(into, **held)
