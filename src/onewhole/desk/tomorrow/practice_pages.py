"""Practice for tomorrow: a page for every group, and one for every pupil for whom it is asked."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from msgspec import Struct, field

from onewhole.desk.marking.mark import Marked
from onewhole.errors import InputError
from onewhole.findings.paper import GroupPractice, PupilPractice
from onewhole.languages.english.papers import practice_missing
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.missed import missed
from onewhole.marking.reading.mark import PupilMarks, Verdict
from onewhole.notations.sentences.text import text_of
from onewhole.sheets.class_languages import in_languages
from onewhole.sheets.document import Sheet
from onewhole.sheets.practice import Practice, practice
from onewhole.sheets.settings import setting_named
from onewhole.statements.statement import Statement
from onewhole.writers.morning_page import kite_of

INSTRUCTION = "Look at the pieces first. Then write each line."


class UnknownPupilError(InputError, LookupError):
    """No pupil of the class has that code."""

    __str__ = InputError.__str__


class Tomorrow(Struct, frozen=True):
    """What a teacher asks of the practice pages.

    ``pupils`` are the codes of those who get a page of their own. ``earlier`` are sheets of earlier nights: a
    problem comes back from them, unless a skill is ``due``: by pupil problems of skills that are, the first
    first. ``find_slip`` says whether a wrong worked example stands on each page; None
    leaves it to whether there was an earlier night, for on the first one there is none. ``fit`` is the
    setting that says on how many pages each is fitted; empty, the night's sheet says it. ``languages`` are
    those of the class, where the night's sheet names none.

    >>> Tomorrow().finds_slip
    False
    """

    pupils: tuple[str, ...] = ()
    earlier: tuple[Sheet, ...] = ()
    find_slip: bool | None = None
    due: Mapping[str, tuple[Statement, ...]] = field(default_factory=dict)
    fit: str = ""
    languages: str = ""

    @property
    def finds_slip(self) -> bool:
        """Say whether a wrong worked example is wanted."""
        return bool(self.earlier) if self.find_slip is None else self.find_slip


class PracticePage(Struct, frozen=True):
    """A practice page: of which group or pupil, its kite, and its file's name."""

    which: GroupPractice | PupilPractice
    kite: str
    file: str
    practice: Practice

    @property
    def whose(self) -> str:
        """Return the group's name or the pupil's code."""
        return self.which.group if isinstance(self.which, GroupPractice) else self.which.code


def practice_pages(marked: Marked, asked: Tomorrow) -> Iterator[PracticePage]:
    """Yield the pages of the groups, then those of the pupils asked for, in the order of the class.

    Whoever missed nothing, or only problems that no other is like, practises on problems like the last ones
    of the night; where no other is like any of them there is no page. Raises UnknownPupilError.
    """
    codes = [pupil.pupil for pupil in marked.marks.pupils]
    if unknown := [code for code in asked.pupils if code not in codes]:
        msg = f"no pupil is called “{unknown[0]}”"
        raise UnknownPupilError(msg, remedy=f"Use a code as it stands in the answers: {', '.join(codes)}.")
    yield from _of_groups(marked, asked)
    yield from _of_pupils(marked, asked)


def unpractised(groups: Sequence[str], sheet: Sheet, files: Collection[str]) -> str:
    """Return in a sentence or two which groups have no practice page among these files, and what to do.

    It is empty where all of them have one.
    """
    without = [name for name in groups if _file(name) not in files]
    if not without or not sheet.problems:
        return ""
    some = without if len(without) < len(groups) else ()
    return text_of(practice_missing(some, sheet.problems[-1].statement))


def _file(group: str) -> str:
    return f"practice-{_plain(group)}"


def _of_groups(marked: Marked, asked: Tomorrow) -> Iterator[PracticePage]:
    for at, group in enumerate(marked.groups):
        findings = [found for found in marked.findings if found.pupil in group.pupils]
        made = _practice(
            marked, asked, missed(group, marked.marks), findings, due=_due(asked, group.pupils), skip=at
        )
        if made is not None:
            yield PracticePage(GroupPractice(group.name), kite_of(at), _file(group.name), made)


def _of_pupils(marked: Marked, asked: Tomorrow) -> Iterator[PracticePage]:
    files: set[str] = set()
    for found, pupil in zip(marked.findings, marked.marks.pupils, strict=True):
        if pupil.pupil not in asked.pupils:
            continue
        group, seat = _seat(marked, pupil.pupil)
        own = _due(asked, (pupil.pupil,))
        made = _practice(marked, asked, _missed(pupil), [found], due=own, skip=len(marked.groups) + seat)
        if made is not None:
            file = _unused(f"pupil-{_plain(pupil.pupil)}".rstrip("-"), files)
            yield PracticePage(PupilPractice(pupil.pupil), kite_of(group), file, made)


def _practice(
    marked: Marked,
    asked: Tomorrow,
    labels: Sequence[str],
    findings: Iterable[Finding],
    *,
    due: Sequence[Statement],
    skip: int,
) -> Practice | None:
    problems = {problem.label: problem for problem in marked.sheet.problems}
    last_first = tuple(reversed(marked.sheet.problems))
    patterns, header = _open(findings), in_languages(marked.sheet, asked.languages).header
    if asked.fit:
        header = setting_named("fit").read(header, asked.fit)
    tries = (
        practice(
            header,
            models,
            INSTRUCTION,
            patterns=patterns,
            earlier=[problem.statement for sheet in asked.earlier for problem in sheet.problems],
            due=due,
            find_slip=asked.finds_slip,
            skip=skip,
        )
        for models in (tuple(problems[label] for label in labels), last_first)
    )
    return next((made for made in tries if made is not None), None)


def _due(asked: Tomorrow, pupils: Iterable[str]) -> tuple[Statement, ...]:
    """Return problems of the skills that are due, those of most pupils first, then in the pupils' order."""
    many = Counter(one for code in pupils for one in asked.due.get(code, ()))
    return tuple(sorted(many, key=lambda one: -many[one]))


def _open(findings: Iterable[Finding]) -> tuple[str, ...]:
    """Return the patterns that answers fit, those of most pupils first."""
    pupils = Counter(pattern for found in findings for pattern in found.patterns)
    return tuple(sorted(pupils, key=lambda pattern: (-pupils[pattern], pattern)))


def _missed(pupil: PupilMarks) -> tuple[str, ...]:
    return tuple(mark.label for mark in pupil.marks if mark.verdict is Verdict.WRONG)


def _seat(marked: Marked, code: str) -> tuple[int, int]:
    """Return the place of a pupil's group, and of the pupil in it: no two pages of a group are alike."""
    return next(
        (at, group.pupils.index(code)) for at, group in enumerate(marked.groups) if code in group.pupils
    )


def _plain(name: str) -> str:
    """Return a name that every disk can hold."""
    return re.sub(r"[^a-z0-9]+", "-", name.casefold()).strip("-")


def _unused(file: str, files: set[str]) -> str:
    """Return a name that no other page has, and note it."""
    names = (file, *(f"{file}-{number}" for number in range(2, len(files) + 3)))
    found = next(name for name in names if name not in files)
    files.add(found)
    return found
