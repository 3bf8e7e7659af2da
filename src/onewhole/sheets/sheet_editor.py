"""Editing a typed sheet: problems reordered, added, taken out and changed, every other row unchanged."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from onewhole.errors import InputError
from onewhole.findings.click import SettingLine
from onewhole.problems.problem import LABEL
from onewhole.sheets.document import SheetError
from onewhole.sheets.settings import setting_named
from onewhole.sheets.typed_lines import header_lines_of, label_in, lines_of, problem_lines, setting_in

HIGHEST_LABEL = 999


@dataclass(frozen=True)
class SheetEditor:
    r"""The lines of a sheet, readable as a whole or not.

    A row under the header that is not for the pupil is a problem's; one without a label is counted. Where
    the labels are 1, 2, 3 and so on down the page they stay so whatever is done; other labels stay with
    their problems.

    >>> SheetEditor(("1. 5 - 2", "# Look first.", "2. 6 - 4")).moved("2", 1).typed
    '1. 6 - 4\n# Look first.\n2. 5 - 2'
    """

    lines: tuple[str, ...]

    @classmethod
    def of(cls, typed: str) -> "SheetEditor":
        """Return the editor of a typed sheet."""
        return cls(tuple(lines_of(typed)))

    @property
    def typed(self) -> str:
        """Return the rows as one text."""
        return "\n".join(self.lines)

    @cached_property
    def settings(self) -> Mapping[str, int]:
        """Return the place of each setting of the header by its name, in their order."""
        found: dict[str, int] = {}
        for at in header_lines_of(self.lines):
            said = setting_in(self.lines[at])
            assert said is not None
            found.setdefault(_setting_name(said["name"]), at)
        return found

    @cached_property
    def problems(self) -> Mapping[str, int]:
        """Return the place of each problem's row by its label, down the page."""
        found: dict[str, int] = {}
        for at, line in problem_lines(self.lines).items():
            found.setdefault(line.label, at)
        return found

    @property
    def counted(self) -> bool:
        """Say whether the labels are 1, 2, 3 and so on."""
        return list(self.problems) == [str(at) for at in range(1, len(self.problems) + 1)]

    def place(self, label: str) -> int:
        """Return which problem down the page has a label, from 1. Raises SheetError."""
        for at, known in enumerate(self.problems, 1):
            if known.casefold() == label.casefold():
                return at
        msg = f"there is no problem {label[:40]} on this sheet"
        raise SheetError(msg, remedy="Choose one that stands there.")

    def moved(self, label: str, to: int) -> "SheetEditor":
        """Return the rows with a problem in the place ``to`` down the page (from 1; beyond an end: at it)."""
        order = list(self.problems)
        known = order.pop(self.place(label) - 1)
        order.insert(max(1, min(to, len(order) + 1)) - 1, known)
        return self.in_order(order)

    def in_order(self, labels: Sequence[str]) -> "SheetEditor":
        """Return the rows with the problems in another order, each in the row of the one it stands for."""
        said = {label: self.lines[at] for label, at in self.problems.items()}
        lines = list(self.lines)
        for at, label in zip(self.problems.values(), labels, strict=True):
            lines[at] = said[label]
        return self._now(lines)

    def without(self, labels: Sequence[str]) -> "SheetEditor":
        """Return the rows without some problems. Raises SheetError when none is left."""
        gone = {list(self.problems.values())[self.place(label) - 1] for label in labels}
        if len(gone) == len(self.problems):
            msg = "no problem would be left on the sheet"
            raise SheetError(msg, remedy="Add another one first.")
        return self._now([line for at, line in enumerate(self.lines) if at not in gone])

    def added(self, asked: str, after: int) -> "SheetEditor":
        """Return the rows with one problem more, standing after so many others where labels are counted.

        Under other labels it stands last, with the next number.
        """
        places = list(self.problems.values())
        after = max(0, min(after, len(places))) if self.counted else len(places)
        lines = list(self.lines)
        at = len(lines) if not places else places[after - 1] + 1 if after else places[0]
        while not places and at and not lines[at - 1].strip():
            at -= 1
        beside = lines[places[-1]] if places else "1. 1"
        lines.insert(at, _row(beside, self._next_label(), asked))
        return self._now(lines)

    def asking(self, asked: Mapping[str, str]) -> "SheetEditor":
        """Return the rows with other problems under some labels; the words of a word problem are gone."""
        lines = list(self.lines)
        for label, instead in asked.items():
            at = list(self.problems.values())[self.place(label) - 1]
            lines[at] = _row(lines[at], label, instead)
        return SheetEditor(tuple(lines))

    def with_setting(self, line: SettingLine) -> "SheetEditor":
        """Return the rows with a line of the header (``picture: strip``), in place of an earlier one."""
        name, lines = _setting_name(line.name), list(self.lines)
        if name in self.settings:
            lines[self.settings[name]] = line.typed
        elif self.settings:
            lines.insert(max(self.settings.values()) + 1, line.typed)
        else:
            lines[:0] = [line.typed, ""]
        return SheetEditor(tuple(lines))

    def _next_label(self) -> str:
        numbers = [int(label) for label in self.problems if label.isdigit()]
        taken = {label.casefold() for label in self.problems}
        after = range(max(numbers, default=0) + 1, HIGHEST_LABEL + 1)
        free = next((str(one) for one in after if str(one) not in taken), None)
        if free is None:
            msg = "there is no label left for one more problem"
            raise SheetError(msg, remedy="Use smaller numbers as labels.")
        return free

    def _now(self, lines: Sequence[str]) -> "SheetEditor":
        """Return other lines, their labels counted again where they were counted before."""
        changed = SheetEditor(tuple(lines))
        return changed.counting() if self.counted else changed

    def counting(self) -> "SheetEditor":
        """Return the rows with the labels 1, 2, 3 and so on; a row without a label needs none."""
        found = list(self.lines)
        for count, at in enumerate(problem_lines(self.lines), 1):
            line = found[at]
            if label := label_in(line):
                found[at] = line[: label.start("label")] + str(count) + line[label.end("label") :]
        return SheetEditor(tuple(found))

    def line_of(self, line: int, seen: str) -> int:
        """Return where a line stands (from 1) that was seen in a place: there, or where it went meanwhile.

        Raises SheetError where it was changed, or where it went to is not known.
        """
        if self.lines[line - 1 : line] == (seen,):
            return line
        if self.lines.count(seen) == 1:
            return self.lines.index(seen) + 1
        msg = "this line was changed meanwhile"
        raise SheetError(msg, remedy="Look at its note again.")

    def told_as(self, line: int, asked: str) -> "SheetEditor":
        """Return the rows with what a story asks before its words, on a line (from 1). Raises SheetError.

        >>> SheetEditor.of("1) Ana has 5 strips and cuts 2.").told_as(1, "5 - 2").typed
        '1) 5 - 2 | Ana has 5 strips and cuts 2.'
        """
        at = self._at(line)
        said = self.lines[at]
        found = problem_lines(self.lines).get(at)
        start = found.start if found else len(said) - len(said.lstrip())
        words = " ".join(said[start:].replace("|", " ").split())
        if not words or words.startswith("#"):
            msg = "there is no story on this line"
            raise SheetError(msg, line=line, remedy="Choose a line with a story.")
        return self.with_line(line, f"{said[:start]}{asked} | {words}")

    def with_line(self, line: int, *instead: str) -> "SheetEditor":
        """Return the rows with others in place of a line (from 1), or without it. Raises SheetError."""
        at = self._at(line)
        return self._now([*self.lines[:at], *instead, *self.lines[at + 1 :]])

    def _at(self, line: int) -> int:
        """Return the place of a line that is counted from 1."""
        if line > len(self.lines):
            msg = f"there is no line {line} on this sheet"
            raise SheetError(msg, remedy="Choose one that stands there.")
        return line - 1


def _row(beside: str, label: str, asked: str) -> str:
    """Write a problem's row with its label set as in another row; where that has none, without one."""
    found = label_in(beside)
    if found is None:
        return asked
    assert LABEL.fullmatch(label)
    end = beside[found.end("label") : found.end()].rstrip() + " "
    return beside[: found.start("label")] + label + end + asked


def _setting_name(said: str) -> str:
    """Return a setting's own name, and for none of them what is said."""
    try:
        return setting_named(said).name
    except InputError:
        return said
