"""What a run of the tests leaves out on this machine, and the command that installs what it needs."""

from collections.abc import Iterable

NO_CHROMIUM = "no chromium on this machine: the pages are not opened"


def untried(reasons: Iterable[str]) -> str:
    """Return one line on the tests that were skipped for these reasons; "" where a browser was there.

    >>> untried([f"Skipped: {NO_CHROMIUM}", "Skipped: no openssl"]).partition(" To try it: ")[0]
    'Not tried: 1 test that opens our pages in a browser.'
    """
    count = sum(NO_CHROMIUM in reason for reason in reasons)
    if not count:
        return ""
    which, it = ("1 test that opens", "it") if count == 1 else (f"{count} tests that open", "them")
    return (
        f"Not tried: {which} our pages in a browser."
        f" To try {it}: apt-get install chromium-headless-shell fonts-dejavu-core"
    )
