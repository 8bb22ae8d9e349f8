"""The desk listens on this computer's own loopback only."""

import socket

import pytest

from turnout.problems import BadInput
from turnout.web.guard import Pass
from turnout.web.serve import listen


def test_it_listens_on_loopback_and_nowhere_else():
    with listen(None) as plug:
        address, port = plug.getsockname()
        assert address == "127.0.0.1" and port > 0
        with socket.create_connection(("127.0.0.1", port), timeout=2):
            pass
        with pytest.raises(OSError), socket.create_connection(("127.0.0.2", port), timeout=2):
            pass


def test_a_taken_port_is_told():
    with listen(None) as plug, pytest.raises(BadInput, match="a port nothing else listens on"):
        listen(plug.getsockname()[1])


def test_every_start_has_secrets_of_its_own():
    one, other = Pass(port=8123), Pass(port=8123)
    assert one.token != other.token and one.secret != other.secret and one.token != one.secret
    assert one.secret not in one.first_address
