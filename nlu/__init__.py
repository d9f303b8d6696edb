"""Read what a nurse typed or a recogniser wrote: `parse` and its result types are the whole public face."""

from .read import Hypothesis, parse
from .statements import Parsed, Span, Statement, Unclear

__all__ = ["Hypothesis", "Parsed", "Span", "Statement", "Unclear", "parse"]
