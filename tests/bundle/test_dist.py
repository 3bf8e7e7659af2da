"""The wheel, installed in an environment of its own outside of this folder: a night, and a served class."""

import os
import subprocess
import sys
import tarfile
from pathlib import Path
from zipfile import ZipFile

import pytest

from tests.kit.unpacked import bare, started
from tools.locked import RUNTIME

pytestmark = pytest.mark.skipif(
    "ONEWHOLE_DIST" not in os.environ, reason="`make dist-check` builds the wheel and tries it"
)
DIST = Path(os.environ.get("ONEWHOLE_DIST", ""))
ROOM12 = Path(__file__).parents[2] / "examples" / "room12"


@pytest.fixture(scope="module")
def command(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The installed command."""
    folder = tmp_path_factory.mktemp("elsewhere") / "venv"
    (wheel,) = DIST.glob("*.whl")
    pip = [
        str(folder / "bin" / "python"),
        "-I",
        "-m",
        "pip",
        "install",
        "--quiet",
        "--disable-pip-version-check",
    ]
    subprocess.run([sys.executable, "-m", "venv", folder], check=True)
    subprocess.run([*pip, "--require-hashes", "--requirement", str(RUNTIME)], check=True)
    subprocess.run([*pip, "--no-deps", "--no-index", str(wheel)], check=True)
    return folder / "bin" / "onewhole"


def test_the_wheel_and_the_source_hold_what_a_user_needs() -> None:
    """The program with its data and its licence; no tests; the source builds from what it holds."""
    (wheel,), (source,) = DIST.glob("*.whl"), DIST.glob("*.tar.gz")
    names = ZipFile(wheel).namelist()
    assert not [name for name in names if "test" in Path(name).parts[0]]
    for end in ("web/templates/base.html", "web/static/look.css", "writers/look.typ", "licenses/LICENSE"):
        assert any(name.endswith(end) for name in names), end
    with tarfile.open(source) as packed:
        assert any(name.endswith("/pyproject.toml") for name in packed.getnames())


def test_a_night_and_a_served_class(command: Path, tmp_path: Path) -> None:
    """From a folder that knows nothing of the repository."""
    environment = bare(tmp_path)
    night = subprocess.run(
        [command, "night", ROOM12, "--to", "out"],
        env=environment, cwd=tmp_path, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert night.returncode == 0, night.stderr
    assert (tmp_path / "out" / "morning.pdf").exists()
    with started([command, "serve"], environment) as program:
        assert program.address.startswith("http://127.0.0.1:")
    assert (tmp_path / ".local" / "share" / "onewhole").is_dir()
