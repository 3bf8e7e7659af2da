"""Every refusal says what is wrong, where, and what to do next."""

import copy
import pickle

import pytest

from onewhole.errors import InputError, OnewholeError


class TornPageError(InputError):
    """A room's own refusal, with a field of its own."""

    def __init__(self, what: str, *, page: int, line: int | None = None) -> None:
        super().__init__(what, line=line)
        self.page = page


@pytest.mark.parametrize(
    ("refused", "said"),
    [
        (OnewholeError("The page is empty"), "The page is empty."),
        (OnewholeError("The page is empty."), "The page is empty."),
        (OnewholeError("Is this a page?"), "Is this a page?"),
        (OnewholeError(what="The page is empty", where="room12"), "The page is empty (room12)."),
        (OnewholeError("The page is empty.", remedy="Type a problem"), "The page is empty. Type a problem."),
        (
            OnewholeError("The page is empty", where="room12", remedy="Type a problem."),
            "The page is empty (room12). Type a problem.",
        ),
        (InputError("No number here", line=2), "No number here (line 2)."),
        (
            InputError("No number here", file="kites.txt", line=2, column=7, where="problem 1"),
            "No number here (kites.txt, line 2, column 7, problem 1).",
        ),
    ],
)
def test_a_refusal_reads_as_sentences(refused: OnewholeError, said: str) -> None:
    """What, the place in brackets, and the next thing to do, each ending once."""
    assert str(refused) == said


def test_an_input_error_is_also_a_value_error() -> None:
    """A caller may catch ours or Python's own."""
    with pytest.raises(ValueError, match="No number"):
        raise InputError("No number here")


def _unpickled(error: OnewholeError) -> object:
    return pickle.loads(pickle.dumps(error))  # noqa: S301 - pickled on the same line


@pytest.mark.parametrize("again", [copy.copy, copy.deepcopy, _unpickled])
def test_a_refusal_travels_whole(again: object) -> None:
    """Copying and pickling keep the kind, every field, a child's own field, and the words."""
    assert callable(again)
    refused = TornPageError("The page is torn", page=3, line=4)
    refused.add_note("seen at the copier")
    arrived = again(refused)
    assert type(arrived) is TornPageError
    assert vars(arrived) == vars(refused)
    assert (str(arrived), arrived.args) == (str(refused), refused.args)


@pytest.mark.parametrize("field", ["what", "where", "remedy", "file", "line", "column", "page"])
def test_a_field_is_set_once(field: str) -> None:
    """A refusal on its way up is not rewritten."""
    refused = TornPageError("The page is torn", page=3)
    with pytest.raises(AttributeError, match=rf"^TornPageError\.{field} is already set and stays as it is$"):
        setattr(refused, field, None)


def test_a_refusal_is_placed_in_the_larger_text() -> None:
    """The new one has the file, the line and the columns before it; the old one stays as it was."""
    refused = TornPageError("The page is torn", page=3)
    here = InputError("The denominator is 0", column=3, where="problem 2")
    placed = here.placed(file="kites.txt", line=8, columns=4)
    assert (placed.file, placed.line, placed.column) == ("kites.txt", 8, 7)
    assert placed.where == placed.args[1] == "kites.txt, line 8, column 7, problem 2"
    assert (here.file, here.line, here.column, here.where) == (None, None, 3, "column 3, problem 2")
    assert placed.placed(columns=2).where == "kites.txt, line 8, column 9, problem 2"
    moved = refused.placed(line=5, columns=4)
    assert (type(moved), moved.page, moved.line, moved.column) == (TornPageError, 3, 5, None)


@pytest.mark.parametrize(
    ("line", "column", "said"), [(0, 1, "a line counts from 1, and 0"), (1, -2, "a column counts")]
)
def test_lines_and_columns_count_from_one(line: int, column: int, said: str) -> None:
    """A place that no editor shows is a fault in the code that refuses."""
    with pytest.raises(ValueError, match=said) as raised:
        InputError("No number here", line=line, column=column)
    assert not isinstance(raised.value, OnewholeError)
