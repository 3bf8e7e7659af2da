"""Files of other programs: what is taken in from them, and what is made for them."""

from onewhole.desk.classes.class_records import sheet_typed
from onewhole.desk.classes.score_days import score_days
from onewhole.desk.exchange.class_lists import LARGEST as LARGEST_LIST
from onewhole.desk.exchange.class_lists import add_classes, classes_listed
from onewhole.desk.exchange.grade_book import CAUTION
from onewhole.desk.exchange.question_package import LARGEST, QTI, page_of_questions, questions_of_page
from onewhole.desk.exchange.results_package import results_package
from onewhole.desk.page.kept_pages import kept_pages, kept_versions
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import Content, HtmlPage, Redirect, refused_status
from onewhole.web.pages import page_desk

#: Bytes of a form with a file of questions.
MOST = LARGEST + 100_000
#: Bytes of a form with a class list.
MOST_LIST = LARGEST_LIST + 100_000


def look(request: PageRequest) -> HtmlPage:
    """Show what can be taken in and given out."""
    return _shown(request)


def questions(request: PageRequest) -> Content:
    """Give a kept page as a package of questions."""
    kept = kept_versions(request.book, request.number("sheet"))[0]
    made, _ = questions_of_page(sheet_typed(kept.typed))
    return Content(made, QTI, f"questions-{kept.sheet}.zip")


def page(request: PageRequest) -> HtmlPage:
    """Show a package of questions on the Page desk; nothing is kept."""
    file = request.files.get("file")
    try:
        if file is None or not file.content:
            raise InputError("No file was chosen", remedy="Choose a ZIP file of questions.")
        typed = page_of_questions(file.content, file.name)
    except InputError as refused:
        return _shown(request, refused)
    return page_desk.begun_with(request, typed)


def classes(request: PageRequest) -> HtmlPage | Redirect:
    """Add the classes of a list that was handed in."""
    file = request.files.get("list")
    try:
        if file is None or not file.content:
            raise InputError("No file was chosen", remedy="Choose the class list.")
        listed = classes_listed(file.content, file.name, request.field("called", "").strip())
        made = add_classes(request.book, listed, request.app.now())
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(request.at("class_page.look", room=made[0].number))


def results(request: PageRequest) -> HtmlPage | Content:
    """Give the results of some days as a OneRoster package; the school's class list says who is who."""
    file = request.files.get("list")
    try:
        if file is None or not file.content:
            raise InputError("No file was chosen", remedy="Choose the class list of the school.")
        typed = [request.field(key, "") for key in ("from", "to")]
        first, last = (day_typed(one) if one else None for one in typed)
        days = score_days(first, last, request.app.today())
        called = request.field("called", "").strip()
        made = results_package(request.book, request.number("room"), days, (file.content, file.name), called)
    except InputError as refused:
        return _shown(request, refused)
    return Content(made, QTI, f"results-{days[0]}-to-{days[1]}.zip")


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    words: dict[str, object] = {
        "refused": refused,
        "pages": kept_pages(request.book),
        "caution": CAUTION,
        "most": LARGEST // 1_000_000,
        "most_list": LARGEST_LIST // 1_000_000,
    }
    return HtmlPage("exchange.html", words, refused_status(refused) if refused else 200)
