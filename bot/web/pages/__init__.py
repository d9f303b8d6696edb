"""The pages: a conversation to type and dictate in, the unit's beds in order of need, and the trend picture.

No build step: templates and static files as they stand here. No inline script, no inline style.
"""

from bot.web.pages.blueprint import pages

__all__ = ["pages"]
