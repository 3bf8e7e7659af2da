"""The network reads cells: of held-out fonts, and of real digits where they are there."""

import gzip
import hashlib
import json
from collections import Counter
from importlib.resources import files
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from onewhole.errors import Fault
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.presses.paper.ink import HIGH, WIDE, Grey, read_ink

HERE = Path(__file__).parent
DIGITS = Path(__file__).parents[4] / "shared" / "data" / "handwriting"
ACROSS = 6
#: The weights; `docs/reading-model.md` names the same.
SHA256 = "027e10da171d0cce8e9519b4333a5ab14808f2f82123d483dea49206cc5c0493"


def _sheet() -> list[tuple[str, str, Grey]]:
    """The cells of the sheet: the kind of each, what is written in it ("" for no answer), its picture."""
    grey = np.asarray(Image.open(HERE / "cells.png").convert("L"))
    cells = grey.reshape(-1, HIGH, ACROSS, WIDE).transpose(0, 2, 1, 3).reshape(-1, HIGH, WIDE)
    known = json.loads((HERE / "cells.json").read_text())
    return [(one["what"], one["text"], cell) for one, cell in zip(known, cells, strict=True)]


@pytest.fixture(scope="module")
def sheet() -> list[tuple[str, str, InkReading]]:
    """The cells of the sheet, read."""
    cells = _sheet()
    readings = read_ink([cell for _, _, cell in cells])
    return [(what, text, reading) for (what, text, _), reading in zip(cells, readings, strict=True)]


def test_the_weights_are_those_that_the_figures_are_about() -> None:
    """The file of weights is the one that the model card names, and under six megabytes."""
    weights = files("onewhole.presses.paper").joinpath("ink.onnx").read_bytes()
    assert hashlib.sha256(weights).hexdigest() == SHA256
    assert SHA256 in (HERE.parents[2] / "docs" / "reading-model.md").read_text()
    assert len(weights) < 6_000_000


def test_answers_in_fonts_that_were_not_learned_are_read(sheet: list[tuple[str, str, InkReading]]) -> None:
    """Of 72 answers nearly all are read whole, and those that are sure are right."""
    answers = [(text, reading) for what, text, reading in sheet if text and "struck" not in what]
    assert len(answers) == 72
    assert sum(text == reading.text for text, reading in answers) >= 68
    sure = [(text, reading.text) for text, reading in answers if reading.likelihood > 980_000]
    assert len(sure) >= 40
    assert [pair for pair in sure if pair[0] != pair[1]] == []


def test_what_is_no_answer_is_not_read_as_one(sheet: list[tuple[str, str, InkReading]]) -> None:
    """Empty and rubbed-out cells, scribbles, words, two answers, struck ones: none is surely an answer."""
    others = [(what, reading) for what, text, reading in sheet if not text]
    assert len(Counter(what for what, _ in others)) == 6
    assert [(what, reading.text) for what, reading in others if reading.likelihood > 800_000] == []
    bare = [reading for what, reading in others if what in {"empty", "rubbed out"}]
    assert all(reading.empty > reading.not_an_answer for reading in bare)


def test_decimals_units_and_struck_digits_are_told(sheet: list[tuple[str, str, InkReading]]) -> None:
    """A point, a unit and a digit struck inside are said beside the reading."""
    for _, text, reading in sheet:
        if text == reading.text:
            assert reading.decimal == ("." in text)
            assert reading.unit or not any(sign.isalpha() or sign == "$" for sign in text)
    struck = [reading.struck > 100_000 for what, _, reading in sheet if what == "a digit struck inside"]
    assert sum(struck) >= 5
    assert sum(reading.struck > 100_000 for what, _, reading in sheet if what == "fonts") <= 2


def test_a_cell_is_read_alike_alone_and_among_others() -> None:
    """What is said of a cell is the same to the last part of a million, in any company and again."""
    cells = [cell for _, _, cell in _sheet()[:5]]
    together = read_ink(cells)
    assert read_ink(cells) == together
    assert [one for cell in reversed(cells) for one in read_ink([cell])] == list(reversed(together))
    assert read_ink([]) == ()


def test_the_engine_says_what_it_said_where_the_network_was_made() -> None:
    """The first cells of the sheet have the likelihoods that another engine gave, to a thousandth."""
    stored = json.loads((HERE / "told.json").read_text())
    cells = [cell for _, _, cell in _sheet()[: len(stored)]]
    assert len(stored) >= 12
    for reading, (text, parts) in zip(read_ink(cells), stored, strict=True):
        assert reading.text == text
        assert abs(reading.likelihood - parts) < 1500


@pytest.mark.parametrize(
    "cell",
    [
        np.zeros((HIGH, WIDE + 1), np.uint8),
        np.zeros((WIDE, HIGH), np.uint8),
        np.zeros((HIGH, WIDE, 3), np.uint8),
        np.zeros((HIGH, WIDE), np.int16),
    ],
)
def test_a_picture_of_another_shape_is_refused(cell: Grey) -> None:
    """A cell that is none is a mistake of ours, and is told."""
    with pytest.raises(Fault, match="96 x 240"):
        read_ink([cell])


@pytest.mark.skipif(
    not DIGITS.exists(), reason="../shared/data/handwriting is absent: no real digits to read"
)
def test_real_digits_of_writers_that_were_not_learned_are_read() -> None:
    """Numbers of two real digits of the test part, laid side by side by this test, are read."""
    images = gzip.decompress((DIGITS / "t10k-images-idx3-ubyte.gz").read_bytes())
    labels = gzip.decompress((DIGITS / "t10k-labels-idx1-ubyte.gz").read_bytes())
    digits = np.frombuffer(images, np.uint8, offset=16).reshape(-1, 28, 28)
    worth = np.frombuffer(labels, np.uint8, offset=8)
    cells, texts = [], []
    for first in range(0, 120, 2):
        if worth[first] == 0:
            continue
        cell = np.full((HIGH, WIDE), 245, np.uint8)
        for at in range(2):
            ink = np.asarray(Image.fromarray(digits[first + at]).resize((44, 44), Image.Resampling.BICUBIC))
            left = 80 + 30 * at
            cell[24:68, left : left + 44] = np.minimum(
                cell[24:68, left : left + 44], 245 - (ink * 0.8).astype(np.uint8)
            )
        cells.append(cell)
        texts.append(f"{worth[first]}{worth[first + 1]}")
    assert len(cells) > 40
    right = sum(text == reading.text for text, reading in zip(texts, read_ink(cells), strict=True))
    assert right >= 0.9 * len(cells)
