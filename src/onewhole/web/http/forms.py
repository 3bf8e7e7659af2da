"""A form is read within its limits: bytes, fields, files, time, and what a text may hold."""

import re
from collections.abc import Sequence

import anyio
from msgspec import Struct
from python_multipart.exceptions import FormParserError
from starlette.datastructures import FormData
from starlette.exceptions import HTTPException
from starlette.formparsers import MultiPartException
from starlette.requests import ClientDisconnect, Request
from starlette.types import Message, Receive

from onewhole.web.http.request import Upload

#: The most fields of a form.
MAX_FIELDS = 2000
#: Control signs but for blanks and the ends of lines of any program, and lone surrogates.
_UNWRITTEN = re.compile("[\0-\x08\x0e-\x1f\x7f-\x84\x86-\x9f\ud800-\udfff]")
_KINDS = ("application/x-www-form-urlencoded", "multipart/form-data")


class NotRead(HTTPException):
    """A request that no page function gets: `what` is wrong with it, and what to do next."""

    def __init__(self, status: int, what: str, remedy: str = "") -> None:
        super().__init__(status, f"{what}. {remedy}".rstrip())
        self.what, self.remedy = what, remedy


class SubmittedForm(Struct, frozen=True):
    """What was sent: every field and every file by its field, in their order."""

    fields: tuple[tuple[str, str], ...]
    files: tuple[tuple[str, Upload], ...] = ()


async def read_form(
    request: Request, *, most: int, files: Sequence[str], seconds: float, most_files: int = 1
) -> SubmittedForm:
    """Read a form of at most ``most`` bytes that comes in within so many seconds, with these files only.

    Of each field with files there are ``most_files`` at most.

    What was said about the length is not believed: the bytes are counted too. Raises NotRead (400, 408,
    411, 413, 415, 422).
    """
    _check_head(request, most)
    # Without "app" it tells why it cannot read a form by an exception of its own, which is worded below.
    scope = {name: value for name, value in request.scope.items() if name != "app"}
    counted = Request(scope, _counted(request.receive, most))
    try:
        with anyio.fail_after(seconds):
            form = await counted.form(
                max_files=len(files) * most_files, max_fields=MAX_FIELDS, max_part_size=most
            )
            return await _read(form, files)
    except TimeoutError:
        raise NotRead(408, "The form came in too slowly", "Send it once more.") from None
    except (MultiPartException, FormParserError, UnicodeError, ClientDisconnect) as error:
        raise _unread(error, most_files) from error


def _unread(error: Exception, most_files: int) -> NotRead:
    """Say why a form cannot be read, and what to do."""
    if isinstance(error, MultiPartException) and error.message.startswith("Too many fields"):
        return NotRead(
            400, f"The form has more than {MAX_FIELDS} fields", "Send less at once; nothing was changed."
        )
    if (
        most_files > 1
        and isinstance(error, MultiPartException)
        and error.message.startswith("Too many files")
    ):
        return NotRead(
            413, f"These are more than {most_files} files", "Send them in two goes; nothing was changed."
        )
    return NotRead(400, "The form cannot be read", "Load the page again.")


def _check_head(request: Request, most: int) -> None:
    length = request.headers.get("content-length", "")
    if "transfer-encoding" in request.headers or not (length.isascii() and length.isdecimal()):
        raise NotRead(411, "A form says how long it is")
    if len(length) > 12 or int(length) > most:
        raise _too_large(most)
    kind, _, more = request.headers.get("content-type", "").lower().partition(";")
    charset = more.partition("charset=")[2].partition(";")[0].strip(' "')
    if charset not in {"", "utf-8"} or (int(length) and kind.strip() not in _KINDS):
        raise NotRead(415, "A form of this kind is not read here")


def _too_large(most: int) -> NotRead:
    return NotRead(
        413, f"At most {size(most)} may be sent", "Send less, or choose a smaller file; nothing was changed."
    )


def _counted(receive: Receive, most: int) -> Receive:
    seen = 0

    async def receiving() -> Message:
        nonlocal seen
        message = await receive()
        seen += len(message.get("body", b""))
        if seen > most:
            raise _too_large(most)
        return message

    return receiving


async def _read(form: FormData, files: Sequence[str]) -> SubmittedForm:
    fields: list[tuple[str, str]] = []
    uploads: list[tuple[str, Upload]] = []
    try:
        for name, value in form.multi_items():
            if isinstance(value, str):
                fields.append((_plain(name), _plain(value)))
            elif name in files:
                kind = value.content_type or ""
                uploads.append((name, Upload(_plain(value.filename or ""), kind, await value.read())))
            else:
                raise NotRead(422, "A file was sent that is not asked for", "Nothing was changed.")
    finally:
        await form.close()
    return SubmittedForm(tuple(fields), tuple(uploads))


def _plain(text: str) -> str:
    """Return a text that can be kept and written; refuse NUL, escapes and their like, and half a sign."""
    if _UNWRITTEN.search(text):
        raise NotRead(422, "The form holds a sign that cannot be written", "Type it again without it.")
    return text


def size(count: int) -> str:
    """Return a number of bytes in words.

    >>> size(524288), size(3145728)
    ('512 KiB', '3 MiB')
    """
    return f"{count // 1024} KiB" if count < 1024 * 1024 else f"{count // (1024 * 1024)} MiB"
