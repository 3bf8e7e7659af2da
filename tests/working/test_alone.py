import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.reasons import reason_told
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.working.alone import KEY
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.work import work


@pytest.mark.parametrize(
    ("problem", "lines", "reasons"),
    [
        (
            "6/8",
            ["3/4"],
            ["2 is a factor of 6 and of 8. Every 2 eighths make 1 fourth. That is the simplest form."],
        ),
        (
            "1 1/2 = ?",
            ["2/2 + 1/2", "3/2"],
            ["One whole is 2 halves.", "2 halves and 1 half make 3 halves."],
        ),
        (
            "3 2/5",
            ["15/5 + 2/5", "17/5"],
            ["3 wholes are 15 fifths.", "15 fifths and 2 fifths make 17 fifths."],
        ),
        (
            "0.75 = ?",
            ["75/100"],
            ["The last digit stands for hundredths, so the denominator is 100."],
        ),
        (
            "12/18 simplest",
            ["2/3"],
            ["6 is a factor of 12 and of 18. Every 6 eighteenths make 1 third. That is the simplest form."],
        ),
        ("3/4 simplest", ["3/4"], ["Only 1 goes into 3 and into 4: it is in simplest form already."]),
        ("0/8 simplest", ["0"], ["0 eighths are nothing, so they are not written."]),
        ("0/8", ["0"], ["0 eighths are nothing, so they are not written."]),
        ("2 0/4 as a decimal", ["2"], ["0 fourths are nothing, so they are not written."]),
        ("3.0 as a mixed number", ["3"], ["0 tenths are nothing, so they are not written."]),
        ("5/1 simplest", ["5"], ["The denominator is 1, so each piece is one whole."]),
        ("1 as a fraction", ["1/1"], ["1 whole not cut is 1 piece. So the denominator is 1."]),
        (
            "6/8 as a decimal",
            ["3/4", "(3 x 25)/(4 x 25)", "75/100", "0.75"],
            [
                "2 is a factor of 6 and of 8. Every 2 eighths make 1 fourth. That is the simplest form.",
                "Cut each piece again to get hundredths.",
                "It is the same amount, counted in hundredths.",
                "Hundredths take 2 places after the point.",
            ],
        ),
        ("24 in = ? ft ? in", ["2 ft 0 in"], ["24 inches make 2 feet."]),
        (
            "2 yd 1 ft = ? ft",
            ["6 ft + 1 ft", "7 ft"],
            ["2 yards are 6 feet.", "6 feet and 1 foot make 7 feet."],
        ),
        (
            "26 in",
            ["24 in + 2 in", "2 ft 2 in"],
            ["12 inches make one foot, and there are 2 full groups.", "24 inches make 2 feet."],
        ),
        ("2 ft", ["24 in"], ["2 feet are 24 inches."]),
        ("8/4", ["2"], ["8 fourths make 2 wholes."]),
        ("3/4", [], []),
    ],
)
def test_lines_and_reasons(problem: str, lines: list[str], reasons: list[str]) -> None:
    """From the number to its other name by any strategy, each line with its reason."""
    for strategy in STRATEGIES:
        working = work(read_statement(problem), strategy)
        assert working.strategy == KEY
        assert [text(line.says) for line in working.lines[1:]] == lines
        told = [
            text_of(reason_told(line.because, ClassWords())) for line in working.lines[1:] if line.because
        ]
        assert told == reasons
