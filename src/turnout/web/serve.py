"""Start the desk on this computer's own loopback, and nowhere else."""

import socket
import threading
import webbrowser
from collections.abc import Callable
from types import FrameType
from typing import TYPE_CHECKING

from turnout.evening.load import Evening, load_evening
from turnout.evening.values import refuse
from turnout.web.guard import Pass

if TYPE_CHECKING:
    import uvicorn

LOOPBACK = "127.0.0.1"


def listen(port: int | None) -> socket.socket:
    """A listening socket on loopback, on the port asked for or a free one; raises BadInput when it is taken."""
    plug = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    plug.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        plug.bind((LOOPBACK, port or 0))
        plug.listen(64)
    except OSError:
        plug.close()
        refuse("--port", port, "a port nothing else listens on; leave --port out to get a free one")
    return plug


def serve(*, port: int | None, open_page: bool, say: Callable[[str], object], evening: Evening | None = None) -> None:
    """Serve the desk until it is interrupted. Says the first address, which carries the start token."""
    import uvicorn

    from turnout.web.app import create_app
    from turnout.web.desk import Desk

    plug = listen(port)
    allowed = Pass(port=plug.getsockname()[1])
    desk = Desk(evening or load_evening(None))
    config = uvicorn.Config(
        create_app(desk, allowed), log_level="warning", lifespan="off", server_header=False, proxy_headers=False,
        timeout_graceful_shutdown=2,
    )  # fmt: skip
    say(f"The desk is open at {allowed.first_address}")
    say("Only this computer can reach it. Ctrl-C closes it.")
    if open_page:
        threading.Timer(0.3, webbrowser.open, args=[allowed.first_address]).start()
    try:
        server_telling(desk.closed, config).run(sockets=[plug])
    finally:
        desk.closed.set()
        plug.close()


def server_telling(closed: threading.Event, config: "uvicorn.Config") -> "uvicorn.Server":
    """A server that says so at the first sign of its end, so that no play goes on behind it."""
    import uvicorn

    class Server(uvicorn.Server):
        def handle_exit(self, sig: int, frame: FrameType | None) -> None:
            closed.set()
            super().handle_exit(sig, frame)

    return Server(config)
