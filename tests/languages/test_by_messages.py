"""A language of one file: every message is said, its holes are filled by nodes, and it stays small."""

from collections.abc import Iterator
from itertools import product
from pathlib import Path

import pytest

from onewhole.desk.walkthrough.lesson import lesson
from onewhole.languages import portuguese
from onewhole.languages.by_messages import message
from onewhole.languages.by_messages.message import Teller, nodes_of
from onewhole.languages.table import LANGUAGES
from onewhole.number.quantity import whole
from onewhole.number.unit import ONE
from onewhole.pictures.caption import Count
from onewhole.pictures.description import CutInto, Gathered
from onewhole.pictures.scene import Scene
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Said, Seam, Thing
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.walkthroughs.script import script
from onewhole.working.questions import suiting
from onewhole.working.reasons.renaming import RenamedSameAmount
from onewhole.working.reasons.taking import PiecesAdded, SoFar, TakenFromWhole
from onewhole.working.work import work
from onewhole.writers.family_page import family_page
from tests.kit.ladders import ladders
from tests.kit.scenes import SIXTH
from tests.kit.sheets import worked_sheet

PORTUGUESE = LANGUAGES["pt-BR"]
#: Sheets on which every message of a film and of a picture is said.
SHEETS = (
    "class: Sala 12\ndate: 2 de dezembro\nwhole: uma tira\n\n1. 7 2/6 - 3 5/6\n2. 2 4/5 + 1 3/5",
    "whole: um pão, pães\n\n1. 7 1/2 - 3 2/3\n2. 5/6 ? 7/8\n3. 8 - 5 2/8\n4. 2 1/4 + 3 1/4\n5. 4 1/4 - 1 3/4",
    "strategy: from whole\n\n1. 7 2/6 - 3 5/6\n2. 5 - 2\n3. 3 - 2 7/8",
    "strategy: wholes first\n\n1. 7 2/6 - 3 5/6\n2. 9 1/8 - 4 7/8",
    "strategy: units apart\n\n1. 7 5/6 + 3 5/6\n2. 304 - 128\n3. 6 1/4 + 2 2/4",
    "strategy: to fractions\n\n1. 7 2/6 - 3 5/6\n2. 5 1/3 - 2 2/3",
    "1. 5 ft 2 in - 2 ft 7 in\n2. 12.35 - 4.7\n3. 7 2/6 - 3 5/6 | Ana corta. Quanto sobra?\n4. ? + 2 = 5",
)


def _told(tag: str) -> Iterator[Sentences]:
    """All that a language says of these sheets, and every question of the page for home."""
    language = LANGUAGES[tag]
    words = language.usual
    for operation, units in product(Operation, Units):
        yield language.home.operation_asked(About(operation, units), words)
        yield language.home.unit_asked(About(operation, units), words)
        yield language.home.tonight([operation, Operation.ADD])
    for taken, added in ((True, False), (False, True), (False, False)):
        yield language.home.wording(words, taken=taken, added=added)
    for typed in SHEETS:
        worked = worked_sheet(f"languages: {tag}\n{typed}")
        family_page(worked)
        for chapter in script(lesson(worked)).chapters:
            yield from (cue.says for cue in chapter.cues)
    gathered = Scene(ONE.size, ONE.size, (), descriptions=(Gathered((Count(3, ONE),)),))
    yield language.working.picture(gathered, words)
    cut = CutInto(Count(1, ONE), Count(6, SIXTH))
    yield language.working.picture(Scene(ONE.size, ONE.size, (), descriptions=(cut,)), words)
    yield language.opening.try_first()
    yield language.opening.your_turn()
    yield language.opening.opened(1, 3, SIXTH, ONE, words, lacking=False)
    deed = language.lines.deed(PiecesAdded(SIXTH, 2, 3), words)
    yield language.lines.then(deed or ())
    for reason in (RenamedSameAmount(SIXTH), TakenFromWhole(whole(5), whole(0)), SoFar(whole(5))):
        yield language.working.reason(reason, words)
    for typed in ("9 1/8 - 2 33/8", *(typed for _, typed in tuple(ladders())[::4])):
        statement = read_statement(typed)
        for way in suiting(statement) if isinstance(statement, Question) else ():
            for line in work(statement, way).lines:
                if line.because is not None:
                    yield language.working.reason(line.because, words)


def test_every_message_is_said_and_its_holes_are_filled(monkeypatch: pytest.MonkeyPatch) -> None:
    """A hole that a meaning does not fill would be a KeyError; a message that nobody says would be idle."""
    said: set[str] = set()
    parsed = message._parsed

    def noted(one: str) -> object:
        said.add(one)
        return parsed(one)

    monkeypatch.setattr(message, "_parsed", noted)
    for sentences in _told("pt-BR"):
        assert all(sentence.nodes for sentence in sentences)
    written = {
        (table, one)
        for table in ("_HOME", "_REASONS", "_FILM")
        for field in getattr(portuguese, table).__struct_fields__
        for one in _messages(getattr(getattr(portuguese, table), field))
    }
    joined = " ".join(said)
    idle = {one for _, one in written if one not in joined and one not in NO_MESSAGES}
    assert "\n".join(sorted(idle)) == ""


#: Words that are given to a film as they are.
NO_MESSAGES = frozenset({"Esta noite", "Fim", "Agora é com vocês", "uma unidade maior"})


def _messages(value: object) -> Iterator[str]:
    match value:
        case str():
            yield value
        case tuple():
            yield from value
        case _:
            return


def test_a_language_is_one_file_and_shorter_than_the_ceiling() -> None:
    """What is no language stands in by_messages."""
    file = Path(portuguese.__file__)
    assert len(file.read_text().splitlines()) < 320
    assert not list(file.parent.glob("portuguese/*.py"))


def test_a_hole_takes_nodes_and_a_choice_takes_yes_or_no() -> None:
    """Numbers stay numbers; a hole that is not filled is a fault, and so is a number among the words."""
    number = PORTUGUESE.usual
    said = nodes_of(
        "{many:sobra/sobram} {left}|, e|há {more}", {"many": False, "left": "a", "more": ("b", "c")}
    )
    assert said == ("sobra", "a", Seam(", e"), "há", "b", "c")
    with pytest.raises(KeyError, match="less"):
        nodes_of("{less}", {"left": "a"})
    tells = Teller("pt-BR", "e", lambda of: isinstance(of, Thing) and of.feminine, {"regroup": ("a", "b")})
    with pytest.raises(ValueError, match="holds a number"):
        tells.told("sobram 3 {left}", left=number.whole)
    assert tells.asked("por quê")[0].end is End.ASKS
    assert not any(isinstance(node, Said) for node in tells.told("um {left}", left="a")[0].nodes)
    assert tells.listed([("a",), ("b",), ("c",)]) == ("a", ",", "b", "e", "c")
