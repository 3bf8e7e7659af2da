"""The templates: every word is escaped, a name also kept from turning the text around it."""

from collections.abc import Mapping
from functools import cache
from gettext import NullTranslations

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from onewhole.web.http.static_files import static


def environment(translations: NullTranslations) -> Environment:
    """Return what renders the templates, their words translated; `NullTranslations` leaves them as they are.

    Words of a template stand in ``_("...")`` and ``ngettext("...", "...", count)``, the marks of the standard
    gettext, so that they can be extracted.
    """
    made = Environment(
        loader=PackageLoader("onewhole.web"),
        extensions=["jinja2.ext.i18n"],
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.filters["name"] = name
    made.globals["static"] = static
    made.install_gettext_translations(translations, newstyle=True)  # type: ignore[attr-defined]
    return made


@cache
def _environment() -> Environment:
    return environment(NullTranslations())


def name(text: object) -> Markup:
    """Set a typed name apart, so that its direction does not turn what stands around it.

    >>> name("<script>")
    Markup('<bdi>&lt;script&gt;</bdi>')
    """
    return Markup("<bdi>{}</bdi>").format(text)


def rendered(template: str, words: Mapping[str, object]) -> str:
    """Return a page. A word that is missing is a fault and raises."""
    return _environment().get_template(template).render(words)
