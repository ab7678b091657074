"""What the grammar may refuse to read. Each carries what is needed to say so in words."""

from __future__ import annotations


class GrammarError(ValueError):
    """Anything the grammar refuses."""


class TooLong(GrammarError):
    """A line of more characters than anybody types. length: its characters; limit: the most that are read."""

    def __init__(self, length: int, limit: int) -> None:
        super().__init__(
            f"That line has {length:,} characters, and I read lines of up to {limit:,}. "
            "Type one question a line, such as: elastic for a 28 in waist"
        )
        self.length = length
        self.limit = limit


class TooDeep(GrammarError):
    """Brackets or signs nested more deeply than is read. position: where it becomes too deep; limit: the most read."""

    def __init__(self, position: int, limit: int) -> None:
        super().__init__(f"Sums are read {limit} levels deep at most. Work it out in parts, such as: (2 m - 35 cm) * 3")
        self.position = position
        self.limit = limit


class FormulaError(GrammarError):
    """A formula that cannot be read. message: what is wrong; position: where in the text, from 0."""

    def __init__(self, message: str, position: int) -> None:
        super().__init__(f"{message} (at position {position})")
        self.message = message
        self.position = position
