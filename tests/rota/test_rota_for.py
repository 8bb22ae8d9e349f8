"""The rota of whole sessions: everybody placed once, turns even, sides kept, the same names the same answer."""

from collections import Counter
from dataclasses import replace

import pytest
from toy_practices import (
    QUARTER,
    THIRD,
    end_zones,
    keep_ball,
    overload,
    session_of,
    shelf_session,
    tonight,
    toy_session,
)

from turnout.fit import fit_session
from turnout.rota import rota_for
from turnout.rota.copy_blocks import CopyTask, fill, shares, twice_running
from turnout.session.model import Part

NAMES = tuple("ABCDEFGHIJKLMNOPQRSTUVWX")


def places(block) -> list[str]:
    return [label for _, labels in block.who for label in labels] + list(block.waiting)


def turns_of(rota, keys) -> dict[str, int]:
    """How often each label holds one of these groups."""
    counts = Counter(dict.fromkeys(places(rota.blocks[0]), 0))
    for block in rota.blocks:
        counts.update(label for (_, key), labels in block.who if key in keys for label in labels)
    return dict(counts)


@pytest.mark.parametrize("space", [THIRD, QUARTER], ids=lambda space: space.name)
@pytest.mark.parametrize("players", range(8, 25))
def test_everybody_has_one_place_in_every_block_and_groups_are_full(players, space):
    for session in (shelf_session(), toy_session()):
        fitted = fit_session(session, tonight(players, space))
        rotas = rota_for(fitted, NAMES)
        assert len(rotas) == len(fitted.parts)
        for part, rota in zip(fitted.parts, rotas, strict=True):
            assert [block.minutes for block in rota.blocks] == list(part.blocks)
            for block in rota.blocks:
                assert sorted(places(block)) == sorted(NAMES[:players])
                for (copy, key), labels in block.who:
                    assert len(labels) == part.copies[copy].setup.count(key)
                assert len(block.waiting) == sum(copy.waiting for copy in part.copies)


@pytest.mark.parametrize("players", range(8, 25))
def test_turns_are_as_even_as_arithmetic_allows_and_nobody_waits_twice_running(players):
    for space in (THIRD, QUARTER):
        fitted = fit_session(toy_session(), tonight(players, space))
        for rota in rota_for(fitted, NAMES):
            assert rota.optimal, (players, rota.note)
            for before, after in zip(rota.blocks, rota.blocks[1:], strict=False):
                assert not set(before.waiting) & set(after.waiting)


def test_the_stated_spread_is_what_is_counted():
    fitted = fit_session(toy_session(), tonight(13))
    keep, over, ends = rota_for(fitted, NAMES)
    for rota, part, kinds in (
        (keep, fitted.parts[0], ["blue"]),
        (ends, fitted.parts[2], ["neutral"]),
    ):
        spreads = []
        for copy in range(len(part.copies)):
            members = {label for (at, _), labels in rota.blocks[0].who if at == copy for label in labels}
            turns = turns_of(rota, kinds)
            spreads.append(max(turns[label] for label in members) - min(turns[label] for label in members))
        assert rota.spread == max(spreads)
    edge = turns_of(over, ["amber edge", "blue edge"])
    assert max(edge.values()) - min(edge.values()) <= 1


def test_sides_stay_where_nobody_waits_and_no_rule_swaps():
    fitted = fit_session(session_of(Part(overload(), 20)), tonight(14, minutes=20))
    (rota,) = rota_for(fitted, NAMES)
    sides = [{label: key.split()[0] for (_, key), labels in block.who for label in labels} for block in rota.blocks]
    assert all(side == sides[0] for side in sides)
    assert "Sides stay" in rota.note


def test_defenders_of_six_are_the_exact_design():
    fitted = fit_session(session_of(Part(keep_ball(minutes=(30, 40)), 37)), tonight(6, minutes=37))
    (rota,) = rota_for(fitted, NAMES)
    assert len(rota.blocks) == 15
    pairs = [tuple(sorted(dict(block.who)[(0, "blue")])) for block in rota.blocks]
    assert len(set(pairs)) == 15
    assert rota.spread == rota.bound == 0


def test_names_keep_their_colour_as_often_as_can_be():
    fitted = fit_session(toy_session(), tonight(16))
    worn = dict.fromkeys(NAMES[:16], "own")
    for part, rota in zip(fitted.parts, rota_for(fitted, NAMES), strict=True):
        first = {}
        for (copy, key), labels in rota.blocks[0].who:
            side = part.copies[copy].setup.practice.group(key).side
            first.update(dict.fromkeys(labels, dict(part.copies[copy].bibs)[side]))
        needed, had = Counter(first.values()), Counter(worn.values())
        fewest = sum(max(0, count - had[colour]) for colour, count in needed.items())
        assert sum(worn[label] != colour for label, colour in first.items()) == fewest
        for block in rota.blocks:
            for (copy, key), labels in block.who:
                side = part.copies[copy].setup.practice.group(key).side
                worn.update(dict.fromkeys(labels, dict(part.copies[copy].bibs)[side]))


def test_who_waited_least_waits_first():
    crowded = session_of(Part(end_zones(), 12), Part(end_zones(), 12))
    fitted = fit_session(crowded, tonight(19, QUARTER, minutes=26))
    assert all(copy.waiting for part in fitted.parts for copy in part.copies)
    waits = Counter(dict.fromkeys(NAMES[:19], 0))
    for rota in rota_for(fitted, NAMES):
        waits.update(label for block in rota.blocks for label in block.waiting)
    assert max(waits.values()) - min(waits.values()) <= 1


def test_missing_labels_are_numbers_and_doubles_are_refused():
    fitted = fit_session(toy_session(), tonight(9))
    names = places(rota_for(fitted, ("2", "Ben"))[0].blocks[0])
    assert len(set(names)) == 9 and {"2", "Ben"} <= set(names)
    with pytest.raises(ValueError, match="twice: Ben"):
        rota_for(fitted, ("Ben", "Ben"))


def test_the_same_names_get_the_same_rota():
    fitted = fit_session(toy_session(), tonight(17))
    assert rota_for(fitted, NAMES) == rota_for(fitted, NAMES)


def test_nothing_fitted_is_no_rota():
    assert rota_for(replace(fit_session(toy_session(), tonight(3)), parts=())) == ()


@pytest.mark.parametrize("blocks", range(1, 9))
@pytest.mark.parametrize(("inside", "edge", "waiting"), [(3, 2, 0), (4, 3, 1), (4, 4, 2), (2, 2, 3)])
def test_waiting_and_roles_share_out_together(inside, edge, waiting, blocks):
    groups = (
        ("a inside", "a", "inside", inside),
        ("b inside", "b", "inside", inside),
        ("a edge", "a", "edge", edge),
        ("b edge", "b", "edge", edge),
    )
    task = CopyTask(groups, (), waiting, blocks)
    rows = fill(task, [None] * (2 * inside + 2 * edge + waiting))
    assert not any(twice_running(row) for row in rows)
    assert all(spread == bound for spread, bound, _, _ in shares(task, rows).values())
    for block in range(blocks):
        held = Counter(row[block] for row in rows)
        assert held == Counter({key: count for key, _, _, count in groups} | ({"waiting": waiting} if waiting else {}))
