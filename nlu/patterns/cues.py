"""What the words around the numbers say: phrases by label.

`(a|b|)` is a choice, empty allowed. A label is `name` or `name:value`; one phrase has one label.
The longest phrase wins.
"""

from __future__ import annotations

from .checks import CHECKS
from .events import EVENTS
from .incidents import INCIDENTS
from .levels import LEVELS
from .places import PLACES
from .replies import ANSWERS

__all__ = ["ANSWERS", "CHECKS", "EVENTS", "INCIDENTS", "LEVELS", "PLACES"]
