"""The morning page is one page for the teacher, with the reason for every placing."""

from collections.abc import Callable
from functools import cache
from typing import Any

import pytest

from onewhole.desk.marking.mark import Marked, mark
from onewhole.findings.group_kind import GroupKind
from onewhole.languages.english.speech import say
from onewhole.marking.grouping.see_first import see_first
from onewhole.marking.reading.answer import read_written
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.morning_page import KITES, _wrote, kite_of, morning_page
from onewhole.writers.printed import Printed
from tests.kit import pdf
from tests.kit.pages import PAPERS, made, marked, morning, plain, pressed, text_of

#: What goes through the minds of a full and mixed class: 21 pupils in four families, then three more.
IDEAS = ("A03",) * 6 + ("A01",) * 5 + ("A18",) * 5 + ("A24",) * 5


@cache
def full_class(paper: str) -> Marked:
    """24 pupils in six groups with hardly two alike: right answers and blanks lie between the wrong ones."""
    typed = f"paper: {paper}\n{text_of('room12')}"
    problems = read_sheet(typed).problems
    wrong = [{slip.pattern: text(slip.wrote) for slip in shows(one.statement)} for one in problems]
    right = [text(found) for one in problems if isinstance(found := answer(one.statement), Quantity)]

    def wrote(pupil: int, idea: str, at: int) -> str:
        if (at + pupil) % 4 == 0:
            return right[at]
        return "" if (at * 5 + pupil) % 9 == 0 else wrong[at].get(idea, right[at])

    rows = [[wrote(pupil, idea, at) for at in range(len(problems))] for pupil, idea in enumerate(IDEAS)]
    rows += [[""] * len(problems), right, right]
    cells = [["pupil", *(one.label for one in problems)]]
    cells += [[f"Q{at:02}", *row] for at, row in enumerate(rows, start=1)]
    return mark(typed, "\n".join(",".join(row) for row in cells))


def page_of(found: Marked) -> Printed:
    """The morning page of a class."""
    first = see_first(found.marks.pupils, found.findings, found.groups)
    return morning_page(
        WorkedSheet(found.sheet), found.marks, found.findings, found.groups, items=found.items, first=first
    )


@pytest.mark.parametrize("paper", PAPERS)
def test_a_class_of_24_in_six_or_seven_groups_is_one_page(paper: str) -> None:
    """Room 12, and a class of 24 that is as mixed as can be, stand on one page in ordinary print."""
    full = full_class(paper)
    assert len(full.marks.pupils) == 24
    assert (len(full.groups), len(marked().groups)) == (6, 7)
    assert pdf.pages(made(page_of(full))) == 1
    assert pdf.pages(pressed("room12/morning", paper, "ordinary")) == 1


@pytest.mark.parametrize("of_class", [marked, lambda: full_class("letter")], ids=["room12", "full"])
def test_every_pupil_is_placed_with_the_labels_that_say_why(of_class: Callable[[], Marked]) -> None:
    """Each pupil stands once, in one group, beside the labels of the answers that it comes from."""
    found = of_class()
    data: Any = page_of(found).data
    labels = [problem.label for problem in found.sheet.problems]
    because = {finding.pupil: finding for finding in found.findings}
    placed = [who for group in data["groups"] for row in _rows(group) for who in row["who"]]
    assert sorted(placed) == sorted(pupil.pupil for pupil in found.marks.pupils)
    for group, shown in zip(found.groups, data["groups"], strict=True):
        assert shown["name"] == group.name
        for row in _rows(shown):
            for who in row["who"]:
                finding = because[who]
                told = finding.evidence if group.place is GroupKind.FAMILY else finding.wrong
                if group.place is not GroupKind.ABSENT:
                    assert spread(row["labels"].split("; ")[0], labels) >= set(told)


def _rows(group: dict[str, Any]) -> list[Any]:
    return [row for idea in group["ideas"] for row in idea["pupils"]]


def test_a_group_is_called_by_its_idea_and_says_who_has_which() -> None:
    """One idea is the title; of several each stands over its pupils, with what to ask them."""
    found = marked()
    data: Any = page_of(found).data
    for group, shown in zip(found.groups, data["groups"], strict=True):
        if not group.place.meets:
            assert [one["idea"] for one in shown["ideas"]] == [""]
            continue
        names = [by_id(held.idea).name for held in group.ideas]
        if len(names) == 1:
            assert (shown["because"], shown["ideas"][0]["idea"]) == (names[0], "")
        else:
            assert shown["because"] == f"{len(names)} ideas: split the minutes of this group"
            assert [one["idea"] for one in shown["ideas"]] == names
        assert all(one["ask"].startswith("Ask, on ") for one in shown["ideas"])
    assert sum(group.place.meets for group in found.groups) == 3
    assert "You meet 3 groups of the 4 you can." in data["evidence"]


def spread(said: str, labels: list[str]) -> set[str]:
    """The labels that "3–5, 7" stands for."""
    found: set[str] = set()
    for part in said.split(", "):
        first, _, last = part.partition("–")
        if first in labels:
            found.update(labels[labels.index(first) : labels.index(last or first) + 1])
    return found


@pytest.mark.parametrize(
    ("written", "shown"),
    [
        ("2 9/5", "two and nine fifths"),
        (" 39/8", "thirty-nine eighths"),
        ("4 3/0", "four and three over zero"),
        ("2 ft 7 in", "two feet seven inches"),
        (">", "is greater than"),
        ("-1/-2", "minus one over minus two"),
        ("about two ", None),
    ],
)
def test_an_answer_is_typeset_where_it_reads_as_one(written: str, shown: str | None) -> None:
    """What a pupil wrote is a formula, spoken like any other; what cannot be read stays as it is written."""
    found = _wrote(read_written(written))
    if shown is None:
        assert found == f"“{written.strip()}”"
    else:
        assert isinstance(found, dict)
        assert found["alt"] == shown


def test_no_number_is_broken_over_two_lines() -> None:
    """The problem to ask about and the answer stand on one line each, for five pupils at most."""
    data: Any = morning("letter", "ordinary").data
    assert 1 <= len(data["first"]) <= 5
    asked = {problem.label: problem.statement for problem in marked().sheet.problems}
    for row in data["first"]:
        assert row["ask"]["alt"] == say(asked[row["label"].removesuffix(".")])


def test_groups_are_told_apart_by_kites_too() -> None:
    """The first six groups have six kites; the seventh begins again."""
    assert [kite_of(at) for at in range(7)] == [*KITES, KITES[0]]
    data: Any = morning("letter", "ordinary").data
    assert [group["kite"] for group in data["groups"]] == [*KITES, KITES[0]]


def test_ideas_stand_in_plain_words_and_no_id_is_named() -> None:
    """The page says what a group's idea is, as a teacher would; the ids of patterns are for lists."""
    said = plain(" ".join(pdf.words(pressed("room12/morning", "letter", "ordinary"))))
    assert "takes the smaller number of pieces from the larger" in said
    for pattern in patterns():
        # The pupils' codes here begin with a K, as some patterns do: K05.
        assert pattern.id.startswith("K") or f"{pattern.id} " not in said


def test_a_negative_item_asks_to_look_at_the_key() -> None:
    """Where pupils who do well elsewhere do worse on a problem, its key is to be looked at."""
    rows = [*["1,1,5"] * 6, *["2,2,1"] * 6]
    answers = "\n".join(["pupil,1,2,3", *(f"K{at},{row}" for at, row in enumerate(rows))])
    data: Any = page_of(mark("1. 3 - 2\n2. 4 - 3\n3. 5 - 4", answers)).data
    assert "Look at the key of" in data["evidence"]
    assert "3" in data["evidence"].partition("key of")[2]


def test_names_stay_on_the_page() -> None:
    """Four names between others, a letter longer in each group: where they just fit into the card, too."""
    data: dict[str, Any] = morning("letter", "ordinary").data
    card = next(group for group in data["groups"] if len(group["ideas"]) == 1)
    groups = [
        card
        | {
            "name": f"Larks {letters}",
            "ideas": [
                {
                    "idea": "",
                    "ask": "",
                    "pupils": [
                        {"who": ["K04 Daniel"], "labels": "blank 11"},
                        {
                            "who": ["K12 Lucia", "K13 Mateo", "K17 Quentin", f"K20 Tam{'i' * letters}ka"],
                            "labels": "",
                        },
                        {"who": ["K14 Nadia"], "labels": "unread 4"},
                    ],
                }
            ],
        }
        for letters in (*range(8), *range(8))
    ]
    page = made(Printed("morning", data | {"groups": groups, "first": []}))
    assert max(box.right for box in pdf.signs(page)) <= 215.9 - 15 + 0.1
    assert plain(" ".join(pdf.words(page))).count("K17 Quentin") == 16


def test_the_teacher_sees_names_where_they_are_known() -> None:
    """Beside the code, in the idea, seen first, and in every group; without any, the code alone."""
    found = marked()
    first = see_first(found.marks.pupils, found.findings, found.groups)
    page = morning_page(
        found.worked,
        found.marks,
        found.findings,
        found.groups,
        items=found.items,
        first=first,
        shown=lambda code: f"{code} Ada" if code == first[0].pupil else code,
    )
    words = repr(page.data)
    assert words.count(f"'{first[0].pupil} Ada'") == 3
    assert f"'{first[0].pupil}'" not in words
