import unicodedata

import pytest

from onewhole.statements.tokens import LONGEST_NUMBER, ReadingError, Token, TokenKind, tokens


def test_pieces_know_where_they_begin() -> None:
    """Line and column from 1, or from where the text begins."""
    assert tokens("7 2/6", line=3, column=5) == (
        Token(TokenKind.NUMBER, "7", 3, 5),
        Token(TokenKind.NUMBER, "2", 3, 7),
        Token(TokenKind.SLASH, "/", 3, 8),
        Token(TokenKind.NUMBER, "6", 3, 9),
        Token(TokenKind.END, "", 3, 10),
    )


@pytest.mark.parametrize(
    ("text", "sorts"),
    [
        ("", [TokenKind.END]),
        ("1.5 x .5", [TokenKind.POINTED, TokenKind.TIMES, TokenKind.POINTED, TokenKind.END]),
        ("a < b", [TokenKind.WORD, TokenKind.COMPARE, TokenKind.WORD, TokenKind.END]),
        ("(___)", [TokenKind.OPEN, TokenKind.HOLE, TokenKind.CLOSE, TokenKind.END]),
        ("5' = ?", [TokenKind.NUMBER, TokenKind.WORD, TokenKind.EQUALS, TokenKind.HOLE, TokenKind.END]),
    ],
)
def test_every_sort(text: str, sorts: list[TokenKind]) -> None:
    """Numbers, decimals, signs, blanks, words, and the end."""
    assert [token.sort for token in tokens(text)] == sorts


def test_words_lose_their_capitals_and_their_dot() -> None:
    """Ft., FT and ft are one word."""
    assert {tokens(word)[0].text for word in ("ft", "FT", "Ft.")} == {"ft"}


def test_thousands_may_have_commas() -> None:
    """1,000 is one number; 10,00 is not."""
    assert tokens("1,000,000")[0].text == "1000000"
    with pytest.raises(ReadingError, match=r"comma \(line 1, column 3\)"):
        tokens("10,00")


def test_a_number_is_not_too_long() -> None:
    """Nine digits and no more, with or without a point."""
    assert tokens("9" * LONGEST_NUMBER)[0].sort is TokenKind.NUMBER
    for text in ("9" * (LONGEST_NUMBER + 1), "1." + "0" * LONGEST_NUMBER):
        with pytest.raises(ReadingError, match=r"digits; at most 9 are read"):
            tokens(text)


def refusal(text: str) -> ReadingError | None:
    """Cut it into pieces, and return the refusal if there is one."""
    try:
        tokens(text)
    except ReadingError as refused:
        return refused
    return None


def test_every_character_is_a_piece_or_is_refused_where_it_stands() -> None:
    """Unicode, one character at a time (every 97th of the rare ones): read, or refused by its name."""
    read = set()
    for code in (*range(0x3000), *range(0x3000, 0x110000, 97)):
        character = chr(code)
        if refused := refusal(f"7 {character} 2"):
            assert (refused.line, refused.column) == (1, 3), code
            assert unicodedata.name(character, f"character number {code}").lower() in refused.what
        else:
            read.add(character)
    fractions = {sign for sign in read if "<fraction>" in unicodedata.decomposition(sign)}
    spaces = {sign for sign in read if sign.isspace()}
    assert len(fractions) == 19
    assert "\N{VULGAR FRACTION TWO THIRDS}" in fractions
    assert len(read - fractions - spaces) == 26 * 2 + 10 + len("/⁄∕:÷+-−–—‐‑*×⋅=<>?□○()_'\"′″’”$¢")
