"""What pupils were asked and said, read from CSV text: one row an answer or a word of the teacher."""

from collections.abc import Collection, Iterator, Mapping, Sequence

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.marking.reading.answer import Written, read_written
from onewhole.marking.reading.answers_table import PUPIL, AnswersError, CsvRow, csv_rows
from onewhole.marking.reading.asked import AskedAnswer, asked_problem
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord, read_word
from onewhole.problems.problem import Problem

ASKED, WROTE, WORD = "asked", "wrote", "word"
COLUMNS = (PUPIL, ASKED, WROTE, WORD)
#: More than a class is asked in one morning.
MOST_ROWS = 1000


class AskedRow(Struct, frozen=True):
    """A row, and where its word was typed: what "this idea" means is looked up (:func:`about_what`)."""

    answer: AskedAnswer
    line: int | None = None
    column: int | None = None
    file: str | None = None


def read_asked(
    text: str, pupils: Collection[str], patterns: Collection[str], file: str | None = None
) -> tuple[AskedRow, ...]:
    r"""Read what pupils were asked; several rows may be of one pupil, in the order of the talk.

    The columns are ``pupil``, ``asked`` (a problem), ``wrote`` (what the child wrote or said; a dash for
    nothing) and ``word`` (:func:`.talk_word.read_word`), in any order; ``word`` may be left out, or
    ``asked`` and ``wrote`` together. Cells are divided as in the answers. ``pupils`` are the codes of the
    class, ``patterns`` all ids. Raises AnswersError with every reason and its place.

    >>> rows = read_asked("pupil,asked,wrote,word\nK01,9 5/8 - 4 6/8,5 1/8,A01", {"K01"}, {"A01"})
    >>> rows[0].answer.word.text, rows[0].answer.written.text
    ('this idea: A01', '5 1/8')
    """
    rows = csv_rows(text, file, MOST_ROWS + 1)
    if not rows:
        msg = "nothing was asked here"
        remedy = "Start with the line: pupil,asked,wrote,word, then one line a question."
        raise AnswersError([InputError(msg, file=file, line=1, remedy=remedy)])
    if len(rows) > MOST_ROWS + 1:
        msg = f"these are more than {MOST_ROWS} rows"
        remedy = "Hand in what was asked of one class after one night."
        raise AnswersError([InputError(msg, file=file, line=rows[-1].line, column=1, remedy=remedy)])
    if refusals := tuple(_header_refusals(rows[0], file)):
        raise AnswersError(refusals)
    places = {name: at for at, cell in enumerate(rows[0].cells) if (name := cell.strip().casefold())}
    read = _Reading(places, pupils, patterns, file)
    found = [one for row in rows[1:] for one in read.row(row)]
    if refused := [one for one in found if isinstance(one, InputError)]:
        raise AnswersError(refused)
    return tuple(one for one in found if isinstance(one, AskedRow))


def about_what(rows: Sequence[AskedRow], named: Mapping[str, tuple[str, ...]]) -> tuple[AskedAnswer, ...]:
    """Return the rows with every "this idea" and "another idea" about the patterns that the page names.

    ``named`` has those by pupil. Raises AnswersError for "this idea" where the page names none.
    """
    refused: list[InputError] = []
    found: list[AskedAnswer] = []
    for row in rows:
        one, word = row.answer, row.answer.word
        if word is not None and not word.about and word.said is not TalkSaid.SLIP:
            about = named.get(one.pupil, ())
            if word.said is TalkSaid.THIS and not about:
                what = f"the page names no idea of {one.pupil}, so that “{word.text}” says nothing"
                remedy = "Write the id of the pattern that is meant, such as A01."
                refused.append(
                    InputError(what, file=row.file, line=row.line, column=row.column, remedy=remedy)
                )
            one = replace(one, word=replace(word, about=about))
        found.append(one)
    if refused:
        raise AnswersError(refused)
    return tuple(found)


def _header_refusals(header: CsvRow, file: str | None) -> Iterator[InputError]:
    names = [cell.strip().casefold() for cell in header.cells]
    for column, name in enumerate(names, start=1):
        if name and name not in COLUMNS:
            msg = f"there is no column “{name[:40]}”"
            remedy = f"The columns are {', '.join(COLUMNS)}."
            yield InputError(msg, file=file, line=header.line, column=column, remedy=remedy)
        elif name and name in names[: column - 1]:
            remedy = "Keep one of them."
            msg = f"the column “{name}” is there twice"
            yield InputError(msg, file=file, line=header.line, column=column, remedy=remedy)
    needed = [PUPIL] + [name for name in (ASKED, WROTE) if WORD not in names or {ASKED, WROTE} & set(names)]
    for name in needed:
        if name not in names:
            msg = f"there is no column “{name}”"
            remedy = f"Add it to the first line: {', '.join(COLUMNS)}."
            yield InputError(msg, file=file, line=header.line, remedy=remedy)


class _Reading(Struct, frozen=True):
    """The places of the columns, and what may stand in them."""

    places: Mapping[str, int]
    pupils: Collection[str]
    patterns: Collection[str]
    file: str | None

    def row(self, row: CsvRow) -> Iterator[AskedRow | InputError]:
        """Yield what stands in a row, or every reason why it cannot be used."""
        refused = list(self._whose(row))
        asked, wrote = self._cell(row, ASKED), self._cell(row, WROTE)
        problem: Problem | None = None
        written: Written | None = None
        word: TalkWord | None = None
        try:
            problem = asked_problem(asked) if asked else None
        except InputError as error:
            refused.append(self._refusal(row, ASKED, error.what, error.remedy))
        try:
            word = read_word(self._cell(row, WORD), self.patterns)
        except InputError as error:
            refused.append(self._refusal(row, WORD, error.what, error.remedy))
        if wrote and not asked:
            remedy = f"Write the problem in the column {ASKED}."
            refused.append(self._refusal(row, ASKED, "an answer stands here without its problem", remedy))
        elif asked and not wrote:
            remedy = "Write what the child wrote or said, and a dash where that was nothing."
            refused.append(
                self._refusal(row, WROTE, "this problem was asked, and no answer stands here", remedy)
            )
        elif not asked and not self._cell(row, WORD):
            remedy = "Write what was asked, or take the row out."
            refused.append(self._refusal(row, ASKED, "nothing was asked and nothing is said here", remedy))
        if refused:
            yield from refused
            return
        written = read_written(wrote, problem) if problem else None
        answer = AskedAnswer(self._cell(row, PUPIL), problem, written, word)
        yield AskedRow(answer, row.line, self.places.get(WORD, 0) + 1, self.file)

    def _whose(self, row: CsvRow) -> Iterator[InputError]:
        pupil = self._cell(row, PUPIL)
        if not pupil:
            yield self._refusal(row, PUPIL, "this row has no pupil", "Write the pupil's code.")
        elif pupil not in self.pupils:
            msg = f"no pupil is called “{pupil[:40]}”"
            yield self._refusal(row, PUPIL, msg, f"Use a code of the answers: {', '.join(self.pupils)}.")
        extra = next((at for at in range(len(COLUMNS), len(row.cells)) if row.cells[at].strip()), None)
        if extra is not None:
            remedy = "Put an answer with a sign that divides cells into quotation marks."
            yield InputError(
                "this row is longer than the first line",
                file=self.file,
                line=row.line,
                column=extra + 1,
                remedy=remedy,
            )

    def _cell(self, row: CsvRow, name: str) -> str:
        return row.at(self.places[name]).strip() if name in self.places else ""

    def _refusal(self, row: CsvRow, name: str, what: str, remedy: str | None) -> InputError:
        column = self.places.get(name, 0) + 1
        return InputError(what, file=self.file, line=row.line, column=column, remedy=remedy)
