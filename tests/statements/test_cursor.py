import pytest

from onewhole.statements.cursor import Cursor
from onewhole.statements.tokens import ReadingError, TokenKind, tokens


def test_it_never_walks_past_the_end() -> None:
    """The end may be taken as often as one likes."""
    cursor = Cursor(tokens("7"))
    assert [cursor.take().sort for _ in range(3)] == [TokenKind.NUMBER, TokenKind.END, TokenKind.END]
    assert cursor.at_end()
    assert cursor.ahead(5).sort is TokenKind.END
    assert not cursor.word_ahead(5, frozenset({"ft"}))


def test_it_takes_only_what_is_wanted() -> None:
    """A piece of another sort stays."""
    cursor = Cursor(tokens("7 -"))
    assert not cursor.took(TokenKind.MINUS)
    assert cursor.number("a number") == 7
    assert cursor.took(TokenKind.PLUS, TokenKind.MINUS)


def test_it_refuses_at_the_piece_ahead() -> None:
    """With what stands there."""
    cursor = Cursor(tokens("7 x 5"))
    cursor.take()
    with pytest.raises(ReadingError) as refused:
        cursor.refuse("this is not wanted")
    assert (refused.value.what, refused.value.column) == ("this is not wanted: here there is “x”", 3)


def test_it_refuses_at_the_gap_read_last() -> None:
    """Even when the reading has gone on."""
    cursor = Cursor(tokens("1 + ? + 2"))
    while not cursor.at_end():
        cursor.take()
    with pytest.raises(ReadingError) as refused:
        cursor.refuse_hole("no gap is wanted", "Fill it in.")
    assert (refused.value.what, refused.value.column) == ("no gap is wanted", 5)
