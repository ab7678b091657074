"""Projects: what was kept, changed, paid and noted; what is left to buy."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book

STRIPS = "how many 2 1/2 in binding strips for a 60 x 72 in quilt"


def notes(book: Book, line: str) -> tuple[str, ...]:
    made = book.ask(line)
    assert made.status == "done", made.message
    return made.notes


def test_an_answer_is_kept_with_what_it_buys_and_cuts(book: Book) -> None:
    book.done("start project lantern quilt")
    head = book.told(STRIPS)
    made = book.ask("keep that")
    assert made.headline == f"Kept for lantern quilt: {head}"
    assert made.notes[0] == "On the shopping list: cloth for the binding 1/2 yd."
    assert made.notes[1] == "On the cut list: 7 strips (strip width 2 1/2 in) and length of binding 274 in."
    story = book.ask("what did I do on the lantern quilt?")
    assert story.results[0].text == f"{STRIPS}: {head}"


def test_the_same_in_a_chat(chat: Book) -> None:
    chat.done("start project lantern quilt")
    chat.told(STRIPS)
    assert chat.ask("usable width 36 in").results[0].text == "8 strips"
    assert (
        notes(chat, "keep that")[0] == "On the shopping list: cloth for the binding 5/8 yd."
    )  # 8 of 2 1/2 in are 20 in, 0.556 yd


def test_keep_that_needs_an_answer_and_a_project(book: Book) -> None:
    assert book.refused("keep that").startswith("There is no answer to keep yet.")
    book.told(STRIPS)
    assert book.refused("keep that") == "I do not know which project to keep it for."
    assert book.done("keep that for lantern quilt").startswith("Kept for lantern quilt: Cut 7 strips")
    assert book.told("projects") == "Projects: lantern quilt (in hand)."


def test_what_is_bought_can_be_given_its_name(book: Book) -> None:
    book.done("start project lantern quilt")
    book.told(STRIPS)
    assert notes(book, "keep that as red lawn")[0] == "On the shopping list: red lawn 1/2 yd."


CHANGES = (
    "shortened the sleeves 3/4 in",
    "I shortened the sleeves 3/4 in",
    "lengthened the bodice by 2 cm",
    "took in the side seams 1 cm",
    "cut the straps 2 cm longer",
    "swapped the lining for lawn",
)


@pytest.mark.parametrize("said", CHANGES)
def test_changes_of_ones_own_are_kept_as_they_were_said(book: Book, said: str) -> None:
    book.done("start project harbour tote")
    assert book.done(said) == f"Kept for harbour tote: {said.removeprefix('I ')}."
    assert [result.text for result in book.ask("what did I do on the harbour tote").results] == [
        said.removeprefix("I ")
    ]


def test_a_change_without_a_project_asks_for_one(book: Book) -> None:
    assert book.refused("shortened the sleeves 3/4 in") == "I do not know which project this is for."


def test_what_it_cost(book: Book) -> None:
    book.done(
        "start project harbour tote",
        "paid £4.20 for the zip",
        "bought 2 m of navy linen at £9 a metre",
        "the thread cost £1.15",
    )
    made = book.ask("what did it cost?")
    # by hand: 4.20 + 18.00 + 1.15 = 23.35
    assert made.headline == "Harbour tote cost £23.35: zip £4.20, navy linen £18.00 and thread £1.15."
    assert (made.results[0].value, made.results[0].unit) == (23.35, "GBP")
    assert made.working[0].numbers == "£4.20 + £18.00 + £1.15"
    assert book.told("what did I pay for the zip?") == "Zip cost £4.20: zip £4.20."


def test_two_currencies_are_not_added_together(book: Book) -> None:
    book.done("start project harbour tote", "paid £4 for the zip", "paid $3 for thread", "paid £1 for tape")
    assert [result.text for result in book.ask("what did it cost?").results] == ["£5.00", "$3.00"]


def test_what_is_left_to_buy(book: Book) -> None:
    book.done(
        "start project harbour tote",
        "need 1.2 m of navy linen",
        "add 2 zips to the shopping list",
        "need 3 m of webbing",
    )
    assert book.told("what is left to buy?") == "To buy: 1.2 m of navy linen, 2 zips and 3 m of webbing."
    book.done("paid £4.20 for the zips")
    assert book.told("what is left to buy?") == "To buy: 1.2 m of navy linen and 3 m of webbing."
    book.done("bought 1 m of navy linen for £9")
    assert book.told("what's left to buy") == "To buy: 0.2 m of navy linen and 3 m of webbing."
    book.done("bought 50 cm of navy linen", "bought 3 m of webbing")
    assert book.told("what do I still need to buy?").startswith("There is nothing left to buy")


def test_cloth_used_for_a_project_is_not_to_be_bought_again(book: Book) -> None:
    book.done("start project harbour tote", "need 1.2 m of navy linen", "I have 2 m of navy linen", "use 1.2 m of it")
    assert book.told("what is left to buy").startswith("There is nothing left to buy")
    book.done("use 80 cm of it", "start project second tote", "need 50 cm of navy linen")
    assert book.told("what is left to buy") == "To buy: 0.5 m of navy linen."


def test_things_are_crossed_off_the_list(book: Book) -> None:
    book.done(
        "add 3 buttons to the shopping list", "add 1 zip to the shopping list", "add 2 m of tape to the shopping list"
    )
    assert book.done("cross off the buttons") == "Off the shopping list: buttons."
    assert book.done("remove the zip from the shopping list") == "Off the shopping list: zip."
    assert book.refused("cross off the ribbon") == "There is no ribbon on the shopping list."
    assert book.done("clear the shopping list") == "Off the shopping list: tape."
    book.done("undo", "undo")
    assert book.told("shopping list") == "To buy: 1 zip and 2 m of tape."


def test_notes(book: Book) -> None:
    assert book.done("note: the sea room is cold in March") == "Noted: the sea room is cold in March"
    book.done(
        "start project harbour tote", "note: press the hem before the lining goes in", "start project lantern quilt"
    )
    book.done("note for harbour tote: pocket 2 cm lower next time")
    made = book.ask("notes for the harbour tote")
    assert made.table is not None
    assert [row[1] for row in made.table.texts] == [
        "press the hem before the lining goes in",
        "pocket 2 cm lower next time",
    ]
    everything = book.ask("my notes").table
    assert everything is not None
    assert len(everything.rows) == 3
    assert "no project called" in book.refused("note for the winter coat: 3 cm more")


def test_projects_are_gone_back_to_and_finished(book: Book) -> None:
    book.done("start project harbour tote", "add 1 zip to the shopping list", "start project lantern quilt 2")
    assert book.told("projects") == "Projects: harbour tote and lantern quilt 2 (in hand)."
    assert book.done("back to the harbour tote").startswith("Project harbour tote is in hand again")
    book.done("finish project")
    assert book.told("projects") == "Projects: harbour tote (finished) and lantern quilt 2."
    assert book.told("shopping list").startswith("The shopping list is empty.")
    assert "no project called winter coat" in book.refused("finish project winter coat")


def test_a_plan_is_kept_in_one_sentence_with_its_own_cut_list(chat: Book) -> None:
    chat.done("start project harbour tote")
    plan = chat.ask("plan a tote 35 cm wide, 40 cm high, 10 cm deep in 140 cm canvas at £9/m, with lining")
    assert plan.cut is not None
    made = chat.ask("keep that")
    assert made.notes[0] == "On the shopping list: outer cloth 0.6 m and lining 0.5 m."
    table = chat.ask("cut list").table
    assert table is not None
    assert [row[1] for row in table.texts] == [f"{row[0]}, from {row[4]}" for row in plan.cut.texts]
    assert ("2 of 10 cm × 68 cm", "strap, from outer cloth", "tote bag plan", "harbour tote") in table.texts
    listed = chat.ask("shopping list")
    assert listed.headline.startswith("To buy: 0.6 m of outer cloth")
    assert listed.notes == ("Not in the total, since no price is known: lining.",)
    assert "£5.40" in listed.headline  # 0.6 m at £9


def test_an_answer_is_added_to_a_project_shown_and_the_project_finished_by_its_name(chat: Book) -> None:
    chat.done("start project lantern quilt")
    chat.told("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    chat.done("add this to the lantern quilt")
    made = chat.ask("show the lantern quilt")
    assert "Cut 7 strips for the binding" in " ".join(result.text for result in made.results)
    assert chat.done("finish lantern quilt").startswith("Project lantern quilt is finished")
