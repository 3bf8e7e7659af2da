"""The templates: every word is escaped, a name also kept from turning the text around it."""

from collections.abc import Mapping
from functools import cache
from gettext import NullTranslations
from hashlib import sha256
from importlib.resources import files

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

#: Where the letters of the screen come from: those of the printed pages.
FONTS = ("fontpkg_lexend", "fontpkg_atkinson_hyperlegible")


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


@cache
def static(file: str) -> str:
    """Return the address of one of our files; it changes when the file does.

    >>> static("look.css").startswith("/static/look.css?")
    True
    """
    content = files("onewhole.web").joinpath("static", file).read_bytes()
    return f"/static/{file}?{sha256(content).hexdigest()[:12]}"


def rendered(template: str, words: Mapping[str, object]) -> str:
    """Return a page. A word that is missing is a fault and raises."""
    return _environment().get_template(template).render(words)
