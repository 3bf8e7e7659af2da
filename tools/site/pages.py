"""The pages of the site: the docs as they stand, what they lead to, and an index of the decisions."""

import posixpath
import re
from collections.abc import Callable, Iterator
from pathlib import Path

from tools.locked import ROOT

#: A link of a page: its address up to the anchor, and the anchor.
_LINK = re.compile(r"(?<=\]\()([^)#\s:]*)(#[^)\s]*)?(?=\))")
#: Pages of the length of a book: they stay a text.
_AS_TEXT = ("THIRD-PARTY-NOTICES.md",)
_FENCE = re.compile(r"^(```|~~~)")
_HEADING = re.compile(r"^# (.+)$", re.MULTILINE)


def write_pages(to: Path) -> list[str]:
    """Copy the start page, the docs and all that they lead to; return their names, in that order."""
    wanted = ["README.md", *_docs("docs"), *_docs("docs/decisions")]
    done: list[str] = []
    while wanted:
        name = wanted.pop(0)
        if name in done or not (ROOT / name).exists():
            continue
        done.append(name)
        goal = to / _renamed(name)
        goal.parent.mkdir(parents=True, exist_ok=True)
        if (ROOT / name).is_dir():
            continue
        if goal.suffix == ".md":
            text, goals = _led(name, (ROOT / name).read_text(encoding="utf-8"))
            goal.write_text(text, encoding="utf-8")
            wanted += goals
        else:
            goal.write_bytes((ROOT / name).read_bytes())
    _write_decisions(to)
    _write_changes(to)
    return [_renamed(name) for name in done]


def title(name: str) -> str:
    """Return the heading of a page of the repository."""
    found = _HEADING.search((ROOT / name).read_text(encoding="utf-8"))
    return found[1].replace("`", "") if found else name


def _docs(folder: str) -> list[str]:
    return sorted(path.relative_to(ROOT).as_posix() for path in (ROOT / folder).glob("*.md"))


def _led(name: str, text: str) -> tuple[str, list[str]]:
    """Return a page with its links as the site names them, and the files that they lead to."""
    goals: list[str] = []

    def named(found: re.Match[str]) -> str:
        address, anchor = found[1], found[2] or ""
        if not address:
            return anchor
        goal = posixpath.normpath(posixpath.join(posixpath.dirname(name), address))
        goals.append(goal)
        return posixpath.relpath(_renamed(goal), posixpath.dirname(_renamed(name)) or ".") + anchor

    return "\n".join(_unfenced(text, lambda line: _LINK.sub(named, line))) + "\n", goals


def _unfenced(text: str, change: Callable[[str], str]) -> Iterator[str]:
    """Yield the lines, those changed that stand in no block of code."""
    inside = ""
    for line in text.splitlines():
        fence = _FENCE.match(line)
        if fence and inside in {"", fence[1]}:
            inside = "" if inside else fence[1]
        yield line if inside or fence else change(line)


def _renamed(name: str) -> str:
    """Return what a file is called in the site: a folder's page is its index, a folder is that page."""
    if (ROOT / name).is_dir():
        return f"{name}/index.md"
    if name in _AS_TEXT:
        return name.replace(".md", ".txt")
    return re.sub(r"(^|/)README\.md$", r"\1index.md", name)


def _write_decisions(to: Path) -> None:
    rows = [f"- [{title(name)}]({posixpath.basename(name)})" for name in _docs("docs/decisions")]
    head = "# Decisions\n\nRoads that were taken, roads that were not, and why.\n\n"
    (to / "docs" / "decisions" / "index.md").write_text(head + "\n".join(rows) + "\n", encoding="utf-8")


def _write_changes(to: Path) -> None:
    """Write the page of what is not released yet, kind by kind."""
    lines = ["# Not released yet", ""]
    for kind in ("added", "changed", "fixed", "removed"):
        found = sorted((ROOT / "changelog.d").glob(f"*.{kind}.md"))
        if found:
            lines += [f"## {kind.capitalize()}", ""]
            lines += [f"- {' '.join(path.read_text(encoding='utf-8').split())}" for path in found]
            lines.append("")
    (to / "changelog.d").mkdir(exist_ok=True)
    (to / "changelog.d" / "index.md").write_text("\n".join(lines), encoding="utf-8")
