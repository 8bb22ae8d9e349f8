"""What stands where, and what is moved between parts."""

from turnout.layout.laying import lay_out
from turnout.layout.model import Item, Layout, PartLayout

__all__ = ["Item", "Layout", "PartLayout", "lay_out"]
