"""turnout desk"""

import typer

from turnout.cli.answer import answering
from turnout.evening.values import whole_number

PORTS = (1024, 65535)


def run(*, port: str | None, open_page: bool) -> None:
    """Serve the desk until it is stopped with Ctrl-C."""
    with answering("desk", json=False) as answer:
        wanted = None if port is None else whole_number(port, name="--port", low=PORTS[0], high=PORTS[1], what="a port")
        from turnout.web.serve import serve

        serve(port=wanted, open_page=open_page, say=typer.echo)
        answer.text = "The desk is closed."
