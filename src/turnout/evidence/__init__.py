"""Outside numbers with their sources, and the checks they can be held to: one home per number."""

from turnout.evidence.designs import Design, design, designs
from turnout.evidence.loader import (
    Check,
    Reference,
    Unknown,
    Value,
    checks,
    number,
    reference,
    references,
    value,
    values,
)

__all__ = [
    "Check",
    "Design",
    "Reference",
    "Unknown",
    "Value",
    "checks",
    "design",
    "designs",
    "number",
    "reference",
    "references",
    "value",
    "values",
]
