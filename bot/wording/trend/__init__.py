"""The picture of a trend as SVG, and the same in words. Pure; called by the web edge."""

from bot.wording.trend.picture import picture
from bot.wording.trend.small import small_picture
from bot.wording.trend.words import picture_facts, picture_title, picture_words

__all__ = ["picture", "picture_facts", "picture_title", "picture_words", "small_picture"]
