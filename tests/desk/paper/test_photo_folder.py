"""Photos in a night's folder become its answers, once; files and folders are opened in their turn."""

from pathlib import Path

import pytest

from onewhole.desk.paper.photo_folder import read_photo_folder
from onewhole.desk.paper.picture_files import PictureFiles
from onewhole.errors import InputError
from onewhole.findings.in_pictures import NoPage
from tests.kit.answers import all_right, page
from tests.kit.seen_papers import TYPED, Sees, row, seen


def _folder(tmp_path: Path) -> Path:
    (tmp_path / "photos").mkdir()
    (tmp_path / "photos" / "a.jpg").write_bytes(b"a")
    (tmp_path / "sheet.txt").write_text(TYPED)
    return tmp_path


def _read(folder: Path, sees: Sees) -> object:
    return read_photo_folder(folder / "photos", folder / "sheet.txt", folder / "answers.csv", sees)


def test_photos_become_answers_once(tmp_path: Path) -> None:
    """With the picture of what to look at beside them; answers that are there are never read over."""
    folder, sees = _folder(tmp_path), Sees(seen({"K01": row(all_right(page()))}))
    assert _read(folder, sees) is not None
    assert sees.shown == [("a.jpg", b"a")]
    assert (folder / "answers.csv").read_text("utf-8-sig").count("K01") == 1
    assert (folder / "answers.cells.png").read_bytes().startswith(b"\x89PNG")
    (folder / "answers.csv").write_text("pupil,1\nK01,typed\n")
    assert _read(folder, sees) is None
    assert (folder / "answers.csv").read_text() == "pupil,1\nK01,typed\n"


def test_where_no_paper_is_nothing_is_written(tmp_path: Path) -> None:
    """What was found instead is told by the caller."""
    folder = _folder(tmp_path)
    _read(folder, Sees(seen({}, NoPage("a.jpg"))))
    assert not (folder / "answers.csv").exists()


def test_files_and_folders_are_opened_in_turn(tmp_path: Path) -> None:
    """Of a folder only pictures, and none of ours; none twice; of one name told apart by the folder."""
    for name in ("b.PNG", "a.jpg", "notes.txt", "c.pdf", "answers.cells.png"):
        (tmp_path / name).write_bytes(name.encode())
    (tmp_path / "d.jpg").mkdir()
    named = PictureFiles((tmp_path / "notes.txt", tmp_path, tmp_path / "a.jpg"))
    for _ in range(2):
        assert [name for name, _ in named] == ["notes.txt", "a.jpg", "b.PNG", "c.pdf"]
    (tmp_path / "d.jpg" / "a.jpg").write_bytes(b"another")
    both = PictureFiles((tmp_path / "a.jpg", tmp_path / "d.jpg"))
    assert [name for name, _ in both] == [str(tmp_path / "a.jpg"), str(tmp_path / "d.jpg" / "a.jpg")]
    with pytest.raises(InputError, match="no such file"):
        PictureFiles((tmp_path / "e.jpg",))
    gone = PictureFiles((tmp_path / "a.jpg",))
    (tmp_path / "a.jpg").unlink()
    with pytest.raises(InputError, match="cannot be read"):
        list(gone)
