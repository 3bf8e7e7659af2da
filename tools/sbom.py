"""sbom.cdx.json: what onewhole runs with, in the CycloneDX format: `python -m tools.sbom`.

Made anew it is the same to the byte: it has no time, no serial number, no path and no address.
"""

import json
import tomllib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from cyclonedx.contrib.license.factories import LicenseFactory
from cyclonedx.model.bom import Bom
from cyclonedx.model.component import Component, ComponentType
from cyclonedx.output.json import JsonV1Dot6
from packageurl import PackageURL

from onewhole import __version__
from tools.locked import ROOT
from tools.third_party import Bundled, Crate, Package, packages

SBOM = ROOT / "sbom.cdx.json"


@dataclass(frozen=True, slots=True)
class Beside:
    """A part that is no package: name, version ("" where none is told), licence, who tells of that."""

    name: str
    version: str
    licence: str
    told: str


def sbom(only: frozenset[str] | None = None, beside: Sequence[Beside] = (), *, licence: str = "") -> str:
    """Return the file's text; with ``only`` of these packages, with ``beside`` of what else comes along.

    ``licence`` are the terms of the whole where they are not those of onewhole itself.
    """
    bom = Bom()
    bom.metadata.component = _onewhole(licence)
    there = [one for one in packages() if only is None or one.name in only]
    components = {one.name: _package(one) for one in there}
    bom.components.update(components.values())
    wanted = [components[name] for name in _wanted() if name in components]
    bom.register_dependency(bom.metadata.component, wanted)
    for one in there:
        needs = [components[name] for name in one.needs if name in components]
        bom.register_dependency(components[one.name], needs)
    for part in beside:
        ref = f"system/{part.name}"
        bom.components.add(_component(part.name, part.version, part.licence, ref, told=part.told))
    made = json.loads(JsonV1Dot6(bom).output_as_string())
    # Neither is asked for by the format, and both would differ each time.
    del made["serialNumber"], made["metadata"]["timestamp"]
    return json.dumps(made, indent=1, sort_keys=True, ensure_ascii=False) + "\n"


def _onewhole(licence: str) -> Component:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return _component(
        "onewhole", __version__, licence or project["license"], "onewhole", ComponentType.APPLICATION
    )


def _wanted() -> list[str]:
    """Return what onewhole itself asks for, as pyproject.toml names it."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return [line.partition("<")[0] for line in project["dependencies"]]


def _package(one: Package) -> Component:
    purl = PackageURL("pypi", name=one.name, version=one.version)
    inside = [
        *(_bundled(one, library) for library in one.bundled),
        *(_crate(one, crate) for crate in one.crates),
    ]
    return _component(
        one.name, one.version, one.licence, str(purl), purl=purl, inside=inside, told=one.summary
    )


def _bundled(package: Package, one: Bundled) -> Component:
    """A library inside a wheel; the version is that of its file."""
    told = f"{one.project}; its licence as told by {one.source}"
    return _component(
        one.file, one.version, one.licence, f"{package.name}/{one.file}@{one.version}", told=told
    )


def _crate(package: Package, one: Crate) -> Component:
    """A crate inside a wheel; another wheel may hold the same, and each has a name of its own in the bill."""
    purl, ref = PackageURL.from_string(one.purl), f"{package.name}/{one.purl}"
    return _component(one.name, one.version, one.licence, ref, purl=purl)


def _component(
    name: str,
    version: str,
    licence: str,
    ref: str,
    kind: ComponentType = ComponentType.LIBRARY,
    *,
    purl: PackageURL | None = None,
    inside: Iterable[Component] = (),
    told: str = "",
) -> Component:
    return Component(
        name=name,
        version=version or None,
        type=kind,
        bom_ref=ref or None,
        purl=purl,
        licenses=[LicenseFactory().make_from_string(licence)],
        components=inside,
        description=told or None,
    )


def main() -> None:
    """Write it."""
    SBOM.write_text(sbom(), encoding="utf-8")
    print(SBOM.name)


if __name__ == "__main__":
    main()
