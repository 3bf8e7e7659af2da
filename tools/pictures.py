"""Pictures of Room 12's pages for the README, in docs/pictures: `python -m tools.pictures`.

Each is the first page of a PDF, 800 pixels wide, in few colours so that the files stay small.
"""

import datetime as dt
from io import BytesIO
from pathlib import Path

import pypdfium2
from msgspec.structs import replace
from PIL import Image, ImageOps

from onewhole.desk.marking.mark import mark_files
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.tomorrow.plan import plan_pages
from onewhole.desk.walkthrough.lesson import lesson
from onewhole.presses.pdf import press
from onewhole.presses.poster import poster
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.fitting import fitted
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape

ROOT = Path(__file__).parents[1]
PICTURES = ROOT / "docs" / "pictures"
SHEET, ANSWERS = (ROOT / "examples" / "room12" / name for name in ("sheet.txt", "answers.csv"))
#: The pages that are shown.
SHOWN = ("pupil", "workings", "family", "morning")
#: The problem whose board is shown.
FILMED = "3"
WIDTH = 800
COLOURS = 48
EDGE = "#6f6860"
WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)


def main() -> None:
    """Write the pictures."""
    PICTURES.mkdir(parents=True, exist_ok=True)
    made = (*sheet_pages(WorkedSheet(sheet_in(SHEET))), *plan_pages(mark_files(SHEET, ANSWERS)))
    pages = {page.kind: page for _, page in made}
    for name in SHOWN:
        picture = first_page(press(pages[name].source, data=pages[name].content, when=WHEN))
        picture.save(PICTURES / f"{name}.png", optimize=True)
        print(f"docs/pictures/{name}.png")
    board().save(PICTURES / "film.png", optimize=True)
    print("docs/pictures/film.png")


def board() -> Image.Image:
    """Return a board of the film, on which strips are crossed out."""
    sheet = sheet_in(SHEET)
    kept = replace(sheet, items=tuple(one for one in sheet.problems if one.label == FILMED))
    _, timeline = fitted(lesson(WorkedSheet(kept)), Pace(), None)
    wide = on_board(timeline, Shape.WIDE)
    drawn = Image.open(BytesIO(poster(wide, sheet.header.words))).convert("RGB")
    return drawn.resize((960, 540), Image.Resampling.LANCZOS).quantize(COLOURS, Image.Quantize.MAXCOVERAGE)


def first_page(pdf: bytes) -> Image.Image:
    """Return the first page of a PDF with a thin line round it."""
    page = pypdfium2.PdfDocument(pdf)[0]
    drawn: Image.Image = page.render(scale=WIDTH / page.get_width()).to_pil()
    return ImageOps.expand(drawn, border=1, fill=EDGE).quantize(COLOURS, Image.Quantize.MAXCOVERAGE)


if __name__ == "__main__":
    main()
