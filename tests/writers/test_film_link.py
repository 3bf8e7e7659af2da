"""A film's address on paper: read from the printed page by a program that reads square codes."""

import io
import re

import cv2
import numpy as np
import pikepdf
import pypdfium2
import pytest

from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.family_page import family_page
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import pupil_page
from tests.kit import pdf
from tests.kit.pages import made
from tests.kit.sheets import worked_sheet

ADDRESS = "https://films.example.org/room12/kite-tails?night=3"
#: As long as an address may be, with a run of letters that no line breaks by itself.
LONGEST = ("https://films.example.org/" + "KiteTails0O" * 12)[:150]
TYPED = "title: Kite tails\nfilm: {}\n{}\n1. 7 2/6 - 3 5/6\n2. 52 - 27\n"
#: Dots an inch of a copier that is set to save toner. From memory.
COPIER = 200


def copied(page: pypdfium2.PdfPage) -> cv2.typing.MatLike:
    """The page as a worn copier leaves it: coarse, smeared, black or white, with dust."""
    grey = np.asarray(page.render(scale=COPIER / 72, grayscale=True).to_numpy())
    smeared = cv2.GaussianBlur(grey.reshape(grey.shape[:2]), (0, 0), 0.9)
    dust = np.random.default_rng(7).random(smeared.shape) < 0.002
    return np.where((smeared < 140) ^ dust, 0, 255).astype(np.uint8)


def read_codes(printed: bytes) -> set[str]:
    """What the square codes on copies of the pages say."""
    pages = map(copied, pypdfium2.PdfDocument(printed))
    return {said for page in pages if (said := cv2.QRCodeDetector().detectAndDecode(page)[0])}


def fitted(worked: WorkedSheet) -> Printed:
    """The pupils' page on one sheet of paper."""
    return pupil_page(worked, 1)


@pytest.mark.parametrize(
    ("page", "address", "more"),
    [
        (pupil_page, ADDRESS, ""),
        (fitted, LONGEST, "corner marks: windows\n"),
        (family_page, ADDRESS, ""),
        (family_page, LONGEST, ""),
    ],
)
def test_a_copied_page_opens_the_film(page: object, address: str, more: str) -> None:
    """The code says the address that stands beside it in print, which can be clicked and is spoken."""
    assert callable(page)
    printed = made(page(worked_sheet(TYPED.format(address, more))))
    assert read_codes(printed) == {address}
    assert any(address in re.sub(r"\s|\u200b", "", words) for words in pdf.words(printed))
    assert [alt for tag, alt in pdf.tags(printed) if tag == "/Figure" and "square code" in alt]
    with pikepdf.open(io.BytesIO(printed)) as document:
        links = [str(note.A.URI) for page in document.pages for note in page.get("/Annots", [])]
    assert set(links) == {address}


def test_no_address_no_code() -> None:
    """Nothing is printed for a sheet without a film, and a page of practice has none of its own."""
    worked = worked_sheet("1. 52 - 27")
    assert "film" not in pupil_page(worked).data
    assert "film" not in family_page(worked).data
