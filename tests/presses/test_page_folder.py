"""A folder of pages is the old one whole or the new one whole, and the teacher's own files stay."""

import errno
import os
import stat
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from onewhole.presses import page_folder, settling
from onewhole.presses.files import FileRefused
from onewhole.presses.manifest import MANIFEST, read_manifest
from onewhole.presses.page_folder import check_folder, folder_within
from onewhole.presses.settling import BEFORE, MAKING, READY, hidden_name
from onewhole.presses.swap import swapped
from tests.kit.disks import small_disk
from tests.kit.page_folders import found_in, hidden_beside, put_night

MONDAY = {"pupil.pdf": b"monday", "talks.pdf": b"talks of monday", "practice-larks.pdf": b"larks"}
TUESDAY = {"pupil.pdf": b"tuesday", "talks.pdf": b"talks of tuesday"}


@pytest.fixture
def out(tmp_path: Path) -> Path:
    """A folder with Monday's night in it."""
    put_night(tmp_path / "out", "monday", MONDAY)
    return tmp_path / "out"


@pytest.fixture(params=["as it is", "no trade", "no links", "neither"])
def disk(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> str:
    """Disks that can and cannot let names trade places, and give a file two names."""
    kind = str(request.param)
    if kind in {"no trade", "neither"}:
        for module in (page_folder, settling):
            monkeypatch.setattr(module, "swapped", lambda *_: False)
    if kind in {"no links", "neither"}:

        def refuses(*_: object, **__: object) -> None:
            raise OSError(errno.EPERM, "Operation not permitted")

        monkeypatch.setattr(os, "link", refuses)
        monkeypatch.setattr(Path, "symlink_to", refuses)
    return kind


def test_the_new_night_takes_the_place_of_the_old(out: Path, disk: str) -> None:
    """What is not made any more is gone, nothing lies hidden beside, and the list tells what is there."""
    put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == TUESDAY, disk
    assert hidden_beside(out) == []
    assert read_manifest(out).title == "tuesday"
    assert read_manifest(out).names == set(TUESDAY)


def test_what_is_the_teachers_own_stays(out: Path, disk: str) -> None:
    """A file, a folder with a file in it, a page that was changed since, also where its name is taken."""
    (out / "letter.txt").write_bytes(b"mine")
    (out / "kites" / "red").mkdir(parents=True)
    (out / "kites" / "red" / "list.txt").write_bytes(b"mine too")
    (out / "practice-larks.pdf").write_bytes(b"larks, with my notes")
    (out / "talks.pdf").write_bytes(b"talks of monday, with my notes")
    number = (out / "kites").stat().st_ino
    put_night(out, "tuesday", TUESDAY)
    mine = {
        "letter.txt": b"mine",
        "kites/red/list.txt": b"mine too",
        "practice-larks.pdf": b"larks, with my notes",
        "talks (before).pdf": b"talks of monday, with my notes",
    }
    assert found_in(out) == TUESDAY | mine, disk
    assert (out / "kites").stat().st_ino == number, "it is moved, never copied"
    assert not (out / "kites").is_symlink()
    assert hidden_beside(out) == []
    (out / "talks.pdf").write_bytes(b"and notes again")
    put_night(out, "monday", MONDAY)
    found = found_in(out)
    assert found["talks (before).pdf"] == b"talks of monday, with my notes"
    assert found["talks (before 2).pdf"] == b"and notes again"
    assert found["practice-larks (before).pdf"] == b"larks, with my notes"


def test_a_folder_of_an_earlier_release_has_no_list(tmp_path: Path) -> None:
    """Nothing in it is known to be ours, so all of it stays."""
    (tmp_path / "out" / ".film-parts").mkdir(parents=True)
    (tmp_path / "out" / "pupil.pdf").write_bytes(b"sunday")
    (tmp_path / "out" / "talks.txt").write_bytes(b"sunday")
    put_night(tmp_path / "out", "monday", MONDAY)
    assert found_in(tmp_path / "out") == MONDAY | {"pupil (before).pdf": b"sunday", "talks.txt": b"sunday"}
    assert (tmp_path / "out" / ".film-parts").is_dir()


def test_links_in_the_folder_are_never_followed(out: Path, tmp_path: Path, disk: str) -> None:
    """A link with a page's name is replaced; another stays a link. What they point to stays as it is."""
    secret = tmp_path / "secret.txt"
    secret.write_bytes(b"elsewhere")
    secret.chmod(0o644)
    for name in ("talks.pdf", "practice-larks.pdf", MANIFEST):
        (out / name).unlink()
        os.symlink(secret, out / name)  # noqa: PTH211 - the other way is spoilt on one of the disks
    put_night(out, "tuesday", TUESDAY, own=True)
    assert secret.read_bytes() == b"elsewhere"
    assert stat.S_IMODE(secret.stat().st_mode) == 0o644, disk
    assert not (out / "talks.pdf").is_symlink()
    assert (out / "talks.pdf").read_bytes() == b"talks of tuesday"
    assert (out / "practice-larks.pdf").is_symlink()
    assert read_manifest(out).title == "tuesday"


def test_the_folder_itself_may_be_named_by_a_link(out: Path, tmp_path: Path) -> None:
    """The link stays, and the folder that it leads to is the new one."""
    (tmp_path / "tonight").symlink_to(out)
    put_night(tmp_path / "tonight", "tuesday", TUESDAY)
    assert (tmp_path / "tonight").is_symlink()
    assert found_in(out) == TUESDAY


def test_permissions(tmp_path: Path) -> None:
    """Pages for the class are as is usual, a folder that was there keeps its own; pupils' work is closed."""
    usual = os.umask(0o027)
    try:
        put_night(tmp_path / "class", "monday", MONDAY, pupils=False)
        put_night(tmp_path / "shared", "monday", MONDAY, pupils=False)
        (tmp_path / "shared").chmod(0o775)
        put_night(tmp_path / "shared", "tuesday", TUESDAY, pupils=False)
        put_night(tmp_path / "pupils", "monday", MONDAY)
        put_night(tmp_path / "made" / "night-1", "monday", MONDAY, pupils=False, own=True)
    finally:
        os.umask(usual)

    def modes(folder: Path) -> set[int]:
        return {stat.S_IMODE(path.stat().st_mode) for path in (folder, *folder.iterdir())}

    assert modes(tmp_path / "class") == {0o750, 0o640}
    assert modes(tmp_path / "shared") == {0o775, 0o640}
    assert modes(tmp_path / "pupils") == {0o700, 0o600}
    assert modes(tmp_path / "made" / "night-1") == {0o700, 0o600}
    assert stat.S_IMODE((tmp_path / "made").stat().st_mode) == 0o700


def test_a_folder_that_is_not_one_of_pages_is_refused(
    out: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The working folder, the home folder, what holds them, a disk, one with folders: each untouched."""
    documents = tmp_path / "documents"
    (documents / "letters").mkdir(parents=True)
    app = tmp_path / "app"
    app.mkdir()
    (app / MANIFEST).write_text('{"name": "kites"}')
    before = found_in(tmp_path)
    for folder, said in (
        (documents, "holds other folders"),
        (app, "is not one of pages"),
        (Path("/"), "disk"),
    ):
        with pytest.raises(FileRefused, match=said) as refused:
            put_night(folder, "tuesday", TUESDAY)
        assert refused.value.remedy == f"Name a folder in it: {folder / 'pages'}."
    with pytest.raises(FileRefused, match="File exists"):
        put_night(out / "pupil.pdf", "tuesday", TUESDAY)
    for where, folder in ((out, Path()), (out, out), (documents / "letters", documents)):
        monkeypatch.chdir(where)
        with pytest.raises(FileRefused, match="that you work in"):
            check_folder(folder)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("HOME", str(out))
    with pytest.raises(FileRefused, match="that you work in"):
        put_night(out, "tuesday", TUESDAY)
    assert found_in(tmp_path) == before
    assert hidden_beside(out) == []
    put_night(documents / "pages", "tuesday", TUESDAY)
    assert found_in(documents) == {f"pages/{name}": content for name, content in TUESDAY.items()}


def test_a_folder_with_a_pages_name_is_refused(out: Path) -> None:
    """It is not moved out of the way, and Monday's night stays."""
    (out / "talks.pdf").unlink()
    (out / "talks.pdf").mkdir()
    with pytest.raises(FileRefused, match="a page has its name"):
        put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == {name: content for name, content in MONDAY.items() if name != "talks.pdf"}
    assert hidden_beside(out) == []


def test_a_nearly_full_disk_keeps_the_old_night(tmp_path: Path) -> None:
    """The whole folder is named, nothing lies hidden; with room again the new night comes."""
    with small_disk(tmp_path, 600) as disk:
        out = disk / "out"
        put_night(out, "monday", {f"page-{at}.pdf": b"monday" * 5000 for at in range(10)})
        before = found_in(out)
        tuesday = {f"page-{at}.pdf": b"tuesday" * 6000 for at in range(10)}
        with pytest.raises(FileRefused, match="still there, whole") as refused:
            put_night(out, "tuesday", tuesday)
        assert refused.value.where == str(out)
        assert found_in(out) == before
        assert hidden_beside(out) == []
        (out / "page-9.pdf").unlink()
        put_night(out, "tuesday", {"page-0.pdf": b"tuesday"})
        assert found_in(out) == {"page-0.pdf": b"tuesday"}


def test_a_folder_within_is_never_a_link(out: Path, tmp_path: Path) -> None:
    """A link under its name is taken away; one that a killed run left leads back to the folder itself."""
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (out / "parts").symlink_to(elsewhere)
    assert folder_within(out, "parts") == out / "parts"
    assert not (out / "parts").is_symlink()
    assert elsewhere.is_dir()
    (out / "parts" / "one.mp4").write_bytes(b"one")
    hidden = out.with_name(hidden_name(out, "ab12", READY))
    hidden.mkdir()
    (out / "parts").rename(hidden / "parts")
    (out / "parts").symlink_to(f"../{hidden.name}/parts")
    assert [path.name for path in folder_within(out, "parts").iterdir()] == ["one.mp4"]
    assert not (out / "parts").is_symlink()
    assert hidden_beside(out) == []


def test_a_folder_that_was_made_anew_meanwhile_hides_nothing(out: Path) -> None:
    """What a killed run left under its name comes beside it, and the next run goes on."""
    hidden = out.with_name(hidden_name(out, "ab12", READY))
    (hidden / "kites").mkdir(parents=True)
    (hidden / "kites" / "red.txt").write_bytes(b"first")
    (out / "kites").mkdir()
    (out / "kites" / "red.txt").write_bytes(b"second")
    put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == TUESDAY | {"kites/red.txt": b"second", "kites (before)/red.txt": b"first"}
    assert hidden_beside(out) == []


@pytest.mark.skipif(os.geteuid() != 0, reason="only the machine's owner may give a folder away")
def test_a_hidden_folder_of_somebody_else_is_left_alone(out: Path) -> None:
    """Nothing of it comes among the pages."""
    hidden = out.with_name(hidden_name(out, "ab12", READY))
    hidden.mkdir()
    (hidden / "planted.pdf").write_bytes(b"not ours")
    os.chown(hidden, 65534, 65534)
    put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == TUESDAY
    assert found_in(hidden) == {"planted.pdf": b"not ours"}


def test_what_lies_hidden_is_told(out: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where names cannot be traded and nothing goes any more, it is not said that the folder is there."""
    renamed: list[Path] = []
    plain = Path.rename

    def rename(path: Path, to: Path) -> Path:
        if renamed:
            raise OSError(errno.EIO, "Input/output error")
        if path == out:
            renamed.append(path)
        return plain(path, to)

    monkeypatch.setattr(page_folder, "swapped", lambda *_: False)
    monkeypatch.setattr(Path, "rename", rename)
    with pytest.raises(FileRefused, match="hidden beside it, and the next run brings it back"):
        put_night(out, "tuesday", TUESDAY)
    monkeypatch.undo()
    assert not out.exists()
    put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == TUESDAY


def test_runs_at_once_leave_one_night_whole(out: Path) -> None:
    """Whoever comes last; every run ends, and nothing lies hidden."""
    nights = [{f"page-{at}.pdf": bytes([of]) * 1000 for at in range(of + 2)} for of in range(6)]
    with ThreadPoolExecutor(6) as pool:
        list(pool.map(lambda at: put_night(out, f"night {at}", nights[at]), range(6)))
    assert found_in(out) in nights
    assert hidden_beside(out) == []


@pytest.mark.parametrize("at", ["in the making", "before the trade", "after the trade", "between two steps"])
def test_what_a_killed_run_left_is_put_right_by_the_next(out: Path, at: str) -> None:
    """At every moment: what is the teacher's is there, and nothing of the killed run."""
    (out / "letter.txt").write_bytes(b"mine")
    (out / "kites").mkdir()
    (out / "kites" / "red.txt").write_bytes(b"mine too")
    making, ready, before = (out.with_name(hidden_name(out, "ab12", end)) for end in (MAKING, READY, BEFORE))
    wednesday = making if at == "in the making" else ready
    put_night(wednesday, "wednesday", {"pupil.pdf": b"wednesday", "extra.pdf": b"x"})
    os.link(out / "letter.txt", wednesday / "letter.txt")
    (wednesday / "kites").symlink_to(f"../{ready.name}/kites")
    if at == "in the making":
        (making / MANIFEST).unlink()
    elif at == "after the trade":
        if not swapped(out, ready):
            pytest.skip("names cannot be traded here")
        assert (out / "kites" / "red.txt").read_bytes() == b"mine too"
    elif at == "between two steps":
        out.rename(before)
    put_night(out, "tuesday", TUESDAY)
    assert found_in(out) == TUESDAY | {"letter.txt": b"mine", "kites/red.txt": b"mine too"}
    assert hidden_beside(out) == []
