"""Schemathesis over every row of the table: whatever is sent, no answer is a fault.

ONEWHOLE_FUZZ=500 tries so many examples a row instead of a few.
"""

import os
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from random import Random
from typing import Any, cast

import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import Case, GenerationMode
from schemathesis.python import asgi

from onewhole.web.asgi import asgi_app
from onewhole.web.jobs import Job, Jobs, Outcome, Progress
from tests.kit.doors import Opened
from tests.kit.how_much import sample
from tests.kit.openapi import GOOD, document, plain
from tests.kit.rounds import lived_in
from tests.kit.routes import ROUTES

BASE = "http://127.0.0.1:8000"
EXAMPLES = int(os.environ.get("ONEWHOLE_FUZZ", sample("3", "5")))
DOCUMENT = schemathesis.openapi.from_dict(document(ROUTES))


class Idle(Jobs):
    """Long work that is started and does nothing: films are made in other tests."""

    def start(
        self,
        title: str,
        back: str,
        run: Callable[[Progress], Outcome],  # noqa: ARG002
        *,
        again: bool = False,
    ) -> Job:
        """Start work that has ended at once."""
        return super().start(title, back, lambda _progress: Outcome(back), again=again)


@dataclass(slots=True)
class Tried:
    """Sends cases to a door on the invented class, and counts what came back by row."""

    door: Opened
    client: asgi.ASGIClient
    came: dict[str, Counter[int]] = field(default_factory=dict)

    def __call__(self, row: str, case: Case[Any]) -> schemathesis.Response:
        """Send a case with the session's cookie and CSRF token."""
        heads = {"Origin": BASE, "X-CSRF-Token": self.door.csrf_token}
        cookies = {self.door.access.cookie: self.door.client.cookies[self.door.access.cookie]}
        answer = case.call(
            base_url=BASE, session=self.client, headers=heads, cookies=cookies, allow_redirects=False
        )
        self.came.setdefault(row, Counter())[answer.status_code] += 1
        return answer


@pytest.fixture(scope="module")
def send(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Tried]:
    """The door that all rows share, with a demo beside it."""
    with lived_in(tmp_path_factory.mktemp("lived")) as door:
        door.post("/demo")
        idle = replace(door, door=replace(door.door, jobs=Idle()))
        with asgi.get_client(cast("Any", asgi_app(idle.door, idle.access))) as client:
            tried = Tried(idle, client)
            yield tried
        idle.door.jobs.close()
        for row, came in sorted(tried.came.items()):
            print(row, dict(sorted(came.items())))


def _lead(case: Case[Any], chance: Random) -> None:
    """Let most of a case lead somewhere: any address alone would only find what is not there."""
    for given_values, share in ((case.path_parameters, 0.95), (case.query, 0.5), (case.body, 0.6)):
        if isinstance(given_values, dict):
            for name in sorted(set(given_values) & set(GOOD)):
                if chance.random() < share:
                    given_values[name] = chance.choice(GOOD[name])


@pytest.mark.parametrize("route", ROUTES, ids=lambda route: route.name)
def test_no_answer_is_a_fault(send: Tried, route: object) -> None:
    """What fits the form and what does not: shown, refused with reason, or not there."""
    row = next(one for one in ROUTES if one is route)
    operation = DOCUMENT[plain(row)][row.method]
    fits = operation.as_strategy(generation_mode=GenerationMode.POSITIVE)
    not_so = operation.as_strategy(generation_mode=GenerationMode.NEGATIVE)
    cases = st.one_of(fits, fits, not_so) if row.fields or row.files else fits

    @settings(
        max_examples=EXAMPLES,
        database=None,
        deadline=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(case=cases, chance=st.randoms(use_true_random=False))
    def every(case: Case[Any], chance: Random) -> None:
        _lead(case, chance)
        answer = send(row.name, case)
        assert answer.status_code < 500, f"{row.name}: {case.as_curl_command()}\n{answer.text[:300]}"

    every()
    assert set(send.came[row.name]) - {401, 403, 405, 411, 413, 415, 421}, "the page was never asked"
