"""The examples of a second collection of error patterns, and its problems that tell patterns apart.

Source: a second collection of error patterns (families H and on), every example and every problem that tells
apart computed there by its own code; each pattern's own `source` says what stands behind it. Minutes and
seconds of two problems are hours and minutes here. What it asks "mixed", "simplest", "decimal" or "fraction"
for is asked here by the equals sign alone, and the answer to a missing numerator is that number. A mixed
number is asked for 3/2 here, so that O18 is told apart on another problem.
"""

import pytest

from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Relation

#: The families of the collection of which patterns stand in the catalogue.
FAMILIES = "HIJKLMNOQ"

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
    ("I02", "3.7 + 2.5", "6.2", "5.2", "I03", "0.68 + 0.4", "1.08", "0.08"),
    ("I03", "3.76 + 2.58", "6.34", "5.24", "", "2.98 + 3.47", "6.45", "5.35"),
    ("I04", "0.3 + 0.4", "0.7", "0.07", "", "9.80 + 5.4", "15.20", "1.520"),
    ("I05", "0.45 + 0.3", "0.75", "0.48", "F10 F11", "7.93 + 2.9", "10.83", "10.02"),
    ("I06", "3 + 4.25", "7.25", "4.55", "", "9 + 1.53", "10.53", "2.43"),
    ("I07", "3.7 + 2.5", "6.2", "62", "", "2.6 + 4.54", "7.14", "714"),
    (
        "J01",
        "1 h 50 min + 2 h 55 min",
        "4 h 45 min",
        "4 h 5 min",
        "",
        "5 h 51 min + 2 h 58 min",
        "8 h 49 min",
        "8 h 9 min",
    ),
    (
        "J02",
        "5 ft 8 in + 2 ft 7 in",
        "8 ft 3 in",
        "8 ft 5 in",
        "",
        "4 ft 9 in + 6 ft 6 in",
        "11 ft 3 in",
        "11 ft 5 in",
    ),
    (
        "J03",
        "1 h 50 min + 20 min",
        "2 h 10 min",
        "1 h 70 min",
        "J01",
        "1 h 47 min + 3 h 58 min",
        "5 h 45 min",
        "4 h 105 min",
    ),
    (
        "J04",
        "1 h 50 min + 20 min",
        "2 h 10 min",
        "1 h 10 min",
        "",
        "1 ft 3 in + 4 ft 9 in",
        "6 ft 0 in",
        "5 ft 0 in",
    ),
    (
        "J05",
        "1 h 50 min + 20 min",
        "2 h 10 min",
        "2 h 70 min",
        "",
        "3 ft 4 in + 4 ft 8 in",
        "8 ft 0 in",
        "8 ft 12 in",
    ),
    ("J06", "36 in = ? ft", "3 ft", "432 ft", "", "9 ft = ? yd", "3 yd", "27 yd"),
    ("J07", "36 ft = ? in", "432 in", "3 in", "", "6 yd = ? ft", "18 ft", "2 ft"),
    ("J08", "3 ft = ? in", "36 in", "30 in", "", "6 yd = ? ft", "18 ft", "60 ft"),
    ("J09", "3 h = ? min", "180 min", "300 min", "", "6 yd = ? ft", "18 ft", "600 ft"),
    ("J11", "5 ft 3 in = ? in", "63 in", "60 in", "", "2 km 4 m = ? m", "2004 m", "2000 m"),
    ("J12", "5 ft 3 in = ? in", "63 in", "8 in", "", "6 km 4 m = ? m", "6004 m", "10 m"),
    ("J13", "5 ft 3 in = ? in", "63 in", "53 in", "", "4 km 8 m = ? m", "4008 m", "48 m"),
    ("K01", "47 x 6", "282", "242", "", "5078 x 3", "15234", "15014"),
    ("K02", "47 x 6", "282", "482", "", "3050 x 5", "15250", "20050"),
    ("K03", "47 x 6", "282", "2442", "", "2050 x 9", "18450", "180450"),
    ("K04", "47 x 6", "282", "264", "", "2090 x 8", "16720", "16270"),
    ("K05", "47 x 6", "282", "82", "", "8060 x 3", "24180", "8060"),
    ("K06", "63 x 8", "504", "124", "", "58 x 4", "232", "152"),
    ("K07", "24 x 36", "864", "216", "", "44 x 25", "1100", "308"),
    ("K08", "24 x 36", "864", "84", "", "15 x 20", "300", "20"),
    ("K09", "24 x 36", "864", "624", "", "59 x 40", "2360", "2000"),
    ("K10", "407 x 8", "3256", "3336", "", "8020 x 7", "56140", "56847"),
    ("K11", "407 x 8", "3256", "376", "", "1070 x 5", "5350", "85"),
    ("K12", "24 x 30", "720", "72", "K07", "7050 x 8", "56400", "5640"),
    ("K13", "407 x 8", "3256", "3206", "K01", "9054 x 3", "27162", "27062"),
    ("K15", "24 x 36", "864", "60", "", "7020 x 6", "42120", "7026"),
    ("L01", "824 / 4", "206", "26", "", "914 / 7", "130 r 4", "13 r 4"),
    ("L02", "87 / 4", "21 r 3", "21", "L05 L06", "801 / 5", "160 r 1", "160"),
    ("L03", "87 / 4", "21 r 3", "21.3", "", "202 / 5", "40 r 2", "40.2"),
    ("L04", "84 / 3", "28", "82", "", "602 / 5", "120 r 2", "21 r 2"),
    ("L05", "246 / 4", "61 r 2", "211", "", "101 / 5", "20 r 1", "505"),
    ("L06", "74 / 2", "37", "32", "L05", "601 / 4", "150 r 1", "100"),
    ("L07", "87 / 4", "21 r 3", "20 r 7", "", "301 / 5", "60 r 1", "59 r 6"),
    ("L08", "1211 / 7", "173", "1613", "", "601 / 5", "120 r 1", "1110 r 1"),
    ("L11", "95 / 4", "23 r 3", "2 r 1", "", "202 / 4", "50 r 2", "5"),
    ("L12", "705 / 5", "141", "15", "", "309 / 9", "34 r 3", "4 r 3"),
    ("M01", "2/5 x 3/5", "6/25", "6/5", "", "6/8 x 2/8", "12/64", "12/8"),
    ("M02", "2/3 x 3/4", "6/12", "72/12", "", "2/5 x 1/4", "2/20", "40/20"),
    ("M03", "2 1/2 x 3 1/4", "8 1/8", "6 1/8", "", "3 1/2 x 3 3/4", "13 1/8", "9 3/8"),
    ("M04", "2/3 x 4/7", "8/21", "12/14", "", "3/6 x 4/5", "12/30", "24/15"),
    ("M06", "2 1/2 x 3 1/4", "8 1/8", "6/8", "", "5 2/3 x 2 3/4", "15 7/12", "5"),
    ("M08", "1/2 x 3 1/4", "1 5/8", "3 1/8", "", "1/6 x 3 4/5", "19/30", "3 4/30"),
    ("M09", "3/4 / 2/5", "1 7/8", "8/15", "", "4/6 / 2/6", "2", "12/24"),
    ("M10", "3/4 / 2/5", "1 7/8", "20/6", "", "3/8 / 1/8", "3", "64/3"),
    ("M11", "2/7 / 3/5", "10/21", "6/35", "", "3/8 / 1/8", "3", "3/64"),
    ("M12", "2/9 / 4/3", "1/6", "2/3", "", "2/3 / 1/3", "2", "2"),
    ("M13", "6/8 / 2/8", "3", "3/8", "", "3/5 / 3/5", "1", "1/5"),
    ("M14", "3 / 1/4", "12", "3/4", "", "9 / 1/2", "18", "9/2"),
    ("M15", "1/3 / 4", "1/12", "4/3", "", "1/8 / 3", "1/24", "3/8"),
    ("M17", "3 / 4", "3/4", "4/3", "", "3 / 9", "1/3", "9/3"),
    ("M18", "6 3/4 / 3", "2 1/4", "2 3/4", "", "3 1/5 / 3", "1 1/15", "1 1/5"),
    ("N01", "3 1/4 ? 3 3/4", "<", "=", "", "1 2/5 ? 1 1/2", "<", "="),
    ("N02", "2 3/4 ? 5 1/4", "<", ">", "N15", "3 2/4 ? 1 1/2", ">", "="),
    ("N03", "2 1/8 ? 2 1/4", "<", ">", "N15", "2 2/3 ? 2 4/6", "=", "<"),
    ("N04", "2 3/8 ? 2 2/3", "<", ">", "N03 N15", "1 2/3 ? 1 1/6", ">", ">"),
    ("N05", "7/3 ? 2", ">", "<", "N15", "4/2 ? 2", "=", "<"),
    ("N06", "5/6 ? 1/2", ">", "<", "N15 C10", "1/4 ? 2/3", "<", "="),
    ("N08", "4.63 ? 4.8", "<", ">", "N12 N15 F06", "3.06 ? 3.6", "<", "<"),
    ("N09", "0.50 ? 0.5", "=", ">", "N08 N12 F06", "2.40 ? 2.7", "<", "<"),
    ("N10", "4.08 ? 4.8", "<", "=", "N13", "1.7 ? 1.09", ">", "<"),
    ("N11", "4.452 ? 4.45", ">", "=", "", "1.559 ? 1.55", ">", "="),
    ("N12", "0.134 ? 2.5", "<", ">", "N15 F06", "2.7 ? 2.3", ">", ">"),
    ("N13", "0.4 ? 0.5", "<", ">", "N15", "1.20 ? 1.2", "=", "<"),
    ("N14", "999 ? 1001", "<", ">", "N15", "36 ? 452", "<", "<"),
    ("N15", "3/8 ? 5/8", "<", ">", "N06 C12", "2 7/8 ? 2 3/6", ">", "<"),
    ("O05", "4 2/5 = ?/5", "22", "13", "", "6 3/4 = ?/4", "27", "22"),
    ("O08", "17/5 = ?", "3 2/5", "3 2/3", "", "22/3 = ?", "7 1/3", "7 1/7"),
    ("O09", "17/5 = ?", "3 2/5", "1 7/5", "", "23/4 = ?", "5 3/4", "2 3/4"),
    ("O10", "17/5 = ?", "3 2/5", "1 12/5", "", "23/4 = ?", "5 3/4", "1 19/4"),
    ("O11", "17/5 = ?", "3 2/5", "3", "", "31/4 = ?", "7 3/4", "7"),
    ("O15", "12/16 = ?", "3/4", "6/8", "", "8/12 = ?", "2/3", "4/6"),
    ("O16", "12/16 = ?", "3/4", "12/4", "", "6/18 = ?", "1/3", "6/3"),
    ("O18", "1/4 = ?", "0.25", "0.14", "", "2/5 = ?", "0.4", "0.25"),
    ("O19", "1/4 = ?", "0.25", "0.4", "", "2/5 = ?", "0.4", "0.5"),
    ("O21", "0.4 = ?", "4/10", "1/4", "", "0.49 = ?", "49/100", "1/49"),
    ("O23", "0.35 = ?", "35/100", "35/10", "", "0.76 = ?", "76/100", "76/10"),
    ("Q01", "2 3/8 + ? = 5 1/8", "2 6/8", "7 4/8", "", "1 + ? = 8", "7", "9"),
    ("Q02", "? - 2/8 = 3/8", "5/8", "1/8", "", "? - 5 = 8", "13", "3"),
    ("Q03", "9 - ? = 3 1/2", "5 1/2", "12 1/2", "", "4 - ? = 1", "3", "5"),
    ("Q07", "8 + 4 = ? + 5", "7", "12", "", "6 + 8 = ? + 5", "9", "14"),
    ("Q08", "8 + 4 = ? + 5", "7", "17", "", "4 + 6 = ? + 3", "7", "13"),
    ("Q09", "8 + 4 = ? + 5", "7", "8", "", "7 + 8 = ? + 6", "9", "7"),
)

#: On 0.68 + 0.4 the collection leaves the zeros before the points out of the columns, so that I03 writes the
#: tenths in full there. A zero that is written is a column here (decision 0038), and both write 0.08.
#: On 2.7 ? 2.3 neither N12 nor F06 shows: as many places are the same number of digits to both.
ALIKE_THERE_TOO = {("I02", "I03"), ("N12", "F06")}

#: Rules of the collection that are patterns of the first one here: its id, ours, and its problems with what
#: is written there (decision 0038).
OF_THE_FIRST = (
    ("O01", "A24", "3 2/5 = ?/5", "5", "5 2/4 = ?/4", "7"),
    ("O02", "A25", "3 2/5 = ?/5", "6", "7 3/4 = ?/4", "21"),
    ("O03", "A26", "3 2/5 = ?/5", "15", "6 7/8 = ?/8", "48"),
    ("O04", "A27", "4 2/5 = ?/5", "42", "3 2/5 = ?/5", "32"),
    ("O07", "A28", "17/5 = ?", "2 3/5", "23/5 = ?", "3 4/5"),
    ("O12", "C01", "2/3 = ?/12", "11", "2/3 = ?/6", "5"),
    ("O13", "C03", "2/3 = ?/12", "2", "1/3 = ?/6", "1"),
)


def answers(problem: str) -> dict[str, str]:
    """Return what each pattern writes on a problem, as text."""
    return {
        slip.pattern: slip.wrote.value if isinstance(slip.wrote, Relation) else text(slip.wrote)
        for slip in shows(read_statement(problem))
    }


def usual(wrote: str) -> str:
    """Write 5 ft 0 in as 5 ft, as answers are written here."""
    return wrote.removesuffix(" 0 in")


@pytest.mark.parametrize("row", ROWS, ids=[row[0] for row in ROWS])
def test_a_pattern_writes_its_example(row: tuple[str, ...]) -> None:
    """The answer comes out, and exactly the patterns that the collection names answer alike.

    J01 is left out beside J03: below a hundred it keeps the amount, as J03 does, and is not shown.
    """
    key, problem, right, wrote, alike, *_ = row
    found = answers(problem)
    assert found[key] == wrote
    same = {other for other in found if found[other] == wrote and other != key}
    assert same == set(alike.split()) - ({"J01"} if key == "J03" else set())
    example = by_id(key).example
    assert (example.problem, example.right, example.wrong) == (problem, right, wrote)


@pytest.mark.parametrize("row", ROWS, ids=[row[0] for row in ROWS])
def test_a_problem_tells_them_apart(row: tuple[str, ...]) -> None:
    """On the other problem the pattern writes what is told, and none that answered alike writes it too."""
    key, _, _, _, alike, problem, right, wrote = row
    found = answers(problem)
    assert found.get(key, usual(right)) == usual(wrote)
    others = [other for other in alike.split() if (key, other) not in ALIKE_THERE_TOO]
    assert all(found.get(other, usual(right)) != usual(wrote) for other in others)


def test_every_pattern_of_these_families_is_here() -> None:
    """Those of the collection that stand in the catalogue, in its order.

    N16 is our own, and J14 shows on other problems here: 1 h 30 min in hours alone is not asked for.
    """
    others = {"N16", "J14"}
    ours = [one.id for one in patterns() if one.id[0] in FAMILIES and one.id not in others]
    assert [row[0] for row in ROWS] == ours


@pytest.mark.parametrize("row", OF_THE_FIRST, ids=[row[0] for row in OF_THE_FIRST])
def test_a_rule_of_the_first_collection_shows_there_too(row: tuple[str, ...]) -> None:
    """Its pattern writes what the second collection tells of the rule, and no other pattern stands for it."""
    theirs, ours, problem, wrote, other, wrote_there = row
    assert (answers(problem)[ours], answers(other)[ours]) == (wrote, wrote_there)
    assert theirs not in {pattern.id for pattern in patterns()}
