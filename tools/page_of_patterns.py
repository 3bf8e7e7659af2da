"""docs/patterns.md: every error pattern with its rule, words for the teacher, an example and its source."""

from collections.abc import Iterator

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Pattern, Topic
from onewhole.misconceptions.source import Source
from onewhole.working.strategies.table import strategy_named
from onewhole.writers.pattern_words import question_on, thought_on

HEAD = """\
# Error patterns

Made from the catalogue by `python -m tools.docs`. A pattern is a rule that gives wrong answers and that a
child may be following, worked so that it predicts the very answer that would be written. `onewhole patterns
"9 5/8 - 4 6/8"` shows what each would write on a problem.

**A pattern that fits is a hint for a talk with the child, never a label.** What a child may be thinking is
our own guess at it in a child's words; the question is one to ask, with the pieces on the table. Both are
filled from the problem: here from the example, on a marked page from one that the child answered. Different
ideas write the same answer, and the same child may do another thing tomorrow.

The source of a pattern says whether a text that describes it was *read* or is *remembered*. The rules are
worked on exact numbers; [a decision](decisions/0003-patterns-that-are-not-one-step.md) tells which of them
are no strategy with one step left out or done wrongly.

"""
WORDS = ClassWords()
PROVENANCE = {"read": "read", "memory": "remembered"}


def patterns_page() -> str:
    """Return the page."""
    return HEAD + "\n".join(_page())


def _page() -> Iterator[str]:
    every = patterns()
    for topic in Topic:
        yield f"- [{topic.value.capitalize()}](#{_anchor(topic)})"
    yield ""
    for topic in Topic:
        yield from (f"## {topic.value.capitalize()}", "")
        for pattern in (one for one in every if one.topic is topic):
            yield from _pattern(pattern)


def _anchor(topic: Topic) -> str:
    return topic.value.replace(",", "").replace(" ", "-").lower()


def _pattern(pattern: Pattern) -> Iterator[str]:
    example = pattern.example
    case = pattern.example_case
    fate = "kept at" if pattern.of_form else "becomes"
    yield from (f"### {pattern.id} {pattern.name}", "")
    yield f"{pattern.rule}"
    yield ""
    yield f"- For example, `{example.problem}` is {example.right} and {fate} **{example.wrong}**."
    if example.story:
        yield f"- The story: {example.story}"
    yield f"- It shows when {pattern.shows_when}."
    yield f"- The child may be thinking: “{thought_on(pattern, case, WORDS)}”"
    yield f"- Ask: {question_on(pattern, case, WORDS)}"
    yield f"- Kind: {pattern.family.value}. {_bends(pattern)}"
    yield f"- Source: {_source(pattern.source)}"
    yield ""


def _bends(pattern: Pattern) -> str:
    if pattern.strategy is None:
        return "No taught strategy stands behind it."
    name = strategy_named(pattern.strategy).name
    if pattern.bends is None:
        return f"The taught strategy to set beside it is “{name}”."
    steps = " and ".join(f"`{step}`" for step in pattern.bends.steps)
    return f"It bends “{name}” at the step{'s' * (len(pattern.bends.steps) > 1)} {steps}."


def _source(source: Source) -> str:
    page = f", page {source.page}" if source.page else ""
    note = f"; {source.note}" if source.note else ""
    return f"{source.text}{page} ({PROVENANCE[source.provenance]}{note})."
