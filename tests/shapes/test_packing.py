"""Tidy packing, checked with shapely and against plain counting; toy cases first."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import box as shape

from turnout.shapes.packing import Piece, Spot, most_in_row, pack


def clear(spots: tuple[Spot, ...], piece: Piece, across: float, up: float) -> bool:
    """Inside, the right size, and a gap apart, by shapely."""
    polygons = [shape(spot.box.x0, spot.box.y0, spot.box.x1, spot.box.y1) for spot in spots]
    room = shape(0, 0, across, up).buffer(1e-6)
    sizes = [sorted((spot.box.across, spot.box.up)) for spot in spots]
    near = [a.distance(b) < piece.gap - 1e-6 for n, a in enumerate(polygons) for b in polygons[:n]]
    return (
        all(room.contains(polygon) for polygon in polygons)
        and all(size == pytest.approx(sorted((piece.across, piece.up))) for size in sizes)
        and not any(near)
    )


def test_one_square_lies_in_the_middle():
    (spot,) = pack(1, Piece(10, 10, 3), across=30, up=20) or ()
    assert spot.box.centre == (15, 10)
    assert not spot.turned


def test_three_squares_lie_in_a_row_rather_than_with_a_hole():
    spots = pack(3, Piece(10, 10, 3), across=60, up=40) or ()
    assert len({spot.box.y0 for spot in spots}) == 1 or len({spot.box.x0 for spot in spots}) == 1


def test_a_piece_is_turned_only_when_it_must():
    upright = pack(1, Piece(10, 20, 3), across=30, up=30)
    lying = pack(1, Piece(10, 20, 3), across=30, up=15)
    assert upright is not None and lying is not None
    assert not upright[0].turned
    assert lying[0].turned


def test_two_grids_find_what_no_single_grid_does():
    # 4 x 6 pieces in 10 x 10: two upright or two lying, but three when one lies over two that stand.
    piece = Piece(4, 6, 0)
    assert most_in_row(10, 4, 0) * most_in_row(10, 6, 0) == 2
    spots = pack(3, piece, across=10, up=10)
    assert spots is not None
    assert clear(spots, piece, 10, 10)
    assert {spot.turned for spot in spots} == {True, False}


def test_what_is_too_much_is_refused():
    assert pack(3, Piece(10, 10, 3), across=22.9, up=10) is None
    assert pack(2, Piece(10, 10, 3), across=22.9, up=10) is None
    assert pack(2, Piece(10, 10, 3), across=23, up=10) is not None


@settings(max_examples=300, deadline=None)
@given(
    count=st.integers(1, 8),
    across=st.floats(4, 30),
    up=st.floats(4, 30),
    gap=st.floats(0, 6),
    room=st.tuples(st.floats(5, 70), st.floats(5, 70)),
)
def test_every_packing_is_clear_and_the_grid_bound_holds(count, across, up, gap, room):
    piece = Piece(across, up, gap)
    spots = pack(count, piece, across=room[0], up=room[1])
    if spots is None:
        grids = [
            most_in_row(room[0], *side) * most_in_row(room[1], *other)
            for side, other in (((across, gap), (up, gap)), ((up, gap), (across, gap)))
        ]
        assert max(grids) < count
    else:
        assert len(spots) == count
        assert clear(spots, piece, *room)


@settings(max_examples=60, deadline=None)
@given(count=st.integers(1, 6), side=st.floats(5, 15), room=st.tuples(st.floats(10, 60), st.floats(10, 60)))
def test_more_room_never_hurts(count, side, room):
    piece = Piece(side, side * 1.4, 3)
    if pack(count, piece, across=room[0], up=room[1]) is not None:
        assert pack(count, piece, across=room[0] + 1, up=room[1]) is not None
        assert pack(count, piece, across=room[0], up=room[1] + 1) is not None
