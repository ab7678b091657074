"""Lines in, one JSON answer a line out: what `ellwand --json` does, for use before it is installed."""

from __future__ import annotations

import json
import sys

from assistant.conversation import Conversation
from tests.support import mind


def main() -> None:
    conversation = Conversation(mind())
    for line in sys.stdin:
        if "--together" not in sys.argv:
            conversation.forget()
        made = conversation.ask(line.rstrip("\n"))
        table = made.table
        print(json.dumps({
            "status": made.status, "topic": made.topic, "message": made.message, "cautions": made.cautions,
            "missing": [{"name": one.name, "ask": one.ask} for one in made.missing],
            "results": [{"name": one.name, "value": one.value, "unit": one.unit, "text": one.text} for one in made.results],
            "table": table and {"columns": [{"name": n, "unit": u} for n, u in table.columns], "rows": table.rows},
        }), flush=True)  # fmt: skip


if __name__ == "__main__":
    main()
