"""What is logged of who comes in and what is refused: when, from where, what; nothing of what was typed."""

import logging
import sys
import time

_log = logging.getLogger("onewhole.web")


class _Utc(logging.Formatter):
    """A line with its time in UTC: ``2026-09-01T18:30:00Z WARNING sign-in wrong from 192.0.2.7``."""

    converter = staticmethod(time.gmtime)
    default_time_format = "%Y-%m-%dT%H:%M:%SZ"
    default_msec_format = None


def log_to_stderr() -> None:
    """Write the whole log on standard error: for a door that other machines reach."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(_Utc("%(asctime)s %(levelname)s %(message)s"))
    _log.addHandler(handler)
    _log.setLevel(logging.INFO)


def log_sign_in(outcome: str, address: str) -> None:
    """Log a try to sign in: right, wrong, or one that came too soon."""
    level = logging.INFO if outcome == "right" else logging.WARNING
    _log.log(level, "sign-in %s from %s", outcome, _plain(address))


def log_sign_out(address: str) -> None:
    """Log that a session was ended by its button."""
    _log.info("sign-out from %s", _plain(address))


def log_refusal(status: int, method: str, address: str) -> None:
    """Log a request that was refused before any page saw it; its path may hold anything and is left out."""
    _log.info("refused %d %s from %s", status, method, _plain(address))


def _plain(text: str) -> str:
    r"""Return an address as one word, whatever it is made of.

    >>> _plain("192.0.2.7"), _plain("a\nb")
    ('192.0.2.7', 'a?b')
    """
    return "".join(sign if sign.isascii() and sign.isprintable() and sign != " " else "?" for sign in text)
