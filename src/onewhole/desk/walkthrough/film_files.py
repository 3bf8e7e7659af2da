"""What a filming made."""

from fractions import Fraction

from msgspec import Struct

from onewhole.desk.page.put_pages import Made
from onewhole.desk.walkthrough.listening import ToldSlip
from onewhole.languages.table import LANGUAGES
from onewhole.presses.video import Filmed
from onewhole.sheets.reading_level import ReadingFormula, ReadingLevel


class FilmFiles(Struct, frozen=True):
    """What a filming made, how long the film is, how its words read, and what was not as wished.

    ``chapters`` are where each begins, in milliseconds, and its name; ``slips`` are slips of the tongue.
    """

    made: tuple[Made, ...]
    filmed: Filmed
    length: Fraction
    level: ReadingLevel | None
    longest: int
    notes: tuple[str, ...]
    language: str
    chapters: tuple[tuple[int, str], ...]
    slips: tuple[ToldSlip, ...] = ()

    @property
    def reads(self) -> str:
        """Say how hard the words are."""
        return reads(self.level, self.language)


def reads(level: ReadingLevel | None, language: str) -> str:
    """Say how hard words are to read, in a language; None where no grade is measured."""
    if level is None:
        return f"in {LANGUAGES[language].name}, for which no grade is measured here"
    at = f"at grade {level.shown}" if level.grade >= 1 else "below grade 1"
    return at if level.formula is ReadingFormula.KINCAID else f"{at} (Fernández Huerta {round(level.ease)})"
