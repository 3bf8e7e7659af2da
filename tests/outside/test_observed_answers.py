"""Wrong answers that pupils were seen to write, or that the collection predicts, under the right pattern."""

import pytest

from onewhole.misconceptions.attempt import answer_claim
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_answer, read_statement

#: Problem, what was written, pattern, source. Pages as coded in a public corpus of misconceptions drawn from
#: research journals; the articles themselves were not opened. IES rows are from memory.
SEEN = (
    ("1/7 + 1/7", "1/14", "P02", "Olive & Steffe (2002), JMB, p. 420"),
    ("1/2 + 2/3", "3/5", "B01", "Vinner, Hershkowitz & Bruckheimer (1981), JRME, pp. 71-72"),
    ("1/2 + 2/3", "2/5", "B05", "Vinner, Hershkowitz & Bruckheimer (1981), JRME, pp. 71-72"),
    ("1/2 + 1/4", "2/6", "B01", "Vinner, Hershkowitz & Bruckheimer (1981), JRME, pp. 71-72"),
    ("1/2 + 1/4", "1/6", "B05", "Vinner, Hershkowitz & Bruckheimer (1981), JRME, pp. 71-72"),
    ("3/8 + 2/8", "5/16", "P01", "Kuechemann (1981), ESM, p. 312"),
    ("2/3 + 3/5", "5/8", "B01", "Depaepe et al. (2018), ESM, p. 197"),
    ("3/4 - 1/6", "2/2", "B02", "Cai (1995), JRME Monograph, p. 58"),
    ("5/6 + 3/4", "8/10", "B01", "Cai (1995), JRME Monograph, p. 58"),
    ("11/12 - 4/6", "7/18", "B06", "Cramer, Post & delMas (2002), JRME, pp. 134-137"),
    ("1 - 4/5", "3/5", "A22", "Gutstein & Mack (1999), JMB, pp. 445-446"),
    ("5 3/5 - 2 1/7", "3", "A12", "Siegler et al. (2010), IES guide NCEE 2010-4039, rec. 3 (memory)"),
    ("4 - 3/8", "1/8", "A22", "Siegler et al. (2010), IES guide NCEE 2010-4039, rec. 3 (memory)"),
    ("4/5 + 4/10", "8/10", "B04", "Siegler et al. (2010), IES guide NCEE 2010-4039, rec. 3 (memory)"),
    ("2/4 + 5/4", "7/8", "P01", "Siegler et al. (2010), IES guide NCEE 2010-4039, rec. 3 (memory)"),
    ("2/5 + 1/2", "3/7", "B01", "Common Core State Standards (2010), 5.NF.A.2 (read)"),
)

#: Predicted by the collection, not observed. The items: K. K. Tatsuoka (1984), final report NIE-G-81-0002.
PREDICTED = (
    ("3 - 2 1/5", {"A20": "1 1/5", "A21": "1 4/5", "A12": "1"}),
    (
        "4 4/12 - 2 7/12",
        {"A01": "2 3/12", "A02": "2 9/12", "A03": "1 3/12", "A04": "1 7/12", "A06": "1 5/12", "A11": "2"},
    ),
    ("2 - 1/3", {"A22": "1/3", "A23": "2 2/3"}),
    (
        "7 3/5 - 2 4/5",
        {"A01": "5 1/5", "A02": "5 4/5", "A03": "4 1/5", "A04": "4 9/5", "A06": "4 1/5", "A11": "5"},
    ),
    (
        "4 1/10 - 2 8/10",
        {"A01": "2 7/10", "A02": "2 3/10", "A03": "1 7/10", "A06": "1 2/10", "A11": "2"},
    ),
)

#: How many pupils wrote each wrong answer. Source: pupils' own answers in the study of Siegler, Thompson &
#: Schneider (2011), as counted in a table of them; whole numbers stand there over 1.
COUNTED = {
    "3/5 + 1/2": {
        "4/7": 20,
        "4/10": 2,
        "4/6": 1,
        "4/8": 1,
        "2/3": 1,
        "19/10": 1,
        "11/12": 1,
        "1/2": 1,
        "6/5": 1,
        "5/5": 1,
    },
    "3/5 + 2/5": {"5/10": 12, "1/2": 3, "6/5": 2, "11/10": 1, "15/20": 1, "7/8": 1},
    "3/5 - 1/2": {"2/3": 21, "4/3": 2, "2/10": 2, "1/4": 1, "4/4": 1, "4/1": 1},
    "3/5 - 2/5": {
        "1/1": 11,
        "1/9": 2,
        "1/2": 1,
        "3/8": 1,
        "6/5": 1,
        "3/2": 1,
        "2/1": 1,
        "8/7": 1,
    },
}


@pytest.mark.parametrize(("problem", "wrote", "key", "source"), SEEN)
def test_a_seen_answer_is_recognised(problem: str, wrote: str, key: str, source: str) -> None:
    """The raw answer that was seen is the one that the pattern writes."""
    assert source
    slip = by_id(key).slip(read_statement(problem))
    assert slip is not None
    assert slip.wrote == read_answer(wrote)


@pytest.mark.parametrize(("problem", "predicted"), PREDICTED)
def test_predictions_come_out(problem: str, predicted: dict[str, str]) -> None:
    """Every answer that the collection predicts for a published item comes out raw."""
    found = {slip.pattern: slip.wrote for slip in shows(read_statement(problem))}
    assert {key: found.get(key) for key in predicted} == {
        key: read_answer(wrote) for key, wrote in predicted.items()
    }


def test_the_share_of_counted_wrong_answers_that_patterns_explain() -> None:
    """At least 81 in a hundred of the wrong answers that pupils wrote fit a pattern, raw or in amount."""
    raw = amount = pupils = 0
    for problem, answers in COUNTED.items():
        slips = shows(read_statement(problem))
        for wrote, times in answers.items():
            pupils += times
            exact = fitting(slips, wrote, raw=True)
            close = fitting(slips, wrote, raw=False)
            raw, amount = raw + times * bool(exact), amount + times * bool(exact or close)
            print(f"{problem} = {wrote} ({times}): raw {exact}, by amount {close}")
    print(f"wrong answers {pupils}; explained raw {raw}, raw or by amount {amount}, not {pupils - amount}")
    assert pupils == 97
    assert amount >= 0.81 * pupils


def fitting(slips: tuple[Slip, ...], wrote: str, *, raw: bool) -> list[str]:
    """Return the ids whose answer is written so, or worth as much."""
    answer = read_answer(wrote)
    assert isinstance(answer, Quantity)
    if raw:
        return [slip.pattern for slip in slips if answer in slip.outcomes]
    return [
        slip.pattern for slip in slips if answer.value in {answer_claim(other) for other in slip.outcomes}
    ]
