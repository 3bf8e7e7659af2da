"""THIRD-PARTY-NOTICES.md: what onewhole runs with, and the licences: `python -m tools.notices`."""

from collections import Counter
from collections.abc import Iterable, Iterator

from tools.locked import ROOT
from tools.third_party import Package, by_hand, packages

NOTICES = ROOT / "THIRD-PARTY-NOTICES.md"
#: Texts of licences that no package brings along.
LICENCES = ROOT / "tools" / "licences"

#: What stands before the tables: written by hand.
HEAD = ROOT / "tools" / "third_party.md"


def notices() -> str:
    """Return the page."""
    return "\n".join(
        (HEAD.read_text(encoding="utf-8"), *_packages(), *_inside(), *_crates(), *_beside(), *_texts())
    )


def _row(*cells: str) -> str:
    return f"| {' | '.join(' '.join(cell.replace('|', '/').split()) for cell in cells)} |"


def _table(*heads: str) -> Iterator[str]:
    yield _row(*heads)
    yield _row(*("---" for _ in heads))


def _packages() -> Iterator[str]:
    yield from ("## Packages", "", *_table("package", "version", "licence", "told by"))
    for one in packages():
        yield _row(one.name, one.version, one.licence, one.source)
    yield ""


def _inside() -> Iterator[str]:
    yield from ("## Libraries inside packages", "")
    yield from _table("in", "library", "version of its file", "of", "licence", "told by")
    for package in packages():
        for one in package.bundled:
            version = one.version or "not told"
            yield _row(package.name, one.file, version, one.project, one.licence, one.source)
    yield ""


def _crates() -> Iterator[str]:
    yield from ("## Crates inside packages", "")
    for package in packages():
        if package.crates:
            count = len(package.crates)
            yield f"`{package.name}` lists {count} Rust crates; `sbom.cdx.json` names each with its version."
            yield from ("", *_table("licence", "crates"))
            counted = Counter(one.licence for one in package.crates)
            for licence, times in sorted(counted.items(), key=lambda one: (-one[1], one[0])):
                yield _row(licence, str(times))
            yield ""


def _beside() -> Iterator[str]:
    yield from ("## What else a running onewhole uses", "", *_table("what", "licence", "where", "told by"))
    for row in by_hand()["beside"].values():
        yield _row(row["name"], row["licence"], row["what"], row["source"])
    yield ""


def _texts() -> Iterator[str]:
    yield from ("## Texts of the licences", "")
    without = [one.name for one in packages() if not one.texts]
    yield f"These packages bring no text along: {', '.join(without)}."
    yield ""
    told: dict[str, list[str]] = {}
    for package in packages():
        for file, text in package.texts:
            told.setdefault(_tidy(text), []).append(_place(package, file))
    for text, places in told.items():
        yield from _text(", ".join(places), text)
    for path in sorted(LICENCES.iterdir()):
        yield from _text(
            f"{path.stem}, which some of the packages and libraries name", _tidy(path.read_text())
        )


def _place(package: Package, file: str) -> str:
    return f"{package.name} {package.version} ({file})"


def _tidy(text: str) -> str:
    """Return a text without spaces at the ends of lines and empty lines at its ends."""
    lines: Iterable[str] = (line.rstrip() for line in text.expandtabs(4).splitlines())
    return "\n".join(lines).strip("\n")


def _text(head: str, text: str) -> Iterator[str]:
    yield from (f"### {head}", "", "~~~text", text, "~~~", "")


def main() -> None:
    """Write it."""
    NOTICES.write_text(notices(), encoding="utf-8")
    print(NOTICES.name)


if __name__ == "__main__":
    main()
