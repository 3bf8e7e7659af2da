"""The class's answers for the district, from the browser: an archive, and a school that needs a name."""

from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

from tests.kit.rounds import lived_in


def test_an_archive_with_a_file_a_night(tmp_path: Path) -> None:
    """The page says what is in it; the same key serves the next time; without a name nothing is given."""
    with lived_in(tmp_path, read=False) as door:
        page = door.get("/mine/1/class/share").text
        assert "keep the key at the school" in page
        assert "/mine/1/class/share" in door.get("/mine/1/class").text
        refused = door.post("/mine/1/class/share", school="  ")
        assert (refused.status, "Nothing was given out." in refused.text) == (422, True)
        made = door.post("/mine/1/class/share", school="Elm")
        assert made.status == 200
        names = ZipFile(BytesIO(made.content)).namelist()
        assert names
        assert all(name.startswith("elm/") for name in names)
        assert door.post("/mine/1/class/share", school="Elm").content == made.content
