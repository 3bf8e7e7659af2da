"""docs/topics.md: every topic with what each door makes of its example, tried when the page is made."""

from collections.abc import Iterator, Sequence

from tools.topics.doors import DOORS, cells
from tools.topics.table import TOPICS, Topic

HEAD = """\
# Topics

Made by `python -m tools.docs`, which runs the example of each topic through every door; the table of
the topics is `tools/topics/table.py`. A cell tells what came out: the lines and ways of a working, the
picture that suits, the steps of the film, how many error patterns show and what the first writes, the
answer that is marked right, a skill of which pages are composed with one such problem that they are
chosen from, another problem like it, and the situation of its story. **none** stands where a door does
nothing with it.

The codes are those of *Common Core State Standards for Mathematics* (2010).

"""
NOTHING = "**none**"


def topics_page() -> str:
    """Return the page."""
    return HEAD + "\n".join(_page()) + "\n"


def _page() -> Iterator[str]:
    heads = ("topic", "standard", "example", *DOORS)
    yield _row(heads)
    yield _row(["---"] * len(heads))
    filled = dict.fromkeys(DOORS, 0)
    for topic in TOPICS:
        found = dict(zip(DOORS, cells(topic.typed), strict=True))
        for door, cell in found.items():
            filled[door] += bool(cell)
        yield _row((*_named(topic), *(cell or NOTHING for cell in found.values())))
    yield ""
    yield f"Of {len(TOPICS)} topics: {'; '.join(f'{door} {count}' for door, count in filled.items())}."


def _named(topic: Topic) -> tuple[str, ...]:
    return topic.name, topic.standard, f"`{topic.typed}`"


def _row(written: Sequence[str]) -> str:
    return f"| {' | '.join(written)} |"
