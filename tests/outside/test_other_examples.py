"""The examples of equal fractions, comparing, products, decimals and measures, and answers that were seen.

Source of the examples: the collection of 124 error patterns, every example recomputed there; each
pattern's own `source` says what stands behind it. Measures stand there as big:small with a ratio; here
they are typed in units.
"""

import pytest

from onewhole.misconceptions.attempt import Outcome, answer_claim
from onewhole.misconceptions.catalogue import by_id, patterns
from onewhole.misconceptions.source import CODED
from onewhole.notations.text import text
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation, meaning

#: Id, problem, right, written.
EXAMPLES = (
    ("C08", "1/8 ? 1/4", "<", ">"),
    ("C09", "3/8 ? 2/3", "<", ">"),
    ("C10", "2/5 ? 3/7", "<", ">"),
    ("C11", "4/5 ? 11/12", "<", "="),
    ("C12", "9/13 ? 4/13", ">", "<"),
    ("C13", "5/6 ? 8/19", ">", "<"),
    ("D01", "6 x 4/7", "24/7", "24/42"),
    ("D02", "3 x 2/5", "6/5", "2/15"),
    ("D03", "3 x 2/7", "6/7", "5/7"),
    ("D04", "3 x 2 1/4", "6 3/4", "6 1/4"),
    ("D05", "3 x 2 1/4", "6 3/4", "6 3/12"),
    ("D06", "3 x 2 1/4", "6 3/4", "2 3/4"),
    ("D07", "3 x 2 2/4", "7 2/4", "6 6/4"),
    ("F01", "7.31 - 6.4", "0.91", "1.27"),
    ("F02", "4.7 - 0.24", "4.46", "0.23"),
    ("F03", "20 - 7.70", "12.30", "13.70"),
    ("F04", "3.00 - 0.45", "2.55", "3.45"),
    ("F05", "20 - 7.70", "12.30", "13.30"),
    ("F06", "0.134 ? 0.2", "<", ">"),
    ("F07", "1.35 ? 1.2", ">", "<"),
    ("F08", "3/4 = ?", "0.75", "3.4"),
    ("F09", "3/100 = ?", "0.03", "0.3"),
    ("F10", "0.8 + 0.4", "1.2", "0.12"),
    ("F11", "5 + 0.3", "5.3", "0.8"),
    ("G01", "7 h 8 min - 2 h 53 min", "4 h 15 min", "4 h 55 min"),
    ("G02", "5 ft 3 in - 2 ft 8 in", "2 ft 7 in", "2 ft 5 in"),
    ("G03", "5 ft 3 in - 2 ft 8 in", "2 ft 7 in", "3 ft 5 in"),
    ("G04", "5 ft 3 in - 2 ft 8 in", "2 ft 7 in", "3 ft 7 in"),
    ("G05", "5 ft 3 in - 2 ft 8 in", "2 ft 7 in", "2 ft 4 in"),
    ("G06", "5 ft - 2 ft 8 in", "2 ft 4 in", "3 ft 8 in"),
)

#: The collection writes these as "n/d = ? (k)" with the fraction that the rule calls equal. Here the same
#: fraction is asked for with one part given: id, problem, right, written, its example there. C06's own,
#: 6/8 = ? (k = 2) written 4/6, cannot be asked so (no whole number makes 6/8 = ?/6 true); k = 4 can.
RENAMED = (
    ("C01", "3/4 = ?/8", "6", "7", "3/4 = 7/8 (k = 4)"),
    ("C02", "2/3 = 4/?", "6", "3", "2/3 = 4/3 (k = 2)"),
    ("C03", "2/3 = ?/6", "4", "2", "2/3 = 2/6 (k = 2)"),
    ("C04", "4/8 = 1/?", "2", "8", "4/8 = 1/8 (k = 4)"),
    ("C05", "18/20 = 9/?", "10", "40", "18/20 = 9/40 (k = 2)"),
    ("C06", "6/8 = ?/4", "3", "2", "6/8 = 4/6 (k = 2)"),
    ("C07", "12/24 = 1/?", "2", "4", "12/24 = 1/4 (k = 2)"),
)

#: Problem, what was written, pattern, source. Pages as coded in a public corpus of misconceptions drawn from
#: research journals; the articles themselves were not opened.
SEEN = (
    ("6 x 4/7", "24/42", "D01", "Cai (1995), JRME Monograph, p. 58"),
    ("3 x 2/7", "5/7", "D03", "Sahin et al. (2016), IJMEST, pp. 545-546"),
    ("7.31 - 6.4", "1.27", "F01", "Thompson (1992), JRME, p. 135"),
    ("20 - 7.70", "13.30", "F05", "Broza & Ben-David Kolikant (2015), ZDM, pp. 1101-1102"),
    ("5 + 0.3", "0.8", "F11", "Wearne & Hiebert (1988), JRME, pp. 378, 380"),
    ("7 h 08 min - 2 h 53 min", "4 h 55 min", "G01", "Thanheiser (2012), JMB, pp. 231-232"),
    ("3/4 = ?/8", "7", "C01", "Behr et al. (1984), JRME, pp. 331, 336 (3/4 and 7/8 called equal)"),
    ("4/5 ? 11/12", "=", "C11", "Cramer, Post & delMas (2002), JRME, pp. 130-133"),
    ("2/5 ? 3/7", ">", "C10", "Peck & Jencks (1981), JRME, p. 343"),
    ("1/6 ? 1/8", "<", "C08", "Mack (1990), JRME, pp. 21-22"),
    ("9/13 ? 4/13", "<", "C12", "Behr et al. (1984), JRME, p. 330"),
    ("18/20 = 9/?", "40", "C05", "Harvey (2012), MERJ, p. 503 (9/40)"),
    ("0.134 ? 0.2", ">", "F06", "Lachance & Confrey (2002), JMB, pp. 517-518"),
    ("1.35 ? 1.2", "<", "F07", "Resnick et al. (1989), JRME, pp. 9-25"),
)


def said(outcome: Outcome) -> str:
    """Write what a child would write."""
    return outcome.value if isinstance(outcome, Relation) else text(_number(outcome))


def _number(outcome: Outcome) -> Quantity | Impossible:
    assert isinstance(outcome, Quantity | Impossible)
    return outcome


@pytest.mark.parametrize(("key", "problem", "right", "wrote"), [*EXAMPLES, *(row[:4] for row in RENAMED)])
def test_a_pattern_writes_its_example(key: str, problem: str, right: str, wrote: str) -> None:
    """The raw answer comes out letter for letter, and the pattern tells the same example itself."""
    statement, pattern = read_statement(problem), by_id(key)
    slip = pattern.slip(statement)
    assert slip is not None
    assert said(slip.wrote) == wrote
    assert answer_claim(read_answer(right)) == meaning(statement)
    assert (pattern.example.problem, pattern.example.right, pattern.example.wrong) == (problem, right, wrote)


def test_every_example_is_here() -> None:
    """No pattern of these topics is without an example."""
    here = [row[0] for row in (*RENAMED, *EXAMPLES)]
    assert sorted(here) == [pattern.id for pattern in patterns() if pattern.id[0] in "CDFG"]


@pytest.mark.parametrize(("problem", "wrote", "key", "source"), SEEN)
def test_a_seen_answer_is_recognised(problem: str, wrote: str, key: str, source: str) -> None:
    """What was seen is what the pattern writes, and its source says how that was reached."""
    assert source
    slip = by_id(key).slip(read_statement(problem))
    assert slip is not None
    assert slip.wrote == read_answer(wrote)
    assert by_id(key).source.note.startswith(CODED)
