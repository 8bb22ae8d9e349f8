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
Seed = Annotated[str, typer.Option(metavar="N", help="The same seed gives the same answer.")]
TonightFile = Annotated[Path | None, typer.Option("--tonight", metavar="FILE", help="A file with tonight's facts.")]
Players = Annotated[str | None, typer.Option(metavar="N", help="How many came, such as 14.")]
Turnouts = Annotated[str | None, typer.Option("--players", metavar="N", help="How many came: 14, or a range 6-24.")]
Space = Annotated[str | None, typer.Option(metavar="SIZE", help='The ground: "32 x 30 m", "third of 3G".')]
Minutes = Annotated[str | None, typer.Option(metavar="MIN", help="Minutes there are, such as 60.")]
Age = Annotated[str | None, typer.Option(metavar="AGE", help="The age group; without it U12 or tonight's.")]
Level = Annotated[str | None, typer.Option(metavar="LEVEL", help="new, learning, settled or strong; else learning.")]
Steps = Annotated[str | None, typer.Option(metavar="NAME,...", help="Steps to take first, with commas between.")]
Seconds = Annotated[str, typer.Option(metavar="S", help="At most so many simulated seconds a part.")]
Out = Annotated[str, typer.Option(metavar="FOLDER", help="The folder to write into.")]
Port = Annotated[str | None, typer.Option(metavar="PORT", help="The port to listen on; without one, a free one.")]
Open = Annotated[bool, typer.Option("--open/--no-open", help="Open the desk in the browser.")]
Files = Annotated[list[Path], typer.Argument(metavar="FILES", help="Practice and session files, or folders of them.")]
SessionName = Annotated[str, typer.Argument(metavar="SESSION", help="A session file, or the name of one on the shelf.")]
AnySession = Annotated[str | None, typer.Argument(metavar="SESSION", help="A session; without it the example evening.")]
Tidy = Annotated[bool, typer.Option("--tidy", help="Write sentences back as they are printed; the rest stays.")]
ShelfWords = Annotated[list[str] | None, typer.Argument(metavar="WORDS", help="Words that must stand in a practice.")]
ClearSpace = Annotated[
    str | None, typer.Option(metavar="SIZE", help='The ground there is: "32 x 30 m", "third of 3G".')
]
PartMinutes = Annotated[str | None, typer.Option(metavar="MIN", help="How long the practice is to last, such as 12.")]
AnyAge = Annotated[str | None, typer.Option(metavar="AGE", help="The age group, such as U11.")]
Role = Annotated[str | None, typer.Option(metavar="ROLE", help="A role or side it must have, such as edge or neutral.")]
Scored = Annotated[
    str | None, typer.Option(metavar="WORDS", help='What must score, such as "passes in a row" or goal.')
]
Either = Annotated[str, typer.Argument(metavar="PRACTICE|SESSION", help="A file, or a name on the shelf.")]


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
def check(files: Files, tidy: Tidy = False, json: Json = False) -> None:
    """Say what in the files cannot be understood, and what would do."""
    from turnout.cli import check as verb

    verb.run(files, tidy=tidy, json=json)


@app.command(epilog='Example: turnout fit hold-and-break --players 13 --space "32 x 30 m" --minutes 60')
def fit(
    session: SessionName,
    tonight: TonightFile = None,
    players: Turnouts = None,
    space: Space = None,
    minutes: Minutes = None,
    seed: Seed = "7",
    json: Json = False,
) -> None:
    """Fit a session to the players, the space and the minutes, and say what gave way."""
    from turnout.cli import fit as verb

    verb.run(session, tonight=tonight, players=players, space=space, minutes=minutes, seed=seed, json=json)


@app.command(epilog="Example: turnout forecast harbour-square --players 11 --age U12 --level settled")
def forecast(
    what: Either,
    players: Players = None,
    age: Age = None,
    level: Level = None,
    steps: Steps = None,
    seconds: Seconds = "3600",
    seed: Seed = "7",
    json: Json = False,
) -> None:
    """Play a practice with simulated players and say how it will go."""
    from turnout.cli import forecast as verb

    verb.run(what, players=players, age=age, level=level, steps=steps, seconds=seconds, seed=seed, json=json)


@app.command(epilog="Example: turnout pack --out out")
def pack(
    session: AnySession = None,
    tonight: TonightFile = None,
    players: Players = None,
    space: Space = None,
    minutes: Minutes = None,
    seconds: Seconds = "14400",
    out: Out = "out",
    seed: Seed = "7",
    json: Json = False,
) -> None:
    """Write the evening into a folder: cards to print, a replay of each part, fits and forecasts."""
    from turnout.cli import pack as verb

    facts = {"players": players, "space": space, "minutes": minutes}
    verb.run(session, tonight=tonight, facts=facts, seconds=seconds, out=out, seed=seed, json=json)


@app.command(epilog="Example: turnout desk --no-open")
def desk(port: Port = None, open_page: Open = True) -> None:
    """Open the desk in the browser: the evening on one page, changed in place. Only this computer can reach it."""
    from turnout.cli import desk as verb

    verb.run(port=port, open_page=open_page)


@app.command(epilog="Example: turnout shelf --players 13 --minutes 15 --scored passes")
def shelf(
    words: ShelfWords = None,
    players: Players = None,
    space: ClearSpace = None,
    minutes: PartMinutes = None,
    age: AnyAge = None,
    role: Role = None,
    scored: Scored = None,
    json: Json = False,
) -> None:
    """List the practices there are, or those that take what you have."""
    from turnout.cli import shelf as verb

    asked = {"players": players, "space": space, "minutes": minutes, "age": age, "role": role, "scored": scored}
    verb.run(words or [], asked=asked, json=json)


def run() -> None:
    """The `turnout` command."""
    app()
