"""Reading files that people write: text with line and column, every fault located, nothing trusted."""

from turnout.reading.load import Document, load, load_text
from turnout.reading.nearest import nearest
from turnout.reading.nodes import Items, Node, Pairs, Text
from turnout.reading.report import Report

__all__ = ["Document", "Items", "Node", "Pairs", "Report", "Text", "load", "load_text", "nearest"]
