"""The teacher's morning page: whom to see first, the groups, and what all of it rests on."""

from collections.abc import Sequence

from onewhole.marking.finding import CAUTION
from onewhole.marking.first import SeeFirst
from onewhole.marking.group import Group
from onewhole.marking.items import Item
from onewhole.marking.mark import ClassMarks
from onewhole.marking.missed import missed
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.sheets.document import Sheet
from onewhole.statements.statement import Question
from onewhole.writers.formula import Formula, formula
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed
from onewhole.writers.reteaching import reteaching

#: The shapes of kites, for groups in their order.
KITES = ("diamond", "delta", "box", "sled", "hexagon", "house")
EXAMPLES = 2


def kite_of(at: int) -> str:
    """Return the kite of a group by its place."""
    return KITES[at % len(KITES)]


def morning_page(
    sheet: Sheet,
    marks: ClassMarks,
    items: Sequence[Item],
    groups: Sequence[Group],
    first: Sequence[SeeFirst],
) -> Printed:
    """Return the morning page; it is for the teacher's eyes and shows pupil codes as they were given."""
    asked = {problem.label: problem for problem in sheet.problems}
    data = frame(sheet.header, title="This morning", small=named(sheet.header))
    data |= {
        "footer": "For the teacher only. Keep it as the school keeps pupil records.",
        "evidence": _evidence(marks, items),
        "caution": CAUTION,
        "first": [_first(one, asked) for one in first],
        "groups": [_group(group, at, sheet, marks) for at, group in enumerate(groups)],
    }
    return Printed("morning", data)


def _evidence(marks: ClassMarks, items: Sequence[Item]) -> str:
    tried, right = sum(item.tried for item in items), sum(item.right for item in items)
    papers = f"{len(marks.pupils)} papers, {len(items)} problems: {right} of {tried} answers are right."
    look = [item.label for item in items if item.check_key]
    return f"{papers} Look at the key of {', '.join(look)}." if look else papers


def _first(one: SeeFirst, asked: dict[str, Problem]) -> Json:
    about = formula(asked[one.ask_about].statement)
    return {"who": one.pupil, "because": [f"{one.because} Ask for ", about, "."]}


def _group(group: Group, at: int, sheet: Sheet, marks: ClassMarks) -> Json:
    asked = {problem.label: problem for problem in sheet.problems}
    labels = missed(group, marks)[:EXAMPLES]
    found: Json = {
        "name": group.name,
        "kite": kite_of(at),
        "pupils": list(group.pupils),
        "because": group.because,
        "reteach": reteaching(group, sheet.header.words),
    }
    if examples := [_example(asked[label], sheet) for label in labels]:
        found["examples"] = examples
    return found


def _example(problem: Problem, sheet: Sheet) -> Json:
    working = as_taught(problem.statement, sheet.header.strategy)
    lines: list[Formula] = []
    if working:
        lead = isinstance(problem.statement, Question)
        lines = [formula(line.says, leads=lead and at > 0) for at, line in enumerate(working.brief())]
    return {"label": f"{problem.label}.", "lines": lines or [formula(problem.statement)]}
