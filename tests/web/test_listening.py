"""The socket that the door listens on."""

import socket

import pytest

from onewhole.errors import InputError
from onewhole.web.serving import listening

pytestmark = pytest.mark.enable_socket


def test_an_answer_goes_out_at_once() -> None:
    """Its second part does not wait until the first is acknowledged, whoever called."""
    with listening("127.0.0.1", 0) as taken, socket.create_connection(taken.getsockname()):
        answering, _ = taken.accept()
        with answering:
            assert answering.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY) != 0


def test_a_port_that_is_taken_is_refused() -> None:
    """With the way to give another."""
    with listening("127.0.0.1", 0) as taken, pytest.raises(InputError, match="--port"):
        listening("127.0.0.1", taken.getsockname()[1])
