"""A night's folder with photos of its papers instead of answers: they are read into the table of answers."""

from pathlib import Path

from onewhole.desk.page.pupil_copies import codes_listed
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.paper.file_papers import FilePapers, put_papers, read_files
from onewhole.desk.paper.picture_files import PictureFiles
from onewhole.desk.paper.press_reading import sees_sheet
from onewhole.desk.paper.seen_papers import SeesPapers

#: The codes that a paper may have where none are named: a class has no more pupils.
ANY_CODE = "K01-K60"


def read_photo_folder(
    photos: Path, sheet: Path, answers: Path, sees: SeesPapers | None = None
) -> FilePapers | None:
    """Read the photos of a folder, and write the answers, with the picture of what to look at beside them.

    Nothing is read, and None returned, where the answers are there already: a teacher may have typed into
    them. Where no paper is in any picture nothing is written. Raises InputError and FileRefused.
    """
    if answers.exists():
        return None
    page, codes = sheet_in(sheet), codes_listed(ANY_CODE)
    papers = read_files(page, PictureFiles((photos,)), sees or sees_sheet(page, codes), codes=codes)
    if papers.codes:
        put_papers(papers, answers, cells_beside(answers))
    return papers


def cells_beside(answers: Path) -> Path:
    """Return where the picture of the cells to look at lies, beside the answers.

    >>> cells_beside(Path("room12/answers.csv")).as_posix()
    'room12/answers.cells.png'
    """
    return answers.with_name(f"{answers.stem}.cells.png")
