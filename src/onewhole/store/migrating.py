"""The steps that bring a file forward: which there are, and a file brought to one of them."""

from functools import cache
from pathlib import Path
from threading import Lock

from alembic import command
from alembic.config import Config
from alembic.script import ScriptDirectory
from sqlalchemy import Connection

from onewhole.store.digest_check import check_rows
from onewhole.store.digests import Doubts, fill_digests, has_digests
from onewhole.store.transaction import driver_of

#: Alembic keeps what it works on in places of the whole program: one thread at a time.
_TURN = Lock()


def bring_forward(connection: Connection, step: str = "head") -> None:
    """Bring a file to a step, by default the newest; all steps are in the transaction that has begun.

    At the newest its rows get the digests of what they hold now; what was told as damaged before is told
    after it as well.
    """
    raw = driver_of(connection)
    doubts = check_rows(raw).doubts if has_digests(raw) else Doubts()
    config = _config()
    config.attributes["connection"] = connection
    with _TURN:
        command.upgrade(config, step)
    if step == "head":
        fill_digests(raw, doubts)


@cache
def known_steps() -> tuple[str, ...]:
    """Every step of this release, the first one first.

    >>> known_steps()[0]
    '0001'
    """
    steps = ScriptDirectory.from_config(_config()).walk_revisions()
    return tuple(reversed([step.revision for step in steps]))


def _config() -> Config:
    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations").replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    return config
