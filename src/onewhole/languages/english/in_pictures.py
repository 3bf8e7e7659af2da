"""What is found in the pictures of papers, and what a teacher may do about it."""

from typing import assert_never

from onewhole.findings.in_pictures import (
    HalfPage,
    Nobody,
    NoPage,
    NotFlat,
    OtherPage,
    PageMissing,
    PagesLeft,
    PictureFinding,
    PicturesLeft,
    PictureUnread,
    SameTwice,
    Unread,
)
from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.sentences.node import Counted, Thing, Typed
from onewhole.sentences.sentence import Sentences

_MARK = Thing("mark", "marks", None)
_PAGE = Thing("page", "pages", None)
_FILE = Thing("file", "files", None)


def found_in_pictures(found: PictureFinding, known_as: str = "") -> Sentences:
    """Say what was found; ``known_as`` is what the other page is, where the teacher has it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(found_in_pictures(HalfPage("desk.jpg", 2)))
    'In desk.jpg: only 2 marks of a page are in the picture, and 3 are needed.'
    >>> text_of(found_in_pictures(HalfPage("desk.jpg", 1)))
    'In desk.jpg: only 1 mark of a page is in the picture, and 3 are needed.'
    >>> text_of(found_in_pictures(OtherPage("desk.jpg", 140, 1), "Tuesday, November 24"))
    'In desk.jpg: this was printed from another page: page 1 of Tuesday, November 24.'
    """
    match found:
        case PictureUnread(picture, why, most):
            return told(_of(picture), *_unread(why, most))
        case PagesLeft(picture, read, there):
            rest = (", and only the first", Counted(read, _PAGE), "were looked at")
            return told(_of(picture), "it has", Counted(there, _PAGE), rest)
        case PicturesLeft(read):
            return told("only the first", Counted(read, _FILE), "were looked at")
        case NoPage(picture):
            return told(_of(picture), "no page with marks in its corners is in the picture")
        case HalfPage(picture, marks):
            are = "is" if marks == 1 else "are"
            seen = ("only", Counted(marks, _MARK), f"of a page {are} in the picture")
            return told(_of(picture), seen, ", and", bare(3), "are needed")
        case NotFlat(picture):
            return told(_of(picture), "a page is there, and it does not fit the page that was printed")
        case OtherPage(picture, _, page):
            which = (": page", bare(page), "of", Typed(known_as)) if known_as else ()
            return told(_of(picture), "this was printed from another page", which)
        case Nobody(picture, page, stranger):
            told_by = "the code is of nobody in this class" if stranger else "no code can be read on it"
            return told(_of(picture), "whose page", bare(page), "this is is not known:", told_by)
        case SameTwice(pupil, page, taken, left):
            twice = ("of", Typed(pupil), "page", bare(page), "is there twice")
            return told(twice, ";", Typed(taken), "is sharper and was taken, not", Typed(left))
        case PageMissing(pupil, pages):
            numbers = listed([(bare(page),) for page in pages])
            many = "pages" if len(pages) > 1 else "page"
            return told(
                "of", Typed(pupil), many, numbers, "is not there" if len(pages) == 1 else "are not there"
            )
        case _:
            assert_never(found)


def pictures_mended(found: PictureFinding) -> Sentences:
    """Say what may be done about it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(pictures_mended(NoPage("desk.jpg")))
    'Take the picture from above, with all four corners of the paper in it. Blur or glare hides the marks.'
    """
    match found:
        case PictureUnread(why=why):
            return _again(why)
        case PagesLeft() | PicturesLeft():
            return told("read the others after these")
        case NoPage():
            return (*_from_above(), *told("blur or glare hides the marks"))
        case HalfPage():
            return _from_above()
        case NotFlat():
            return told("lay the paper flat, without a fold over a corner, and take the picture again")
        case OtherPage():
            return told("read it with the page that it was printed from, or print this page anew")
        case Nobody():
            return told("say whose page it is, or type these answers")
        case SameTwice():
            return told("look whether both are this pupil's")
        case PageMissing():
            return told("take a picture of it too, or type these answers")
        case _:
            assert_never(found)


def _from_above() -> Sentences:
    return told("take the picture from above, with all four corners of the paper in it")


def _of(picture: str) -> Nodes:
    return ("in", Typed(picture), ":")


def _unread(why: Unread, most: int) -> Nodes:
    match why:
        case Unread.NO_PICTURE:
            return ("this is no picture that can be read",)
        case Unread.CUT:
            return ("the file ends before the picture does",)
        case Unread.DAMAGED:
            return ("the file is damaged",)
        case Unread.LOCKED:
            return ("the file is locked with a password",)
        case Unread.EMPTY:
            return ("the file is empty",)
        case Unread.BYTES:
            return ("the file has more than", bare(most), "MB")
        case Unread.PIXELS:
            return ("the picture has more than", bare(most), "megapixels")
        case Unread.EFFORT:
            return ("it would take too much memory or time to read",)
        case _:
            assert_never(why)


def _again(why: Unread) -> Sentences:
    match why:
        case Unread.NO_PICTURE:
            return told("save it as JPEG, PNG, HEIC, TIFF or PDF")
        case Unread.CUT | Unread.DAMAGED | Unread.EMPTY:
            return told("copy it from the phone or scanner again")
        case Unread.LOCKED:
            return told("save it without a password")
        case Unread.BYTES:
            return told("save its pages as several files")
        case Unread.PIXELS | Unread.EFFORT:
            return told("take the picture in the usual size of the phone, or scan it at", bare(300), "dpi")
        case _:
            assert_never(why)
