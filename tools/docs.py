"""Writes the pages of docs/ that are made from the code: `python -m tools.docs`."""

from collections.abc import Callable
from pathlib import Path

from tools.page_of_commands import commands_page
from tools.page_of_patterns import patterns_page
from tools.page_of_places import places_page
from tools.page_of_security import security_page
from tools.page_of_strategies import strategies_page
from tools.page_of_tables import tables_page
from tools.page_of_topics import topics_page

DOCS = Path(__file__).parents[1] / "docs"

#: The pages by their file names, each with the function that makes its text.
PAGES: dict[str, Callable[[], str]] = {
    "commands.md": commands_page,
    "patterns.md": patterns_page,
    "pasted-tables.md": tables_page,
    "privacy.md": places_page,
    "security-checklist.md": security_page,
    "strategies.md": strategies_page,
    "topics.md": topics_page,
}


def main() -> None:
    """Write every page."""
    for name, made in PAGES.items():
        (DOCS / name).write_text(made(), encoding="utf-8")
        print(f"docs/{name}")


if __name__ == "__main__":
    main()
