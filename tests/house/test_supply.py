"""What is fetched has checksums, and what is brought along of others is told, the same each time."""

import json
import platform
import re
import sys
import tomllib
from importlib.metadata import distribution
from pathlib import Path

import cyclonedx.schema
import jsonschema_rs
import pytest

from tests.house.plan import ROOT
from tools.audit_dependencies import Report, told
from tools.locked import BUILD, DEVELOPMENT, RUNTIME, pinned
from tools.notices import NOTICES, notices
from tools.sbom import SBOM, sbom
from tools.third_party import by_hand, libraries, library, packages

LOCKS = (RUNTIME, BUILD, DEVELOPMENT)
#: Wheels of other systems bundle other files; the list is of these.
LISTED = (sys.platform, platform.machine()) == ("linux", "x86_64")
WHERE = "the list is of what the wheels for Linux on x86-64 bundle"


@pytest.mark.parametrize("lock", LOCKS, ids=lambda lock: lock.name)
def test_a_lock_has_packages_versions_and_checksums_only(lock: Path) -> None:
    """No address, path or option stands in a lock, and nothing is without a checksum."""
    assert pinned(lock)


@pytest.mark.parametrize(
    "line",
    ["rich==15.0.0", "rich==15.0.0 --hash=md5:" + 32 * "0", "rich>=15 --hash=sha256:" + 64 * "0", "-e ."],
)
def test_a_package_without_a_checksum_is_seen(line: str, tmp_path: Path) -> None:
    """The reader of locks refuses a line that pip would take without looking at the file."""
    lock = tmp_path / "requirements.lock"
    lock.write_text(f"{line}\n")
    with pytest.raises(ValueError, match="not a package, its version and its checksums"):
        pinned(lock)


def test_what_runs_is_what_is_tested() -> None:
    """Every package that runs or builds stands in the lock of the tests, with the same checksums."""
    assert set(pinned(RUNTIME)) | set(pinned(BUILD)) <= set(pinned(DEVELOPMENT))


def test_a_package_that_is_made_for_a_machine_has_checksums_for_others_too() -> None:
    """More than one file each: a wheel for Linux alone would be one."""
    few = {one.name for one in pinned(RUNTIME) if len(one.checksums) == 1}
    print(f"{sum(len(one.checksums) for one in pinned(RUNTIME))} checksums, one file only: {sorted(few)}")
    for one in few:
        told = distribution(one).read_text("WHEEL") or ""
        assert "Tag: py3-none-any" in told or "Tag: py2.py3-none-any" in told


@pytest.mark.asvs("V15.2.4")
def test_make_fetches_nothing_without_its_checksum() -> None:
    """Each `pip install` of the Makefile asks for checksums or fetches nothing; npm goes by its lock."""
    makefile = (ROOT / "Makefile").read_text().replace("\\\n", " ")
    installs = [line for line in makefile.splitlines() if "pip install" in line]
    assert len(installs) == 3
    assert all("--require-hashes" in line or "--no-index" in line for line in installs)
    assert re.search(r"^\tnpm ci\b", makefile, re.MULTILINE)
    assert not re.search(r"npm install(?!.*--package-lock-only)", makefile)


def test_the_lock_of_the_browser_checks_has_checksums_and_no_address() -> None:
    """`npm ci` refuses a file with another checksum; where files come from is each machine's own affair."""
    fetched = {name: one for name, one in _npm_lock().items() if name}
    assert fetched
    assert [name for name, one in fetched.items() if not one.get("integrity", "").startswith("sha512-")] == []
    assert [name for name, one in fetched.items() if "resolved" in one] == []


def _npm_lock() -> dict[str, dict[str, str]]:
    lock: dict[str, dict[str, dict[str, str]]] = json.loads((ROOT / "package-lock.json").read_text())
    return lock["packages"]


@pytest.mark.skipif(not LISTED, reason=WHERE)
def test_the_bill_of_materials_is_fresh(accept: bool) -> None:
    """It is what `make sbom` writes; ONEWHOLE_ACCEPT=1 writes it anew."""
    if accept:
        SBOM.write_text(sbom(), encoding="utf-8")
    assert SBOM.read_text(encoding="utf-8") == sbom(), "write it anew: make sbom"


@pytest.mark.skipif(not LISTED, reason=WHERE)
def test_the_notices_are_fresh(accept: bool) -> None:
    """They are what `make sbom` writes; ONEWHOLE_ACCEPT=1 writes them anew."""
    if accept:
        NOTICES.write_text(notices(), encoding="utf-8")
    assert NOTICES.read_text(encoding="utf-8") == notices(), "write it anew: make sbom"


def test_the_bill_of_materials_is_cyclonedx() -> None:
    """By the schema of CycloneDX 1.6 (ECMA-424), read by another library than the one that wrote it."""
    found = [error.message for error in _schema().iter_errors(json.loads(SBOM.read_text()))]
    assert found == []


def test_the_schema_sees() -> None:
    """A kind of component that is none is an error."""
    wrong = json.loads(SBOM.read_text())
    wrong["components"][0]["type"] = "kite"
    assert list(_schema().iter_errors(wrong))


def _schema() -> jsonschema_rs.Validator:
    folder = Path(cyclonedx.schema.__file__).parent / "_res"
    names = [f"{name}.SNAPSHOT.schema.json" for name in ("bom-1.6", "spdx", "jsf-0.82")]
    read = {name: json.loads((folder / name).read_text()) for name in names}
    known = jsonschema_rs.Registry(
        [(f"http://cyclonedx.org/schema/{name}", one) for name, one in read.items()]
    )
    return jsonschema_rs.validator_for(read[names[0]], registry=known)


@pytest.mark.asvs("V15.1.2")
def test_the_bill_of_materials_has_every_package_of_the_lock_and_no_other() -> None:
    """By name and version, on any machine."""
    components = json.loads(SBOM.read_text())["components"]
    listed = {(one["name"], one["version"]) for one in components}
    assert listed == {(one.name, one.version) for one in pinned(RUNTIME)}


def test_the_notices_name_what_pip_does_not_know() -> None:
    """The libraries under the GPL and LGPL stand in the page, each with the package that holds it."""
    page = NOTICES.read_text(encoding="utf-8")
    for words in (
        "| av | libx264 | 165 | x264 | GPL-2.0-or-later |",
        "| av | libx265 | 216 | x265 | GPL-2.0-or-later |",
        "| pillow-heif | libx265 | 217 | x265 | GPL-2.0-or-later |",
        "| espeakng-loader | libespeak-ng | 1.52.0 | espeak-ng | GPL-3.0-or-later |",
        "| num2words | 0.5.14 | LGPL-2.1-or-later |",
        "| SQLite | blessing |",
        "### GPL-3.0, which some",
    ):
        assert words in page


@pytest.mark.skipif(not LISTED, reason=WHERE)
def test_every_library_in_a_wheel_is_told_of_and_nothing_else_is() -> None:
    """A wheel that bundles a new library, or one less, turns this red: look at `third_party.toml`."""
    there = {(one.name, file) for one in packages() for file, _ in libraries(distribution(one.name))}
    told_of = {(package, file) for package, rows in by_hand()["bundled"].items() for file in rows}
    print(f"{len(there)} libraries in {len({package for package, _ in there})} packages")
    assert there == told_of


def test_a_row_on_a_package_is_of_one_that_is_locked() -> None:
    """And each is of a package whose metadata names no licence in the short form of SPDX."""
    locked = {one.name for one in pinned(RUNTIME)}
    rows = by_hand()["packages"]
    assert set(rows) <= locked
    assert [name for name in rows if "License-Expression" in distribution(name).metadata] == []


@pytest.mark.parametrize(
    ("file", "found"),
    [
        ("av.libs/libx264-d6533a8d.so.165", ("libx264", "165")),
        ("numpy.libs/libgfortran-040039e1-0352e75f.so.5.0.0", ("libgfortran", "5.0.0")),
        ("numpy.libs/libscipy_openblas64_-32a4b2a6.so", ("libscipy_openblas64_", "")),
        ("espeakng_loader/libespeak-ng.so.1", ("libespeak-ng", "1")),
        ("av.libs/libxcb-shape-7716c890.so.0.0.0", ("libxcb-shape", "0.0.0")),
        ("opencv_python_headless.libs/libcrypto-5409cd36.so.1.1.1k", ("libcrypto", "1.1.1k")),
        ("opencv_python_headless.libs/libopenblasp-r0-59ffcd50.3.15.so", ("libopenblasp-r0", "")),
        ("markupsafe/_speedups.cpython-311-x86_64-linux-gnu.so", None),
    ],
)
def test_a_library_is_known_by_its_file(file: str, found: tuple[str, str] | None) -> None:
    """Without the checksum that stands in a wheel's file names; a module of Python is none."""
    assert library(file) == found


def test_an_audit_that_looked_nothing_up_does_not_pass() -> None:
    """Where the index knows no package, the end is 2 and says what to do."""
    report: Report = {"dependencies": [{"name": "rich", "skip_reason": "Dependency not found"}]}
    assert told(report) == (
        2,
        [
            "0 packages looked up; on 1 this machine's index of packages tells nothing.",
            "Try again on a machine that reaches the public index.",
        ],
    )


def test_an_audit_names_each_fault_with_the_release_that_mends_it() -> None:
    """And ends with 1, also where another package was not looked up."""
    report: Report = {
        "dependencies": [
            {"name": "kite", "version": "1.0", "vulns": [{"id": "PYSEC-1", "fix_versions": ["1.1", "2.0"]}]},
            {"name": "tail", "version": "1.0", "vulns": []},
        ]
    }
    assert told(report) == (1, ["kite 1.0: PYSEC-1, mended in 1.1, 2.0"])
    report["dependencies"].append({"name": "string", "skip_reason": "Dependency not found"})
    assert told(report)[0] == 1


@pytest.mark.asvs("V15.2.3")
def test_a_release_holds_no_tests_and_needs_nothing_of_them() -> None:
    """Only what stands in src is packed; what tests need is no package that onewhole runs with."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())
    assert project["tool"]["setuptools"]["packages"]["find"] == {"where": ["src"]}
    assert [path.name for path in (ROOT / "src").iterdir() if path.suffix != ".egg-info"] == ["onewhole"]
    assert not list((ROOT / "src").rglob("test_*"))
    tests_need = set(project["project"]["optional-dependencies"]["dev"])
    assert tests_need.isdisjoint(one.name for one in pinned(RUNTIME))
