"""Tests of the conversation, on real messages through the real intake."""
