"""The lines of a typed sheet: which is a setting, which a problem, and each problem's label."""

import re
from collections.abc import Iterator, Mapping, Sequence

from msgspec import Struct

from onewhole.problems.problem import LABEL
from onewhole.statements.clock_sides import CLOCK_WORDS
from onewhole.statements.form_words import FORM_WORDS
from onewhole.statements.numerals import KNOWN_WORDS

_LINE_END = re.compile(r"\r\n|\r|\n")
_SETTING = re.compile(r"\s*(?P<name>[^\W\d_][\w \t-]*[^\W\d_])\s*:(?P<value>.*)")
# A dot that ends a label has a blank after it: 1.5 + 2 has no label; nor has 9:45 to 11:20.
_LABELLED = re.compile(
    rf"\s*\(?(?P<label>{LABEL.pattern})\s*(?:[.:]?\)[.:]?|:(?![0-5][0-9](?![0-9.]))|\.)(?:(?<!\.)|(?=\s|$))\s*"
)
# #1 is a label as word processors and books write it; words to the pupil have a blank after their sign.
_SHARP = re.compile(r"\s*#(?P<label>[0-9]{1,3})(?:[.:)](?=\s)|(?=\s))\s*(?=\S)")
_VULGAR = "[\u00bc-\u00be\u2150-\u215e]"
_NUMBER = re.compile(rf"[0-9][0-9.,]*(?:[ -]?(?:[0-9]+[/\u2044][0-9]+|{_VULGAR})|[/\u2044][0-9]+)?|{_VULGAR}")
_WORD = re.compile(r"[A-Za-z\u2019']{2,}")
#: A problem may begin with a word that says what to do with a number.
_ASKS = re.compile(
    r"\s*(?:round\s+\$?[0-9.]|(?:(?:put\s+in\s+)?order|(?:line\s+)?plot)\b.*[0-9])", re.IGNORECASE
)
#: A line is words, and no problem with a slip of the keys, from so many words on that no problem has.
FEWEST_WORDS = 2
# The dot or dash of a list that was pasted.
_BULLET = re.compile(r"\s*[•●▪‣◦·*\N{EN DASH}\N{EM DASH}-]\s+(?=\S)")


class ProblemLine(Struct, frozen=True):
    """A line of the page that holds a problem: its label, typed or counted, and where the problem begins."""

    label: str
    start: int
    typed: bool


def lines_of(text: str) -> list[str]:
    r"""Return the lines of a text with the line ends of any computer.

    >>> lines_of("1. 5 - 2\r\n2. 6 - 3")
    ['1. 5 - 2', '2. 6 - 3']
    """
    return _LINE_END.split(text.removeprefix("\N{ZERO WIDTH NO-BREAK SPACE}"))


def label_in(line: str) -> re.Match[str] | None:
    """Return where a line's label stands (group ``label``) and ends; None for a line without one.

    >>> label_in("2a) 52 - 27")["label"], label_in("#3 52 - 27")["label"], label_in("# Look first.")
    ('2a', '3', None)
    """
    return _LABELLED.match(line) or _SHARP.match(line)


def setting_in(line: str) -> re.Match[str] | None:
    """Return the parts of a line of the header (groups ``name`` and ``value``); None for any other line.

    >>> setting_in("title: Kites")["name"]
    'title'
    """
    return None if label_in(line) or _ASKS.match(line) else _SETTING.fullmatch(line)


def header_lines_of(lines: Sequence[str]) -> range:
    """Return the places of the lines at the top that look like settings."""
    start = next((at for at, line in enumerate(lines) if line.strip()), len(lines))
    end = next((at for at, line in enumerate(lines[start:], start) if not setting_in(line)), len(lines))
    return range(start, end)


def problem_lines(lines: Sequence[str]) -> Mapping[int, ProblemLine]:
    r"""Return the lines under the header that hold a problem, by their places.

    A line that has no label and is not for the pupil gets one: the first number after that of the problem
    before it that no line has. It is counted and not typed, so that lines can be pasted as they are. Words
    with no two numbers ask nothing and get none.

    >>> [one.label for one in problem_lines(["7 2/6 - 3 5/6", "# Look.", "2. 9 - 4", "52 - 27"]).values()]
    ['1', '2', '3']
    """
    found = {at: line for at, line in _of_page(lines) if _holds_a_problem(line)}
    typed = {at: said for at, line in found.items() if (said := label_in(line))}
    taken = {said["label"].casefold() for said in typed.values()}
    problems: dict[int, ProblemLine] = {}
    before = 0
    for at, line in found.items():
        if said := typed.get(at):
            label, start = said["label"], said.end()
        else:
            label, start = str(_free(before, taken)), _begins(line)
            taken.add(label)
        before = int(label) if label.isdigit() else before
        problems[at] = ProblemLine(label, start, at in typed)
    return problems


def _of_page(lines: Sequence[str]) -> Iterator[tuple[int, str]]:
    header = header_lines_of(lines)
    return ((at, line) for at, line in enumerate(lines) if at not in header)


def is_words(line: str) -> bool:
    """Say whether a line is words, and no problem with a slip of the keys.

    Words that ask for a form are none where a number stands first: 11/4 as a mixed number.

    >>> [is_words(line) for line in ("Show each step.", "5 ft 2 inn - 3 ft", "11/4 as a mixed number")]
    [True, False, False]
    """
    if _ASKS.match(line):
        return False
    known = KNOWN_WORDS | CLOCK_WORDS | FORM_WORDS if _NUMBER.match(line.strip()) else KNOWN_WORDS
    words = (word.lower().strip("\N{RIGHT SINGLE QUOTATION MARK}'") for word in _WORD.findall(line))
    return sum(word not in known for word in words) >= FEWEST_WORDS


def _holds_a_problem(line: str) -> bool:
    said = line.strip()
    if not said or label_in(line):
        return bool(said)
    if said.startswith("#") or setting_in(line):
        return False
    return not is_words(said) or len(_NUMBER.findall(said)) > 1


def _free(before: int, taken: set[str]) -> int:
    after = before + 1
    while str(after) in taken:
        after += 1
    return after


def _begins(line: str) -> int:
    """Return where the problem of a line without a label begins: after its blanks and the dot of a list."""
    bullet = _BULLET.match(line)
    return bullet.end() if bullet else len(line) - len(line.lstrip())
