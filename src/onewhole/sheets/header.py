"""The settings at the top of a sheet: what the page is called, for whom, on what paper, in whose words."""

from enum import StrEnum

from msgspec import Struct, field

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import words_at_home
from onewhole.sheets.film_address import check_address
from onewhole.statements.statement import Statement
from onewhole.working.form import FormWanted
from onewhole.working.products.product_way import ProductWay
from onewhole.working.quotients.quotient_way import QuotientWay
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.strategies.table import USUAL
from onewhole.working.strategy import Strategy
from onewhole.working.taught import Taught

LONGEST = 200
#: A recipe is written and read by the program and may be longer than what people type.
LONGEST_RECIPE = 4000
HIGHEST_GRADE = 8
MOST_COLUMNS = 2
MOST_MINUTES = 240
#: A page for one night is fitted on so many sides of paper at most.
MOST_FIT = 6


class Paper(StrEnum):
    """What the page is printed on."""

    LETTER = "letter"
    A4 = "a4"


class Print(StrEnum):
    """How large the page is printed."""

    ORDINARY = "ordinary"
    LARGE = "large"


class PictureSetting(StrEnum):
    """Which picture a pupil is given beside a problem: a place for one, its amounts, or a story's bars."""

    NONE = "none"
    STRIP = "strip"
    LINE = "number line"
    AMOUNTS = "amounts"
    BAR = "bar"


class CornerMarks(StrEnum):
    """Whether a page has marks in its corners, by which a photographed page is read, and how answers stand.

    Over lines, or in three windows: the whole, the number over the fraction's line, the one under it.
    """

    NONE = "none"
    LINES = "lines"
    WINDOWS = "windows"


class SettingError(InputError):
    """A setting of the header cannot be used."""


class Header(Struct, frozen=True):
    """The settings of a sheet; every one may be left out.

    ``title``, ``date`` and ``class_name`` are empty and ``minutes`` and ``columns`` None where nothing is
    set: nothing is printed for them, there is no budget of minutes, and the number of columns follows from
    the room that the problems need. The ``strategy`` is columns where nothing is set, and where numbers have
    no columns (mixed numbers, measures) it regroups first. ``multiply`` and ``divide`` are the ways taught
    for that; None takes the first that suits. ``fit`` is on how many pages the problems are to be fitted,
    with less room to write where that must be; None leaves all the room. The ``picture`` stands beside every
    problem, or with ``picture_stories`` beside the stories alone. ``story_bars`` shows the bars of a story
    where it is worked: in the workings and in the film. ``mixed_form`` and ``simplest_form`` say that a right
    amount in another form is sent back; both are off, for the standards ask for no form (4.NF, CCSSM 2010).
    ``remainder`` is what becomes of what is left over in dividing; None takes it any way.
    ``marks`` are those in the corners of the pupils' page; a page to hang up has none. ``film`` is the
    address of a film that families may watch, which the pages for pupils and home print as a square code.
    With ``braille`` the pupils' page and the key are made in braille too. ``home`` are the words of further
    languages, for the page for home; None where the sheet names no language, so that a class may
    (:mod:`onewhole.sheets.class_languages`). ``to_finish`` is a problem whose working is begun at the top of
    the pupils' page. ``recipe`` is what a composed page was made of (:mod:`onewhole.sheets.recipe`), and
    empty for any other. Raises SettingError for a number outside its bounds and for words that do not fit
    one line, and AddressError for a film that cannot be printed.

    >>> Header().strategy.key, Header().paper.value
    ('columns', 'letter')
    """

    title: str = ""
    date: str = ""
    class_name: str = ""
    grade: int = 4
    strategy: Strategy = USUAL
    multiply: ProductWay | None = None
    divide: QuotientWay | None = None
    words: ClassWords = field(default_factory=ClassWords)
    paper: Paper = Paper.LETTER
    print: Print = Print.ORDINARY
    picture: PictureSetting = PictureSetting.NONE
    picture_stories: bool = False
    story_bars: bool = True
    columns: int | None = None
    minutes: int | None = None
    fit: int | None = None
    mixed_form: bool = False
    simplest_form: bool = False
    remainder: RemainderForm | None = None
    marks: CornerMarks = CornerMarks.NONE
    film: str = ""
    braille: bool = False
    to_finish: Statement | None = None
    recipe: str = ""
    home: tuple[ClassWords, ...] | None = None

    def __post_init__(self) -> None:
        """Refuse what no header can say."""
        for said in (self.title, self.date, self.class_name):
            check_line(said)
        check_line(self.recipe, LONGEST_RECIPE)
        check_address(self.film)
        for name, count, most in (
            ("grade", self.grade, HIGHEST_GRADE),
            ("columns", self.columns, MOST_COLUMNS),
            ("minutes", self.minutes, MOST_MINUTES),
            ("fit", self.fit, MOST_FIT),
        ):
            if count is not None and not 1 <= count <= most:
                msg = f"{name} is set to {count}"
                raise SettingError(msg, remedy=f"Use a number from 1 to {most}.")

    @property
    def taught(self) -> Taught:
        """Return the ways in which the class was taught to work."""
        return Taught(self.strategy, self.multiply, self.divide)

    @property
    def form(self) -> FormWanted:
        """Return the form that is asked of a right answer."""
        return FormWanted(self.mixed_form, self.simplest_form, self.remainder)

    @property
    def spoken_at_home(self) -> tuple[ClassWords, ...]:
        """Return the words for every page for home: the class's own, then those of further languages."""
        return (self.words, *(words_at_home(self.words, own) for own in self.home or ()))

    def picture_beside(self, *, story: bool) -> PictureSetting:
        """Return the picture that stands beside a problem, which is a story or none.

        >>> Header(picture=PictureSetting.STRIP, picture_stories=True).picture_beside(story=False).value
        'none'
        """
        return self.picture if story or not self.picture_stories else PictureSetting.NONE


def check_line(said: str, longest: int = LONGEST) -> None:
    """Refuse words that cannot be written on one line of a sheet as they are.

    Raises SettingError for blanks at an end, signs that do not print, and more than 200 characters.
    """
    if said != said.strip() or not said.isprintable() or len(said) > longest:
        msg = f"“{said[:40]}” cannot stand on one line of a sheet"
        raise SettingError(msg, remedy=f"Use one line of at most {longest} letters, digits and signs.")
