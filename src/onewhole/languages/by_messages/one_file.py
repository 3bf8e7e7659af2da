"""A language made of tables and messages; what it says nothing of is English, and says so."""

from collections.abc import Mapping

from msgspec import Struct
from msgspec.structs import replace

from onewhole.languages.by_messages.film_messages import FilmByMessages, FilmMessages
from onewhole.languages.by_messages.home_messages import HomeByMessages, HomeMessages
from onewhole.languages.by_messages.message import Teller
from onewhole.languages.by_messages.number_tables import NumberTables
from onewhole.languages.by_messages.reason_messages import ReasonMessages, ReasonsByMessages
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.languages.line_words import LineWords
from onewhole.languages.page_words import PageWords
from onewhole.statements.row import Sign


class LanguageFile(Struct, frozen=True):
    """All that the one file of a language has.

    ``tag``, ``name``, ``code`` and ``voice`` as in :class:`~onewhole.languages.language.Language`. ``verbs``
    are "we regroup" and "to regroup" by what a class says for it; ``known`` what an English class's word for
    a whole is called; ``page`` the words that stand on printed pages.
    """

    tag: str
    name: str
    code: str
    voice: str
    numbers: NumberTables
    verbs: Mapping[str, tuple[str, str]]
    known: Mapping[str, str]
    page: PageWords
    home: HomeMessages
    reasons: ReasonMessages
    film: FilmMessages

    @property
    def language(self) -> Language:
        """Return the language."""
        numbers = self.numbers
        tells = Teller(self.tag, numbers.joins, numbers.is_feminine, self.verbs)
        reasons, film = ReasonsByMessages(tells, self.reasons), FilmByMessages(tells, self.film)
        whole = numbers.whole
        return replace(
            ENGLISH,
            class_settings={},
            tag=self.tag,
            name=self.name,
            code=self.code,
            voice=self.voice,
            usual=ClassWords(whole.one, whole.many, "regroup", self.tag, feminine=whole.feminine),
            count_words=numbers.counts,
            called=numbers.called,
            say=numbers.say,
            say_before=numbers.say_before,
            short=numbers.short,
            known=self.known.get,
            read_whole=numbers.read_whole,
            equals=numbers.signs[Sign.EQUALS],
            blank=numbers.blank,
            line=LineWords(
                numbers.wording_parts, numbers.forms, numbers.place_written, numbers.signs[Sign.UNTIL]
            ),
            page=self.page,
            working=replace(ENGLISH.working, reason=reasons.reason, picture=reasons.picture),
            home=HomeByMessages(tells, self.home).home,
            opening=film.opening,
            lines=film.lines,
            after=film.after,
        )
