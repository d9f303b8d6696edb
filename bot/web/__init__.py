"""The HTTP edge: a signed webhook in, an answer object out; errors as problem documents (RFC 9457)."""

from bot.web.app import web_app

__all__ = ["web_app"]
