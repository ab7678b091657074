"""The conversation: command line, chat, context, notebook, rendering. Holds no trade sum."""

from __future__ import annotations

__version__ = "0.1.0"
