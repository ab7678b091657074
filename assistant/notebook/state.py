"""What is being spoken of: the project in hand, and the thing that "it" stands for. It outlives the program."""

from __future__ import annotations

from .page import Page, Thing

KIND = "state"
IT, PROJECT, TABLE = "it", "project", "table"


def point_at(page: Page, stock: str) -> None:
    """From now on, "it" is this thing in hand."""
    page.put(KIND, IT, {"name": stock})


def pointed_at(page: Page, kind: str) -> Thing | None:
    here = page.get(KIND, IT)
    return page.get(kind, here.body["name"]) if here is not None else None


def point_at_table(page: Page, called: str) -> None:
    """From now on, the size table "it" is this one."""
    page.put(KIND, TABLE, {"name": called})


def table_pointed_at(page: Page) -> str:
    """The name of the size table spoken of last, or ""."""
    here = page.get(KIND, TABLE)
    return str(here.body["name"]) if here is not None else ""


def open_project(page: Page, name: str) -> None:
    """From now on, what is said of a project is said of this one; "" for none."""
    page.put(KIND, PROJECT, {"name": name})


def current(page: Page) -> Thing | None:
    """The project in hand, or None."""
    here = page.get(KIND, PROJECT)
    return page.get("project", here.body["name"]) if here is not None and here.body["name"] else None
