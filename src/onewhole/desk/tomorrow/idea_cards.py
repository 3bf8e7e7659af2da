"""The class's ideas as the morning begins with them: who has each, the problem to show, what to ask."""

from msgspec import Struct

from onewhole.desk.marking.mark import Marked
from onewhole.desk.tomorrow.talks import shown_written
from onewhole.languages.english.placing import idea_called
from onewhole.languages.english.words import names_listed
from onewhole.marking.grouping.class_ideas import ClassIdea, class_ideas
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.mathml import mathml
from onewhole.writers.labels import runs
from onewhole.writers.pattern_words import asked_on, question_on


class IdeaCard(Struct, frozen=True):
    """An idea of the class in plain words, the children whose answers fit it, and how to talk about it.

    ``show`` is the problem to show (MathML), ``label`` its label: empty where no answer of tonight fits and
    the idea's own example is shown. ``wrote`` is what most of them wrote there, MathML where ``is_formula``.
    ``known`` says how it is known: which answers fit, and what the idea is called in the list of patterns.
    """

    called: str
    codes: tuple[str, ...]
    label: str
    show: str
    wrote: str
    is_formula: bool
    ask: str
    known: tuple[str, ...]


def idea_cards(marked: Marked) -> tuple[IdeaCard, ...]:
    """Return the ideas of the class, that of most pupils first."""
    return tuple(_card(one, marked) for one in class_ideas(marked.marks.pupils, marked.findings))


def _card(one: ClassIdea, marked: Marked) -> IdeaCard:
    pattern = by_id(one.idea)
    where, case = asked_on(pattern, marked.sheet.problems, (one.show,) if one.show else ())
    labels = [problem.label for problem in marked.sheet.problems]
    wrote, is_formula = shown_written(one.wrote) if one.wrote else ("", False)
    return IdeaCard(
        idea_called(one.idea),
        one.pupils,
        where if where in labels else "",
        mathml(case.statement),
        wrote if where == one.show else "",
        is_formula,
        question_on(pattern, case, marked.sheet.header.words),
        (*_fitting(one, labels), f"In the list of patterns it is {one.idea}."),
    )


def _fitting(one: ClassIdea, labels: list[str]) -> list[str]:
    """Say whose answers fit in which problems; those with the same ones together."""
    alike: dict[tuple[str, ...], list[str]] = {}
    for code in one.pupils:
        alike.setdefault(one.fits[code], []).append(code)
    return [
        f"{names_listed(codes)}: answers to {runs(fits, labels)} fit."
        if fits
        else f"{names_listed(codes)}: answers of earlier nights fit, none of tonight."
        for fits, codes in alike.items()
    ]
