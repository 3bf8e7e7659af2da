"""In what form pupils read their pages: as the class, in braille, in large print."""

from onewhole.desk.classes.own_forms import FORMS, forms_of_class, keep_forms
from onewhole.errors import InputError
from onewhole.web.http.request import BrokenForm, PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status


def look(request: PageRequest) -> HtmlPage:
    """Show every pupil with the form of the pages."""
    return _shown(request)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the forms beside the codes."""
    try:
        keep_forms(request.book, request.number("room"), request.beside("form"), request.beside("saw"))
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('class_forms.look')}?kept=yes")


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    rows = forms_of_class(request.book, request.number("room"))
    stand = {row.pupil.code: row.typed for row in rows}
    if refused and not isinstance(refused, BrokenForm):
        saw = request.beside("saw")
        stand |= {code: form for code, form in request.beside("form").items() if form != saw[code]}
    words: dict[str, object] = {
        "rows": rows,
        "stand": stand,
        "forms": FORMS,
        "refused": refused,
        "kept": request.query.get("kept") == "yes",
    }
    return HtmlPage("class_forms.html", words, refused_status(refused) if refused else 200)
