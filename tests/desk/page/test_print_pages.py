"""A sheet printed."""

from datetime import UTC, datetime
from pathlib import Path

from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.print_pages import print_pages, print_together, sheet_pages
from onewhole.desk.page.put_pages import MadeFrom, NightPart, Ready, put
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet

WHEN = datetime(2025, 3, 6, 20, 0, tzinfo=UTC)
SHEET = read_sheet("title: Kite tails\n\n1. 7 2/6 - 3 5/6\n")


def test_four_pages_into_a_new_folder(tmp_path: Path) -> None:
    """The folder is made with those above it; each page lies where it is said to lie."""
    made = print_pages(SHEET, tmp_path / "out" / "monday", when=WHEN)
    assert [one.page for one in made] == ["pupil", "key", "workings", "family"]
    assert [one.page for one in made] == [name for name, _ in sheet_pages(WorkedSheet(SHEET))]
    assert all(one.path.read_bytes().startswith(b"%PDF-") for one in made)
    listed = tmp_path / "out" / "monday" / "manifest.json"
    assert {*(one.path for one in made), listed} == set((tmp_path / "out" / "monday").iterdir())


def test_where_the_film_is_makes_no_other_night(tmp_path: Path) -> None:
    """The film was made first and put somewhere; the pages that say where lie beside it then."""
    film = Ready("film", "mp4", b"made before")
    put({NightPart.FILM: [film]}, tmp_path, MadeFrom(SHEET, WHEN))
    link = read_sheet("title: Kite tails\nfilm: https://films.example.org/k\n\n1. 7 2/6 - 3 5/6\n")
    put({NightPart.PAGES: [Ready("pupil", "pdf", b"%PDF-")]}, tmp_path, MadeFrom(link, WHEN))
    assert (tmp_path / "film.mp4").read_bytes() == b"made before"


def test_braille_comes_with_the_pages_where_it_is_asked_for(tmp_path: Path) -> None:
    """As ASCII and as Unicode braille, in the same folder; without it they are gone again."""
    asked = read_sheet("title: Kite tails\nbraille: yes\n\n1. 7 2/6 - 3 5/6\n")
    made = print_pages(asked, tmp_path, when=WHEN)
    braille = ["pupil.brf", "pupil-braille.txt", "key.brf", "key-braille.txt", "tactile-1.svg"]
    assert [one.path.name for one in made[4:]] == braille
    assert b"#A4 _% #7_?2/6_#-3_?5/6_# .K ---- _:" in (tmp_path / "pupil.brf").read_bytes()
    assert "⠼⠒⠸⠹⠒⠌⠖⠸⠼" in (tmp_path / "key-braille.txt").read_text()
    choice = PrintChoice((PrintPart(SheetPage.KEY),))
    together = print_together(asked, tmp_path, choice=choice, when=WHEN)
    assert [one.path.name for one in together] == ["together.pdf", *braille]
    print_pages(SHEET, tmp_path, when=WHEN)
    assert not [one for one in braille if (tmp_path / one).exists()]
