"""A page ready for the press: which look it takes, and its data."""

import json
from dataclasses import dataclass

Json = dict[str, object]


@dataclass(frozen=True)
class Printed:
    """One page of a kind that ``look.typ`` knows, and the data that it lays out.

    >>> Printed("key", {"title": "Kites"}).source.splitlines()[0]
    '#import "/look.typ": key'
    """

    kind: str
    data: Json

    @property
    def source(self) -> str:
        """Return the Typst source."""
        return f'#import "/look.typ": {self.kind}\n#{self.kind}(json(bytes(sys.inputs.data)))'

    @property
    def content(self) -> bytes:
        """Return the data as UTF-8 JSON."""
        return json.dumps(self.data, ensure_ascii=False, sort_keys=True).encode()
