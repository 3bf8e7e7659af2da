"""The examples of a second collection of error patterns, and its problems that tell patterns apart.

Source: a second collection of error patterns (families H and on), every example and every problem that tells
apart computed there by its own code; each pattern's own `source` says what stands behind it. Two of its
problems ask in words what is asked here by the equals sign alone.
"""

import pytest

from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Relation

#: Id, problem, right, written, ids that answer alike there; a problem on which they answer differently, what
#: is right and what is written there.
ROWS = (
    ("H01", "478 + 256", "734", "624", "", "9878 + 609", "10487", "9477"),
    ("H02", "478 + 256", "734", "61214", "", "9550 + 792", "10342", "912142"),
    ("H03", "423 + 315", "738", "848", "", "930 + 94", "1024", "1034"),
    ("H04", "478 + 256", "734", "1724", "", "980 + 91", "1071", "1971"),
    ("H05", "478 + 256", "734", "1211", "", "9680 + 749", "10429", "14119"),
    ("H06", "345 + 27", "372", "615", "", "9988 + 802", "10790", "18008"),
    ("H07", "478 + 256", "734", "844", "", "9236 + 904", "10140", "11150"),
    ("H08", "308 + 451", "759", "709", "", "9928 + 207", "10135", "10105"),
    ("H09", "876 + 145", "1021", "921", "", "698 + 5", "703", "603"),
    ("H10", "478 + 756", "1234", "234", "", "9203 + 851", "10054", "54"),
    ("H11", "47 + 25", "72", "18", "", "9409 + 701", "10110", "30"),
    ("H12", "437 + 284", "721", "6112", "", "9907 + 841", "10748", "9758"),
    ("H13", "46 + 3", "49", "79", "", "98 + 7", "105", "175"),
    ("H14", "478 + 56", "534", "434", "H09", "4999 + 888", "5887", "4887"),
)


def answers(problem: str) -> dict[str, str]:
    """Return what each pattern writes on a problem, as text."""
    return {
        slip.pattern: slip.wrote.value if isinstance(slip.wrote, Relation) else text(slip.wrote)
        for slip in shows(read_statement(problem))
    }


@pytest.mark.parametrize("row", ROWS, ids=[row[0] for row in ROWS])
def test_a_pattern_writes_its_example(row: tuple[str, ...]) -> None:
    """The answer comes out, and exactly the patterns that the collection names answer alike."""
    key, problem, right, wrote, alike, *_ = row
    found = answers(problem)
    assert found[key] == wrote
    assert sorted(other for other in found if found[other] == wrote and other != key) == sorted(alike.split())
    example = by_id(key).example
    assert (example.problem, example.right, example.wrong) == (problem, right, wrote)


@pytest.mark.parametrize("row", ROWS, ids=[row[0] for row in ROWS])
def test_a_problem_tells_them_apart(row: tuple[str, ...]) -> None:
    """On the other problem the pattern writes what is told, and none that answered alike writes it too."""
    key, _, _, _, alike, problem, right, wrote = row
    found = answers(problem)
    assert found.get(key, right) == wrote
    assert all(found.get(other, right) != wrote for other in alike.split())


def test_every_pattern_of_these_families_is_here() -> None:
    """Those of the collection that stand in the catalogue, in its order."""
    assert [row[0] for row in ROWS] == [pattern.id for pattern in patterns() if pattern.id[0] == "H"]
