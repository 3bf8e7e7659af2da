"""Where a person's data lie on each system, as platformdirs 4.14 says."""

from pathlib import Path, PurePosixPath, PureWindowsPath

import pytest
from platformdirs.macos import MacOS
from platformdirs.unix import Unix

from onewhole.cli.data_folder import data_folder, named


@pytest.mark.parametrize("told", [{}, {"XDG_DATA_HOME": "/data"}, {"XDG_DATA_HOME": "data"}], ids=str)
@pytest.mark.parametrize(("platform", "dirs"), [("linux", Unix), ("darwin", MacOS)])
def test_as_platformdirs(
    platform: str,
    dirs: type[Unix | MacOS],
    told: dict[str, str],
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
) -> None:
    """The same folder, whatever the environment says; a path that is not whole does not count with us."""
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.delenv("XDG_DATA_HOME", raising=False)
    for name, value in told.items():
        if value.startswith("/"):
            monkeypatch.setenv(name, value)
    assert data_folder(told, tmp_path, platform) == Path(dirs("onewhole").user_data_dir)


def test_on_windows() -> None:
    """The local application data (platformdirs 4.14, `windows.py`); a path without a drive is half one."""
    home = PureWindowsPath("C:\\Users\\Ada")
    assert named(home, "D:\\Local") == PureWindowsPath("D:/Local")
    assert named(home, "\\Local") is None
    assert named(PurePosixPath("/ada"), "D:\\Local") is None
    assert data_folder({}, Path("/ada"), "win32") == Path("/ada/AppData/Local/onewhole")


@pytest.mark.parametrize("platform", ["win32", "darwin"])
def test_a_folder_of_before_stays(platform: str, tmp_path: Path) -> None:
    """A class that an earlier release kept there is found again."""
    former = tmp_path / ".local" / "share" / "onewhole"
    assert data_folder({}, tmp_path, platform) != former
    former.mkdir(parents=True)
    assert data_folder({}, tmp_path, platform) == former
