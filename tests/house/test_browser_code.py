"""The browser code stands under the same law as the rest: its checks are on, and nothing turns them off."""

import json
import re
from pathlib import Path

import pytest

from tests.house.plan import ROOT, kept_files

SCRIPTS = [path for path in kept_files() if path.suffix == ".js"]
#: Ways to turn a check off in a file; ESLint and TypeScript read these words in comments.
OFF = re.compile(r"eslint-disable|eslint\s+[\w-]+:|@ts-(?:nocheck|ignore|expect-error)")


@pytest.mark.asvs("V15.3.5")
def test_every_script_has_its_types_checked() -> None:
    """What jsconfig.json takes in is every script there is."""
    read = json.loads((ROOT / "jsconfig.json").read_text(encoding="utf-8"))
    assert read["compilerOptions"]["checkJs"]
    assert read["compilerOptions"]["strict"]
    assert "exclude" not in read
    checked = {path for pattern in read["include"] for path in ROOT.glob(pattern)}
    assert set(SCRIPTS) - checked == set()


def test_every_script_is_linted() -> None:
    """ESLint reads every script below the root, except in folders that are made and not kept."""
    config = (ROOT / "eslint.config.js").read_text(encoding="utf-8")
    (ignored,) = re.findall(r"ignores: \[(.*?)\]", config)
    folders = re.findall(r'"([^"]+)/"', ignored)
    assert len(folders) == ignored.count(",") + 1
    assert not [path for path in SCRIPTS if path.relative_to(ROOT).parts[0] in folders]
    assert '"eslint --max-warnings 0 ."' in (ROOT / "package.json").read_text(encoding="utf-8")


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_no_check_is_turned_off_in_a_script(path: Path) -> None:
    """A rule that does not suit is changed for all, in eslint.config.js or jsconfig.json."""
    assert not OFF.search(path.read_text(encoding="utf-8"))


def test_no_function_is_over_sixty_lines() -> None:
    """ESLint holds it, also for functions that are called where they stand."""
    config = (ROOT / "eslint.config.js").read_text(encoding="utf-8")
    assert '"max-lines-per-function": ["error", { max: 60, IIFEs: true }]' in config
    assert '"max-lines": ["error", 400]' in config
    assert config.count("max-lines") == 2, "no part of the code has another ceiling"


def test_the_lock_holds_no_address() -> None:
    """Names, versions and checksums pin what is installed; the place it comes from is not ours."""
    lock = (ROOT / "package-lock.json").read_text(encoding="utf-8")
    assert "://" not in lock
    assert json.loads(lock)["packages"][""]["devDependencies"]


def test_versions_are_pinned() -> None:
    """A version is a version, not a range."""
    asked = json.loads((ROOT / "package.json").read_text(encoding="utf-8"))
    assert not asked.get("dependencies"), "the program itself takes nothing from there"
    assert all(re.fullmatch(r"\d+\.\d+\.\d+", one) for one in asked["devDependencies"].values())


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_a_script_spells_no_address(path: Path) -> None:
    """The server hands every address over, in the page or in an answer; a part may be added for one thing."""
    assert not re.search(r"""["'`](?:\$\{[\w.]+\})?/[a-z]""", path.read_text(encoding="utf-8"))


@pytest.mark.asvs("V3.5.5", "V15.3.6")
@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_a_script_neither_talks_to_other_windows_nor_names_fields_by_a_text(path: Path) -> None:
    """No message between windows; no field of an object is set by a name that came from elsewhere."""
    text = path.read_text(encoding="utf-8")
    assert not re.search(r"""postMessage|["']message["']|__proto__|\.prototype\b""", text)
    assert not re.search(r"""\w\[[^\]"'\d][^\]]*\] *[-+|&?*]{0,2}=(?!=)""", text)


@pytest.mark.asvs("V14.3.3")
def test_a_browser_keeps_the_draft_of_a_page_and_nothing_else() -> None:
    """What pupils wrote is never in the browser's storage."""
    keeps = {
        path.name
        for path in SCRIPTS
        if re.search("localStorage|sessionStorage|indexedDB|caches\\.|document\\.cookie", path.read_text())
    }
    assert keeps == {"page_desk_kept.js"}
