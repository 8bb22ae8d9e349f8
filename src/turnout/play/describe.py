"""The numbers of the simulator as Markdown tables, for docs/model.md: `python -m turnout.play.describe`."""

from turnout.play.abilities import AGE_FACTOR, LADDERS, LEVELS, SPREAD
from turnout.play.kernel import columns as c
from turnout.play.kernel.weights import TABLE, Weight

ABILITY_NAMES = {
    c.AIM_SD: "spread of a pass's direction (rad)", c.WEIGHT_SD: "spread of its speed (share)",
    c.CONTROL_S: "time to control (s)", c.CLEAN: "clean first touch, easy ball (chance)",
    c.TACKLES: "tackling (share of the rate)", c.NOISE: "doubt in choosing (worth)", c.SCAN: "looks round (1/s)",
    c.THINK_S: "thinking time (s)", c.SPOT_NOISE: "doubt in choosing a spot (worth)",
    c.WEAK: "wider with the other foot (times)", c.RELEASE_S: "from decision to kick (s)",
    c.MOVE_S: "between off-ball decisions (s)",
    c.MOVE_PACE: "pace off the ball (share of top)", c.DISGUISE_S: "added to opponents' reaction (s)",
}  # fmt: skip


def weights_table() -> str:
    """Every weight: value, range, unit, what holds it (pinned, loose, free), and from where."""
    rows = [
        f"| {name} | {w.value:g} | {w.low:g}–{w.high:g} | {w.unit} | {w.held} | {_told(w)} |"
        for name, w in TABLE.items()
    ]
    return "\n".join(["| weight | value | range | unit | held | from, or what it says |", "|---" * 6 + "|", *rows])


def _told(weight: Weight) -> str:
    return weight.source.removeprefix(weight.held).lstrip(":, ")


def ladders_table() -> str:
    """Every ability by level, at U14, with what a year under U14 and the spread between players change."""
    head = f"| capability | ability | {' | '.join(LEVELS)} | a year under U14 | between players |"
    rows = [
        f"| {capability} | {ABILITY_NAMES[column]} | {' | '.join(f'{rung:g}' for rung in rungs)} "
        f"| {_share(AGE_FACTOR.get(column))} | {_share(SPREAD.get(column))} |"
        for capability, ladder in LADDERS.items()
        for column, rungs in ladder.items()
    ]
    return "\n".join([head, "|---" * (len(LEVELS) + 4) + "|", *rows])


def _share(value: float | None) -> str:
    return "–" if value is None else f"{100 * value:g} %"


if __name__ == "__main__":
    print(f"{weights_table()}\n\n{ladders_table()}")
