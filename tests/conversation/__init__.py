"""Tests of conversations and of the chat."""
