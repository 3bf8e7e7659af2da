"""A class's answers for the district: a download without names."""

from onewhole.desk.district.school_key import KEY_FILE, school_key
from onewhole.desk.district.sharing import SHARING_CAUTION, shared_archive, shared_nights
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, HtmlPage, refused_status


def look(request: PageRequest) -> HtmlPage:
    """Ask for the school's name, and say what is in the files."""
    return _shown(request)


def give(request: PageRequest) -> Content | HtmlPage:
    """Give a file a night, all in one archive. The school's key is made where there is none."""
    school = request.field("school", "").strip()
    try:
        key = school_key(request.book.path.parent / KEY_FILE)
        nights = shared_nights(request.book, request.number("room"), school, key)
        if not nights:
            raise InputError("Nobody's paper is here yet", remedy="Come back after a night is marked.")
    except InputError as refused:
        return _shown(request, refused)
    return Content(shared_archive(nights, school), "application/zip", "answers-for-the-district.zip")


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    words: dict[str, object] = {
        "caution": SHARING_CAUTION,
        "key": KEY_FILE,
        "school": request.field("school", ""),
        "refused": refused,
    }
    return HtmlPage("class_share.html", words, refused_status(refused) if refused else 200)
