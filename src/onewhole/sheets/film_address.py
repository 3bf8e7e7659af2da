"""The address of a film: it is printed for families, and must be one that a phone opens safely."""

import re

from onewhole.errors import InputError

#: A square code of a longer one has squares too small for a copier; a shared link is shorter as a rule.
LONGEST_ADDRESS = 150
_PART = "[a-z0-9](?:[a-z0-9-]*[a-z0-9])?"
_HOST = re.compile(rf"(?:{_PART}\.)+[a-z](?:[a-z0-9-]*[a-z0-9])(?::[0-9]{{1,5}})?", re.IGNORECASE)
#: What may stand behind the host. Source: RFC 3986, 2.2 and 2.3, without the brackets of 3.2.2.
_REST = re.compile(r"(?:[/?#][A-Za-z0-9._~:/?#@!$&'()*+,;=%-]*)?")
_COPY = "Copy it from the address line of the browser that shows the film."


class AddressError(InputError):
    """An address cannot be printed for families."""


def check_address(said: str) -> None:
    """Refuse what is no address of a page that a phone opens safely; empty is no address at all.

    It begins with https://, names a place with a dot in its name and nobody's sign-in, and has no blank or
    letter outside ASCII, which an address line writes with %.

    >>> check_address("https://films.example.org/room12?night=3")
    >>> check_address("http://films.example.org")
    Traceback (most recent call last):
    ...
    onewhole.sheets.film_address.AddressError: “http://films.example.org” does not begin with https://. Copy \
it from the address line of the browser that shows the film.
    """
    if not said:
        return
    shown = f"“{said[:40]}”"
    scheme, host_and_rest = said[: len("https://")], said[len("https://") :]
    host = re.split("[/?#]", host_and_rest, maxsplit=1)[0]
    if scheme.lower() != "https://":
        raise AddressError(f"{shown} does not begin with https://", remedy=_COPY)
    if len(said) > LONGEST_ADDRESS:
        msg = f"{shown} is {len(said)} characters long, and a printed address has {LONGEST_ADDRESS} at most"
        raise AddressError(msg, remedy="Use a short link: places that keep films and files make them.")
    if "@" in host:
        raise AddressError(f"{shown} holds somebody's sign-in", remedy="Use a link that opens without one.")
    if not _HOST.fullmatch(host):
        raise AddressError(f"{shown} names no place on the internet", remedy=_COPY)
    if not _REST.fullmatch(host_and_rest[len(host) :]):
        raise AddressError(f"{shown} has a blank or a sign that no address has", remedy=_COPY)
