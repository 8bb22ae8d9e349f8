"""The cautions every card and page carries: what to do now, why, the source and its year. Nothing is diagnosed."""

from turnout.care.box import adults_needed, care_box, youngest_age
from turnout.care.model import Caution

__all__ = ["Caution", "adults_needed", "care_box", "youngest_age"]
