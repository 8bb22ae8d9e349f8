"""The verbs of the command line and their options; the work behind each is loaded when the verb is used."""

from pathlib import Path
from typing import Annotated

import typer

from turnout import __version__

app = typer.Typer(
    name="turnout",
    help="Practices as working models: fitted to who turned up, played, drawn and printed.",
    rich_markup_mode=None,
    add_completion=False,
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
)

Json = Annotated[bool, typer.Option("--json", help="Print one JSON object instead of sentences.")]
Seed = Annotated[int, typer.Option("--seed", help="The same seed gives the same answer.", min=0, max=2**31 - 1)]
TonightFile = Annotated[Path | None, typer.Option("--tonight", help="A file with tonight's facts.")]
Space = Annotated[str | None, typer.Option("--space", help='The ground, such as "32 x 30 m" or "40 x 40 yd".')]
Minutes = Annotated[str | None, typer.Option("--minutes", help="Minutes there are, such as 60.")]


def _version(asked: bool) -> None:
    if asked:
        typer.echo(f"turnout {__version__}")
        raise typer.Exit


@app.callback()
def _turnout(
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Print the version.")
    ] = False,
) -> None:
    pass


@app.command(epilog="Example: turnout check my-practice.yaml")
def check(
    files: Annotated[list[Path], typer.Argument(help="Practice and session files, or folders of them.")],
    json: Json = False,
) -> None:
    """Say what in the files cannot be understood, and what would do."""
    from turnout.cli import check as verb

    verb.run(files, json=json)


@app.command(epilog='Example: turnout fit rainy-tuesday --players 13 --space "32 x 30 m" --minutes 60')
def fit(
    session: Annotated[str, typer.Argument(help="A session file, or the name of one on the shelf.")],
    tonight: TonightFile = None,
    players: Annotated[str | None, typer.Option("--players", help="How many came: 14, or a range 6-24.")] = None,
    space: Space = None,
    minutes: Minutes = None,
    seed: Seed = 7,
    json: Json = False,
) -> None:
    """Fit a session to the players, the space and the minutes, and say what gave way."""
    from turnout.cli import fit as verb

    verb.run(session, tonight=tonight, players=players, space=space, minutes=minutes, seed=seed, json=json)


@app.command(epilog="Example: turnout forecast busy-middle --players 11 --age U12 --level settled")
def forecast(
    what: Annotated[str, typer.Argument(help="A practice or session: a file, or a name on the shelf.")],
    players: Annotated[str | None, typer.Option("--players", help="How many play, such as 11.")] = None,
    age: Annotated[str | None, typer.Option("--age", help="The squad's age group, such as U12.")] = None,
    level: Annotated[str | None, typer.Option("--level", help="new, learning, settled or strong.")] = None,
    steps: Annotated[str | None, typer.Option("--steps", help="Steps to take first, with commas between.")] = None,
    seconds: Annotated[str, typer.Option("--seconds", help="At most so many simulated seconds a part.")] = "3600",
    seed: Seed = 7,
    json: Json = False,
) -> None:
    """Play a practice with simulated players and say how it will go."""
    from turnout.cli import forecast as verb

    verb.run(what, players=players, age=age, level=level, steps=steps, seconds=seconds, seed=seed, json=json)


@app.command(epilog="Example: turnout pack --out out")
def pack(
    session: Annotated[str | None, typer.Argument(help="A session; without one, the example evening.")] = None,
    tonight: TonightFile = None,
    players: Annotated[str | None, typer.Option("--players", help="How many came, such as 14.")] = None,
    space: Space = None,
    minutes: Minutes = None,
    seconds: Annotated[str, typer.Option("--seconds", help="At most so many simulated seconds a part.")] = "3600",
    out: Annotated[Path, typer.Option("--out", help="The folder to write into.")] = Path("out"),
    seed: Seed = 7,
    json: Json = False,
) -> None:
    """Write the evening into a folder: cards to print, a replay of each part, fits and forecasts."""
    from turnout.cli import pack as verb

    facts = {"players": players, "space": space, "minutes": minutes}
    verb.run(session, tonight=tonight, facts=facts, seconds=seconds, out=out, seed=seed, json=json)


@app.command(epilog="Example: turnout desk --no-open")
def desk(
    port: Annotated[int | None, typer.Option("--port", help="The port to listen on; without one, a free one.")] = None,
    open_: Annotated[bool, typer.Option("--open/--no-open", help="Open the desk in the browser.")] = True,
) -> None:
    """Open the desk in the browser: the evening on one page, changed in place. Only this computer can reach it."""
    from turnout.cli import desk as verb

    verb.run(port=port, open_page=open_)


def run() -> None:
    """The `turnout` command."""
    app()
