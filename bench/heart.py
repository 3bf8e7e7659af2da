"""A full checked working beside SymPy evaluating the same expression, in the same run.

Run: `python bench/heart.py`. The goal: to read a problem and work it line by line, with its checks, takes no
longer than `sympy.sympify` takes for the value of the same expression. For honesty SymPy's bare arithmetic on
numbers that are read already stands beside it: a value alone is far cheaper than a working.
"""

import random
import sys
from functools import partial

from measuring import Runner, kilobytes, microseconds, process_megabytes
from sympy import Rational, sympify

from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import unsuited, work_question
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategy import Act

Problem = tuple[int, int, int, int, int]

SEED = 12
PROBLEMS = 200
ROUNDS = 15
PARTS = (2, 3, 4, 5, 6, 8, 10, 12)
TAUGHT = strategy_named("regroup_first")
PROCESSES = {
    "python -c pass": "pass",
    "read and work, checked": (
        "from onewhole.statements.reading import read_statement; from onewhole.working.work import work;"
        "from onewhole.working.strategies.table import STRATEGIES;"
        "work(read_statement('7 2/6 - 3 5/6'), STRATEGIES[0])"
    ),
    "SymPy sympify": "import sympy; sympy.sympify('(7 + 2/6) - (3 + 5/6)')",
}


def problems() -> list[Problem]:
    """Differences of mixed numbers with like denominators in which one whole is opened."""
    chance = random.Random(SEED)
    found: list[Problem] = []
    while len(found) < PROBLEMS:
        parts = chance.choice(PARTS)
        first, second = chance.randint(2, 9), chance.randint(1, 8)
        have, gone = chance.randrange(parts), chance.randrange(parts)
        if second < first and have < gone:
            found.append((first, have, second, gone, parts))
    return found


def typed(problem: Problem) -> str:
    first, have, second, gone, parts = problem
    return f"{first} {have}/{parts} - {second} {gone}/{parts}"


def for_sympy(problem: Problem) -> str:
    first, have, second, gone, parts = problem
    return f"({first} + {have}/{parts}) - ({second} + {gone}/{parts})"


def question(text: str) -> Question:
    found = read_statement(text)
    assert isinstance(found, Question)
    return found


def arithmetic(problem: Problem) -> Rational:
    first, have, second, gone, parts = problem
    return (first + Rational(have, parts)) - (second + Rational(gone, parts))


def main() -> None:
    given = problems()
    texts, expressions = [typed(one) for one in given], [for_sympy(one) for one in given]
    questions = [question(text) for text in texts]
    for text, asked, problem in zip(expressions, questions, given, strict=True):
        value = work_question(asked, TAUGHT).answer.value  # the same answers, or the race means nothing
        assert Rational(value.numerator, value.denominator) == sympify(text) == arithmetic(problem)
    acts: dict[str, Runner] = {
        "read": (question, texts),
        "work": (lambda one: work_question(one, TAUGHT, checked=False), questions),
        "work, checked": (lambda one: work_question(one, TAUGHT), questions),
        "read and work, checked": (lambda text: work_question(question(text), TAUGHT), texts),
        "SymPy sympify": (sympify, expressions),
        "SymPy arithmetic alone": (arithmetic, given),
    }
    taken = microseconds(acts, ROUNDS)
    base = taken["SymPy sympify"]
    print(f"{PROBLEMS} problems such as {texts[0]}, {ROUNDS} rounds by turns in one process")
    print(f"{'':24} {'us each':>8} {'to sympify':>11} {'KB kept':>8} {'KB peak':>8}")
    for name, act in acts.items():
        kept, peak = kilobytes(*act)
        print(f"{name:24} {taken[name]:8.1f} {taken[name] / base:11.2f} {kept:8.1f} {peak:8.1f}")
    ratio = taken["read and work, checked"] / base
    print(f"goal: read and work, checked, at most 1.00 of sympify; it is {ratio:.2f}")
    print("\nevery strategy, checked (us each):")
    for name, each in microseconds(by_strategy(questions, texts), ROUNDS).items():
        print(f"{name:24} {each:8.1f}")
    print("\nmemory of a process that does one problem (MB):")
    for name, code in PROCESSES.items():
        print(f"{name:24} {process_megabytes([sys.executable, '-c', code]):8.1f}")


def by_strategy(differences: list[Question], texts: list[str]) -> dict[str, Runner]:
    """Return each strategy with the problems that suit it, sums for those that only add."""
    sums = [question(text.replace("-", "+")) for text in texts]
    acts: dict[str, Runner] = {}
    for strategy in STRATEGIES:
        asked = [
            one for one in (sums if strategy.act is Act.ADD else differences) if not unsuited(one, strategy)
        ]
        acts[strategy.key] = (partial(work_question, strategy=strategy), asked)
    return acts


if __name__ == "__main__":
    main()
