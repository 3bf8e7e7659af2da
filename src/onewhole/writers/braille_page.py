"""The pupil page and the answer key in braille: pages of 25 lines of 40 cells.

Source of the size and the layout: BANA, *Braille Formats* (2016), from memory: a heading in the middle with a
blank line below, instructions from cell 5 with cell 3 for their further lines, problems from cell 1 with cell
3, the number of the page at the right end of the last line. Spatial problems: see :mod:`~.spatial`.
"""

from collections.abc import Iterable, Iterator
from itertools import chain

from msgspec import Struct

from onewhole.languages.language import Language
from onewhole.languages.table import spoken_by
from onewhole.notations.braille.cells import BLANK, ascii_braille
from onewhole.notations.braille.chunks import Chunk, filled
from onewhole.notations.braille.literary import literary
from onewhole.notations.braille.running import ENDS, OPENS, formula, running, words
from onewhole.notations.braille.spatial import spatial
from onewhole.pictures.columns_state import columns_states
from onewhole.pictures.line_plot import plot_scene
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.sentences.typed import typed_sentences
from onewhole.sheets.document import Instruction
from onewhole.sheets.faded_example import faded_example
from onewhole.sheets.header import Header
from onewhole.sheets.shared_plots import SharedPlot, shared_plots
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question

WIDTH, HEIGHT = 40, 25
#: A line to write on, where print has one.
_LOW_LINE = "_"
#: Lines that stay together on a page.
Block = tuple[str, ...]


class BraillePage(Struct, frozen=True):
    r"""Pages of braille, each a tuple of lines of Unicode cells.

    >>> BraillePage((("⠼⠂⠬⠂",),)).brf
    b'#1+1\r\n\x0c'
    """

    pages: tuple[tuple[str, ...], ...]

    @property
    def brf(self) -> bytes:
        """Return it for an embosser or a display: ASCII braille, a form feed behind each page."""
        return "".join(
            "".join(f"{ascii_braille(line)}\r\n" for line in page) + "\f" for page in self.pages
        ).encode("ascii")

    @property
    def text(self) -> bytes:
        """Return it as Unicode braille in UTF-8, an empty line between pages."""
        return "\n".join("".join(f"{line}\n" for line in page) for page in self.pages).encode()


def braille_pupil_page(worked: WorkedSheet) -> BraillePage:
    """Return the page that a pupil works on.

    Numbers stand under each other where the class works them in columns. Raises NoBrailleError.
    """
    header = worked.header
    page = spoken_by(header.words).page
    where = ", ".join(part for part in (header.class_name, header.date) if part)
    over = [*_heading(header.title or page.untitled, *([where] if where else ()))]
    over.append(tuple(_filled(words(f"{page.name} {_LOW_LINE} {page.date} {_LOW_LINE}"))))
    items = chain(_begun(header), _items(worked))
    film = [tuple(filled((*words(page.film), *words(header.film)), WIDTH, 4, 2))] if header.film else []
    return _paged(chain(over, [("",)], items, film))


def braille_key_page(worked: WorkedSheet) -> BraillePage:
    """Return the answer key. Raises NoBrailleError."""
    header = worked.header
    language = spoken_by(header.words)
    below = ", ".join(part for part in (header.title or language.page.untitled, header.date) if part)
    answers = (_answer(entry, language) for entry in worked.problems)
    return _paged(chain(_heading(language.page.answer_key, below), answers))


def _heading(*lines: str) -> Iterator[Block]:
    yield tuple(
        line.strip(BLANK).center(WIDTH, BLANK).rstrip(BLANK)
        for said in lines
        for line in filled(words(said), WIDTH - 6, 0, 0)
    )
    yield ("",)


def _begun(header: Header) -> Iterator[Block]:
    """Yield a worked example to finish."""
    language = spoken_by(header.words)
    if header.to_finish is None:
        return
    said = faded_example(header.to_finish, header.taught, header.form, language)
    if said:
        yield tuple(filled(running(typed_sentences(said, language.tag), language), WIDTH, 4, 2))


def _items(worked: WorkedSheet) -> Iterator[Block]:
    """Yield the items of a page; a line plot is told stack by stack above the problems about it."""
    plots = dict(shared_plots(worked.sheet.items))
    for item in worked.sheet.items:
        if isinstance(item, Problem) and item.label in plots:
            yield _plot(plots[item.label], worked.header)
        yield _item(item, worked)


def _plot(shared: SharedPlot, header: Header) -> Block:
    """Tell a line plot, a line for each sentence, under the labels of the problems about it."""
    language = spoken_by(header.words)
    first, *others = language.working.picture(plot_scene(shared.plot), header.words)
    told = (Chunk(literary(f"{shared.labels}:")), *running((first,), language))
    rows = (filled(running((one,), language), WIDTH, 2, 4) for one in others)
    return (*_filled(told), *chain.from_iterable(rows))


def _item(item: Instruction | Problem, worked: WorkedSheet) -> Block:
    language = spoken_by(worked.header.words)
    if isinstance(item, Instruction):
        said = running(typed_sentences(item.words, language.tag), language)
        return tuple(filled(said, WIDTH, 4, 2))
    label = literary(f"{item.label}.")
    if item.story:
        return tuple(_filled((Chunk(label), *running(typed_sentences(item.story, language.tag), language))))
    if under := _under_each_other(worked.labelled[item.label]):
        indented = tuple(f"{BLANK * 2}{row}" for row in under)
        return (f"{label}{BLANK}{OPENS}", "", *indented, "", ENDS)
    asked = formula(item.statement, language, asks=isinstance(item.statement, Question))
    return tuple(_filled((Chunk(label), *asked)))


def _under_each_other(entry: WorkedProblem) -> tuple[str, ...]:
    asks = isinstance(entry.statement, Question)
    return spatial(entry.statement) if asks and entry.working and columns_states(entry.working) else ()


def _answer(entry: WorkedProblem, language: Language) -> Block:
    page = language.page
    rows = [(Chunk(literary(f"{entry.label}.")), *formula(entry.statement, language))]
    rows.append((*words(f"{page.answer}:"), *formula(entry.answer, language)))
    rows += [(*words(f"{page.also_right}:"), *formula(form, language)) for form in entry.forms]
    if noted := language.key.needs(entry.needs):
        rows.append(running(noted, language))
    first, *others = rows
    return (*_filled(first), *chain.from_iterable(filled(row, WIDTH, 2, 4) for row in others))


def _filled(chunks: Iterable[Chunk]) -> Iterator[str]:
    return filled(chunks, WIDTH, 0, 2)


def _paged(blocks: Iterable[Block]) -> BraillePage:
    """Put blocks on pages, each on one where it can; the last line has the number of the page."""
    room = HEIGHT - 1
    pages: list[list[str]] = [[]]
    for block in blocks:
        if len(pages[-1]) + len(block) > room and any(pages[-1]):
            pages.append([])
        for line in block:
            if len(pages[-1]) == room:
                pages.append([])
            if line or pages[-1]:
                pages[-1].append(line)
    return BraillePage(tuple(_numbered(page, at) for at, page in enumerate(pages, 1)))


def _numbered(page: list[str], at: int) -> tuple[str, ...]:
    return (*page, *[""] * (HEIGHT - 1 - len(page)), literary(str(at)).rjust(WIDTH, BLANK))
