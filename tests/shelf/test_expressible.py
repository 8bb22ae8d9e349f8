"""Everything a practice language has to be able to say is said by a practice of the shelf, and not by its name only.

Each line of the list names a practice and a property computed from its people, places and when/then table.
"""

from collections.abc import Callable

import pytest
from shelf_shown import ALL, Shown, shown

from turnout.practice.model import GOALS, Group
from turnout.practice.steps import with_steps


def opponents(it: Shown) -> list[list[Group]]:
    """The groups of each side that plays for itself and does not wait."""
    aside = {group.side for row in it.doing("plays for") for group in it.meant(row)}
    sides = [side for side in it.practice.sides if side not in aside]
    found = [[g for g in it.practice.groups if g.side == side and not g.waits] for side in sides]
    return [groups for groups in found if groups]


def on_edges(it: Shown) -> list[Group]:
    return [group for group in it.practice.groups if group.home.on_edge]


def overload_turns_round(it: Shown) -> bool:
    more = [g for g in it.practice.groups if g.tie and g.tie.offset == -1 and not g.home.on_edge]
    moved = {(row.do, row.who.kind, row.who.whose) for row in it.rows if row.when and row.when.act
             and row.when.act.kind == "win and pass"}  # fmt: skip
    both = {("comes in", "nearest", "its"), ("goes out", "farthest", "other")}
    return bool(more) and len({g.side for g in on_edges(it)}) == 2 and both <= moved


def groups_change_over(it: Shown) -> bool:
    runs = it.scoring("passes in a row")
    swaps = [row for row in it.on("score", "change over") if row.who.kind == row.target.kind == "its role"]  # type: ignore[union-attr]
    sizes = [[it.setup.count(g.key) for g in groups] for groups in opponents(it)]
    return bool(runs and swaps) and any(max(counts) > min(counts) for counts in sizes)


def passer_follows(it: Shown) -> bool:
    return any({row.who.kind, row.target.kind} == {"passer", "receiver"} for row in it.on("pass to", "exchange"))  # type: ignore[union-attr]


def edges_still_or_moving(it: Shown) -> bool:
    held = {g.key for row in it.doing("stand still") for g in it.meant(row)}
    moves = [with_steps(it.practice, [step.name]) for step in it.practice.steps]
    freed = [p for p in moves if any(r.phrase.form == "move along" for r in p.rules)
             and not any(r.phrase.form == "stand still" for r in p.rules)]  # fmt: skip
    return bool(on_edges(it)) and {g.key for g in on_edges(it)} <= held and bool(freed)


def some_passes_count(it: Shown) -> bool:
    return bool(it.doing("only passes count")) and bool(it.scoring("passes in a row"))


def neutrals(it: Shown, where: Callable[[Group], bool]) -> bool:
    helpers = it.helpers()
    return len(helpers) >= 1 and all(map(where, helpers)) and it.limited(helpers) and it.rotated(helpers)


def neutrals_inside(it: Shown) -> bool:
    field = it.practice.ground[0].name
    return it.setup.count("neutral") == 2 and neutrals(it, lambda g: g.home.place == field and not g.home.on_edge)


def neutrals_wide(it: Shown) -> bool:
    return neutrals(it, lambda g: g.home.on_edge and g.home.sides == ("long",)) and bool(it.doing("attacks"))


def neutrals_at_the_ends(it: Shown) -> bool:
    ends = {place.name for place in it.practice.ground if place.kind == "strip"}
    return len(ends) == 2 and neutrals(it, lambda g: g.home.place in ends) and len(it.helpers()) == 2


def zones_worth_different_points(it: Shown) -> bool:
    worth = {(row.who.side, row.value): it.singles(act.where.place) for row, act in it.scored()
             if act.kind == "receive in" and act.where}  # fmt: skip
    by_side = {side: {value for other, value in worth if other == side} for side, _ in worth}
    zones = {side: sum(len(names) for (other, _), names in worth.items() if other == side) for side, _ in worth}
    return len(by_side) == 2 and all(len(v) > 1 for v in by_side.values()) and min(zones.values()) >= 3


def sheltered(it: Shown) -> bool:
    """By touches as written, by seconds with a step taken."""
    from turnout.practice.meaning import table

    def until(rows) -> set[str]:  # type: ignore[no-untyped-def]
        return {r.until.act.kind for r in rows if r.do == "no tackle" and r.where and r.until and r.until.act}

    taken = [until(table(with_steps(it.practice, [step.name]))) for step in it.practice.steps]
    return until(it.rows) == {"touches"} and {"keep for"} in taken


def helper_of_its_own(it: Shown) -> bool:
    lone = [g for g in on_edges(it) if g.count == 1]
    return len({g.side for g in lone}) == 2 and len({g.home.sides for g in lone}) == 2 and not it.doing("plays for")


def wide_defends_second_levels(it: Shown) -> bool:
    comes = {row.who.whose: row.when.act.count for row in it.on("passes in a row", "comes in")}  # type: ignore[union-attr]
    back = {row.who.whose for row in it.on("win and pass", "goes back")}
    return set(comes) == {"its", "other"} and comes["other"] < comes["its"] and back == {"its", "other"}


def small_inside_large(it: Shown) -> bool:
    field = it.practice.ground[0].name
    held = [row for row in it.doing("stay in") if row.until and row.until.kind == "ball leaves"]
    inner = {row.where.place for row in held if row.where}
    return len(inner) == 1 and field not in inner and it.case.within(*inner, field) and len(held) == 2


def four_v_four_and_three(it: Shown) -> bool:
    sizes = [sum(it.setup.count(g.key) for g in groups) for groups in opponents(it)]
    helpers = it.helpers()
    inside = [g for g in helpers if not g.home.on_edge]
    positional = all(g.without for groups in opponents(it) for g in groups)
    return sizes == [4, 4] and sum(it.setup.count(g.key) for g in helpers) == 3 and len(inside) == 1 and positional


def end_zones_by_pass_or_run(it: Shown) -> bool:
    ways = {
        (row.who.side, act.kind) for row, act in it.scored() if act.where and it.kinds(act.where.place) == {"strip"}
    }
    return {(side, kind) for side in ("amber", "blue") for kind in ("receive in", "run into")} <= ways


def four_small_goals(it: Shown) -> bool:
    ends = [it.singles(row.where.place) for row in it.doing("attacks") if row.where]
    small = {name for end in ends for name in end if it.kinds(name) == {"small goal"}}
    return [len(end) for end in ends] == [2, 2] and len(small) == 4


def goals_with_keepers(it: Shown) -> bool:
    return len({g.side for g in it.practice.groups if g.keeper}) == 2 and len(it.doing("attacks")) == 2


def two_boxes(it: Shown) -> bool:
    ways = {(act.where.place, act.further.place) for act in it.scoring("move from to") if act.where and act.further}
    apart = all(it.case.apart(*way) for way in ways)
    own = {g.home.place for groups in opponents(it) for g in groups}
    return (
        len(ways) == 2 and {way[::-1] for way in ways} == ways and apart and own == {end for way in ways for end in way}
    )


def waves(it: Shown) -> bool:
    (attack, *_), defend = opponents(it)
    out = [g for g in defend if not g.keeper]
    fed = {key for g in it.practice.groups if g.waits for key in g.feeds}
    counter = [row for row in it.doing("attacks") if row.who.side == out[0].side]
    sizes = (it.setup.count(attack.key), sum(it.setup.count(g.key) for g in out))
    return sizes == (3, 2) and {attack.key, out[0].key} <= fed and bool(counter) and bool(it.doing("turn lasts"))


def duel(it: Shown, each: int) -> bool:
    sizes = [sum(it.setup.count(g.key) for g in groups) for groups in opponents(it)]
    gates = [act for act in it.scoring("run through") if act.where and it.kinds(act.where.place) == {"gate"}]
    return sizes == [each, each] and len(gates) >= 2


def build_up(it: Shown) -> bool:
    thirds = [place.name for place in it.practice.ground if place.kind == "part" and place.pieces == 3]
    start = next((row for row in it.doing("starts") if row.when is None), None)
    through = [(a.where.place, a.further.place) for a in it.scoring("move from to") if a.where and a.further]
    from_keeper = start is not None and all(group.keeper for group in it.meant(start))
    return from_keeper and (thirds[0], thirds[-1]) in through if len(thirds) == 3 else False


def target_player(it: Shown) -> bool:
    targets = {act.to.role for act in it.scoring("pass to") if act.to}
    homes = [g.home.place for g in it.practice.groups if g.role in targets]
    return len(homes) == 2 and all(it.kinds(home) == {"strip"} for home in homes)


def bounce_players(it: Shown) -> bool:
    after = [row.event.act.kind for row in it.doing("score after") if row.event and row.event.act]
    one = [row for row in it.doing("touches", value=1) if it.meant(row) == it.helpers()]
    return after == ["one-two"] and bool(one) and bool(it.helpers())


def regain_in_seconds(it: Shown) -> bool:
    return any(
        act.kind == "win" and row.after and row.after.kind == "lose" and row.within_s for row, act in it.scored()
    )


def pairs_through_gates(it: Shown) -> bool:
    units = [g for g in it.practice.groups if g.of == 2]
    gates = [act for act in it.scoring("pass through") if act.where and it.kinds(act.where.place) == {"gate"}]
    return bool(units and gates) and it.practice.balls_in_play == "per unit" and it.setup.players >= 8


def unopposed_choices(it: Shown) -> bool:
    goes = {row.target.role for row in it.on("pass to", "joins") if row.target and row.who.kind == "passer"}
    shut = {(row.passes.first.role, row.passes.second.role) for row in it.doing("no passes")
            if row.passes and row.passes.first and row.passes.second}  # fmt: skip
    open_ = {role: [to for to in goes if to != role and (role, to) not in shut] for role in goes}
    return len(opponents(it)) == 1 and len(goes) >= 3 and all(len(ways) >= 2 for ways in open_.values())


def finishing_with_servers(it: Shown) -> bool:
    served = [g for row in it.doing("first pass") for g in it.meant(row)]
    again = [g for row in it.doing("new ball") for g in it.meant(row)]
    shots = [row for row in it.doing("must") if row.act and row.act.kind == "shoot"]
    return bool(served) and {g.key for g in served} == {g.key for g in again} and bool(shots)


def dribbling_many_balls(it: Shown) -> bool:
    return it.practice.balls_in_play == "per player" and bool(it.scoring("run through")) and len(opponents(it)) == 1


def winner_stays(it: Shown) -> bool:
    off = [row for row in it.on("score", "rotate") + it.on("score", "exchange")
           if {"other role", "next group"} == {who.kind for who in (row.who, row.target) if who}]  # fmt: skip
    return bool(off) and any(g.waits and it.setup.count(g.key) >= 3 for g in it.practice.groups)


def loser_changes(it: Shown) -> bool:
    swaps = [row for row in it.on("score", "change over") if row.who.kind == "other side" and row.target]
    third = [g for row in swaps for g in it.practice.groups if g.side == row.target.side]  # type: ignore[union-attr]
    return bool(third) and set(third) == set(it.helpers()) and len(it.practice.sides) == 3


def joins_who_is_behind(it: Shown) -> bool:
    return bool(it.helpers("side behind"))


LINES: tuple[tuple[str, str, Callable[[Shown], bool]], ...] = (
    ("inside overload with edge players of both sides, turning round on a regain", "harbour-square",
     overload_turns_round),
    ("target runs of passes and change-over of whole groups, those left over next", "turn-of-the-tide",
     groups_change_over),
    ("passer follows the pass out and the receiver comes in", "sea-wall", passer_follows),
    ("fixed or moving edge players", "sea-wall", edges_still_or_moving),
    ("only some passes counting", "ballast", some_passes_count),
    ("neutrals inside with a touch limit, changed every few minutes", "breakwater", neutrals_inside),
    ("neutrals wide with a touch limit, changed every few minutes", "twin-quays", neutrals_wide),
    ("neutrals at the ends with a touch limit, changed every few minutes", "signal-lamps", neutrals_at_the_ends),
    ("several scoring zones worth different points", "tide-marks", zones_worth_different_points),
    ("sheltered zones with a touch or time limit after which a defender may enter", "safe-moorings", sheltered),
    ("an own helper for each side instead of neutrals", "pilot-boats", helper_of_its_own),
    ("a wide player comes in to defend, a second one levels, both go wide on a regain", "side-winds",
     wide_defends_second_levels),
    ("a small practice inside the area of the next one", "inner-basin", small_inside_large),
    ("4v4+3 positional keep-ball", "three-lanterns", four_v_four_and_three),
    ("end-zone game by pass or run", "breakwater", end_zones_by_pass_or_run),
    ("four small goals", "four-coves", four_small_goals),
    ("goals with keepers", "open-water", goals_with_keepers),
    ("two-box transition game", "two-docks", two_boxes),
    ("waves, 3v2 and a counter, with waiting lines and rest", "long-waves", waves),
    ("1v1 duels to gates", "narrow-channel", lambda it: duel(it, 1)),
    ("2v2 duels to gates", "paired-buoys", lambda it: duel(it, 2)),
    ("build-up from the keeper through thirds", "out-of-harbour", build_up),
    ("target-player game", "lighthouse", target_player),
    ("bounce-player game", "echo-wall", bounce_players),
    ("regain within seconds worth a point", "undertow", regain_in_seconds),
    ("gates passing in pairs, many balls at once", "lock-gates", pairs_through_gates),
    ("unopposed passing pattern with choices", "rope-walk", unopposed_choices),
    ("finishing with servers", "slipways", finishing_with_servers),
    ("dribbling with many balls", "rowing-boats", dribbling_many_balls),
    ("three-team rotation, winner stays", "ferry-turn", winner_stays),
    ("three-team rotation, loser changes", "changing-watch", loser_changes),
    ("a player joining the side that is behind", "spare-hand", joins_who_is_behind),
)  # fmt: skip


@pytest.mark.parametrize(("line", "key", "says"), LINES, ids=[line for line, _, _ in LINES])
def test_a_line_is_said_by_its_practice(line: str, key: str, says: Callable[[Shown], bool]) -> None:
    assert says(shown(key)), line


@pytest.mark.parametrize(("line", "key", "says"), LINES, ids=[line for line, _, _ in LINES])
def test_and_not_by_whatever_practice_there_is(line: str, key: str, says: Callable[[Shown], bool]) -> None:
    others = [other for other in ALL if other != key and holds(says, shown(other))]
    assert len(others) <= len(ALL) // 4, f"{line}: {others}"


def holds(says: Callable[[Shown], bool], it: Shown) -> bool:
    """Whether a property holds; one that asks for groups a practice has not does not."""
    try:
        return says(it)
    except (KeyError, ValueError, IndexError):
        return False


def test_goals_are_of_both_kinds_over_the_shelf() -> None:
    assert {place.kind for key in ALL for place in shown(key).practice.ground} >= {*GOALS, "gate", "strip", "part"}
