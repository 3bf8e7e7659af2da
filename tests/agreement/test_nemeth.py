"""Our MathML as a braille display gets it: read back from Nemeth braille, it is the problem."""

from onewhole.notations.mathml import INVISIBLE_PLUS, mathml
from onewhole.statements.reading import read_statement
from tests.kit.candidates import typed_space
from tests.kit.how_much import sample
from tests.kit.nemeth import brailled, typed_from_nemeth

#: One of so many problems of the space; `make walk` takes all.
STEP = sample(331, 29, 1)
OTHERS = (
    "52 - 27",
    "1000000 - 345678",
    "12.05 - 3.8",
    "3/4 + 5/6",
    "5/6 ? 7/8",
    "5/6 < 7/8",
    "3 1/2 > 3/2",
    "7 2/6 = 6 ?/6",
    "3/4 = ?/12",
    "? + 2 1/3 = 5",
    "3 x 2/5",
    "8 - (3 1/2 - 1 1/2)",
    "2 1/2 + 3 1/2 + 4 1/2 - 1 1/2",
    "9 11/12 - 3 5/12 - 2 7/12",
)


def test_braille_reads_back_to_the_problem() -> None:
    """Every problem, exactly: mixed numbers, fractions, decimals, what is missing, and brackets."""
    typed = [*OTHERS, *typed_space()[::STEP]]
    braille = brailled([mathml(read_statement(one)) for one in typed])
    wrong = [
        (one, dots)
        for one, dots in zip(typed, braille, strict=True)
        if read_statement(typed_from_nemeth(dots)) != read_statement(one)
    ]
    assert wrong == []
    print(f"{len(typed)} problems read back from Nemeth braille")


def test_a_label_or_no_invisible_plus_takes_it_away() -> None:
    """Why there is no label: its words come in place of the mathematics. Why the plus stays: it joins."""
    ours = mathml(read_statement("7 2/6 - 3"))
    labelled = ours.replace("<math ", '<math aria-label="seven and two sixths minus three" ', 1)
    apart = ours.replace(INVISIBLE_PLUS, "\N{INVISIBLE TIMES}")
    right, *others = brailled([ours, labelled, apart])
    assert right == "⠼⠶⠸⠹⠆⠌⠖⠸⠼⠤⠒"
    assert right not in others
