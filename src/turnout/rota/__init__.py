"""Fair turns: who is where in every block."""

from turnout.rota.model import BlockPlaces, PartRota
from turnout.rota.rotating import rota_for

__all__ = ["BlockPlaces", "PartRota", "rota_for"]
