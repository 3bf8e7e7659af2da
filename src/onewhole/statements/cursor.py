"""A place in a line of tokens while it is being read."""

from typing import NoReturn

from onewhole.number.quantity import Quantity
from onewhole.statements.tokens import ReadingError, Token, TokenKind
from onewhole.statements.unit_words import MARKS


class Cursor:
    """Walks over tokens; never past the END token."""

    def __init__(self, tokens: tuple[Token, ...]) -> None:
        """Start at the first token."""
        self._tokens = tokens
        self._at = 0
        self._hole = tokens[0]
        #: The unit behind a fraction or a decimal of this line, such as in of 5 5/8 in; empty where none is.
        self.fraction_unit = _fraction_unit(tokens)
        #: The number that was divided by last, to which a remainder belongs; None before any.
        self.divisor: Quantity | None = None

    @property
    def here(self) -> Token:
        """The token to be read next."""
        return self._tokens[self._at]

    def at_end(self) -> bool:
        """Say whether everything has been read."""
        return self.here.sort is TokenKind.END

    def ahead(self, steps: int) -> Token:
        """Return the token so many steps ahead, or the END token."""
        at = self._at + steps
        return self._tokens[at] if at < len(self._tokens) else self._tokens[-1]

    def word_ahead(self, steps: int, words: frozenset[str]) -> bool:
        """Say whether the token so many steps ahead is one of these words."""
        token = self.ahead(steps)
        return token.sort is TokenKind.WORD and token.text in words

    def take(self) -> Token:
        """Return the next token and step over it."""
        token = self.here
        if token.sort is TokenKind.HOLE:
            self._hole = token
        if token.sort is not TokenKind.END:
            self._at += 1
        return token

    def took(self, *sorts: TokenKind) -> bool:
        """Step over the next token if it is of one of these sorts, and say whether it was."""
        if self.here.sort not in sorts:
            return False
        self.take()
        return True

    def number(self, wanted: str) -> int:
        """Read a whole number or refuse, saying what was wanted."""
        if self.here.sort is not TokenKind.NUMBER:
            self.refuse(f"{wanted} is missing")
        return int(self.take().text)

    def refuse(self, message: str, remedy: str = "Write the problem as in 7 2/6 - 3 5/6.") -> NoReturn:
        """Raise a ReadingError at this place."""
        token = self.here
        found = "the line ends" if token.sort is TokenKind.END else f"there is “{token.text}”"
        raise ReadingError(f"{message}: here {found}", line=token.line, column=token.column, remedy=remedy)

    def refuse_at(self, token: Token, message: str, remedy: str) -> NoReturn:
        """Raise a ReadingError at a token that was read."""
        raise ReadingError(message, line=token.line, column=token.column, remedy=remedy)

    def refuse_hole(self, message: str, remedy: str) -> NoReturn:
        """Raise a ReadingError at the ? that was read last."""
        raise ReadingError(message, line=self._hole.line, column=self._hole.column, remedy=remedy)


def is_unit(token: Token, after: Token) -> bool:
    """Say whether a word is a unit; in of "in simplest form" is none."""
    if token.sort is not TokenKind.WORD or token.text not in MARKS:
        return False
    return token.text != "in" or after.sort is not TokenKind.WORD or after.text in {"in", "as", "to"}


def _fraction_unit(tokens: tuple[Token, ...]) -> str:
    """Return the unit that stands behind a fraction or a decimal, by its usual abbreviation; "" for none."""
    for at, token in enumerate(tokens):
        if not at or token.sort is not TokenKind.WORD or not is_unit(token, tokens[at + 1]):
            continue
        fraction = at > 1 and tokens[at - 2].sort is TokenKind.SLASH
        if tokens[at - 1].sort is TokenKind.POINTED or (tokens[at - 1].sort is TokenKind.NUMBER and fraction):
            return MARKS[token.text]
    return ""
