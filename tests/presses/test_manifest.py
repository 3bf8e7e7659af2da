"""The list of a folder of pages: what stays of a former one, and what is no list at all."""

from pathlib import Path

import pytest
from msgspec.structs import replace

from onewhole.presses.manifest import (
    LARGEST,
    MANIFEST,
    NOTHING_MADE,
    Manifest,
    ManifestFile,
    content_digest,
    is_unchanged,
    joined,
    manifest_text,
    read_manifest,
)

KEY = ManifestFile("key.pdf", "key", "pages", "2026-09-01", pupils=False, size=9, sha256="")
FILM = replace(KEY, name="film.mp4", page="film", part="film")
TALKS = replace(KEY, name="talks.pdf", page="talks", part="morning", pupils=True)
FORMER = Manifest("Kites", "sheet one", "answers one", (KEY, FILM, TALKS))


def test_a_list_is_read_as_it_was_written(tmp_path: Path) -> None:
    """Each field; where there is none, nothing is listed."""
    assert read_manifest(tmp_path) == NOTHING_MADE
    (tmp_path / MANIFEST).write_bytes(manifest_text(FORMER))
    assert read_manifest(tmp_path) == FORMER
    assert (FORMER.pupils, NOTHING_MADE.pupils) == (True, False)


@pytest.mark.parametrize("torn", [b"", b"{", b'{"title": 3}', b"\xff\xfe", b" " * (LARGEST + 1)])
def test_what_cannot_be_read_lists_nothing(tmp_path: Path, torn: bytes) -> None:
    """Then all that is in the folder counts as the teacher's own."""
    (tmp_path / MANIFEST).write_bytes(torn)
    assert read_manifest(tmp_path) == NOTHING_MADE


def test_a_link_is_nobodys_list(tmp_path: Path) -> None:
    """It is not followed."""
    (tmp_path / "elsewhere").write_bytes(manifest_text(FORMER))
    (tmp_path / MANIFEST).symlink_to(tmp_path / "elsewhere")
    assert read_manifest(tmp_path) == NOTHING_MADE


@pytest.mark.parametrize(
    ("sheet", "answers", "parts", "stay"),
    [
        ("sheet one", "", {"pages"}, {"film.mp4", "talks.pdf"}),
        ("sheet one", "answers one", {"pages"}, {"film.mp4", "talks.pdf"}),
        ("sheet one", "answers two", {"pages"}, {"film.mp4"}),
        ("sheet one", "", {"pages", "morning", "film"}, set()),
        ("sheet two", "", {"pages"}, set()),
        ("sheet two", "answers one", {"pages"}, set()),
    ],
)
def test_what_stays_of_a_former_list(sheet: str, answers: str, parts: set[str], stay: set[str]) -> None:
    """Other parts of the same sheet, and of the same answers where both are known."""
    new = replace(KEY, name="pupil.pdf")
    whole = joined(FORMER, Manifest("Kites", sheet, answers, (new,)), parts)
    assert whole.names == {"pupil.pdf", *stay}
    assert whole.answers == ("answers one" if "talks.pdf" in stay else "")


def test_a_file_is_known_by_its_bytes(tmp_path: Path) -> None:
    """Changed, shorter, gone or a link: it is another one."""
    path = tmp_path / "key.pdf"
    path.write_bytes(b"six kites")
    size, digest = content_digest(path)
    assert (size, digest) == content_digest(b"six kites")
    file = replace(KEY, size=size, sha256=digest)
    assert is_unchanged(file, path)
    (tmp_path / "link").symlink_to(path)
    assert not is_unchanged(file, tmp_path / "link")
    assert not is_unchanged(file, tmp_path / "nothing")
    for other in (b"six kite!", b"six"):
        path.write_bytes(other)
        assert not is_unchanged(file, path)
