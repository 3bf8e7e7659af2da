"""The libraries that only a district needs: an extra of the package, asked for where they are used."""

from importlib.util import find_spec

from onewhole.errors import InputError


def needed(library: str) -> None:
    """Refuse to go on where a library of the extra `district` is not installed. Raises InputError.

    >>> needed("polars")
    """
    if find_spec(library) is None:
        raise InputError(
            f"The library {library} is not installed",
            remedy="Install what a district needs: pip install 'onewhole[district]'.",
        )
