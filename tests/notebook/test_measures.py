"""Measures kept of oneself and others, told, used in questions, forgotten."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book


def test_a_measure_is_kept_told_and_forgotten(book: Book) -> None:
    assert book.done("remember my waist is 66 cm") == "Kept: your waist 66 cm."
    assert book.done("Ines's hip is 38 in") == "Kept: Ines's hip 38 in."
    assert book.told("what is my waist?") == "Your waist: 66 cm."
    assert book.told("what is Ines's hip?") == "Ines's hip: 38 in."
    assert book.done("forget Ines's hip") == "Forgotten: Ines's hip 38 in."
    assert book.refused("what is Ines's hip?") == "I have not kept Ines's hip yet."
    assert book.told("what is my waist?") == "Your waist: 66 cm."


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("my hip is 36 1/2 inches", "Kept: your hip 36 1/2 inches."),
        ("Please remember that my hip is 92cm.", "Kept: your hip 92cm."),
        ("keep my hip 92 cm", "Kept: your hip 92 cm."),
        ("my waist is 66 cm, hip 92 cm and bust 88 cm", "Kept: your waist 66 cm, hip 92 cm and bust 88 cm."),
        ("my measures are waist 66, hip 92, bust 88 cm", "Kept: your waist 66 cm, hip 92 cm and bust 88 cm."),
        ("my hip is 94 cm now", "Kept: your hip 94 cm."),
        ("I'm 5 ft 6 tall", "Kept: your height 5 ft 6."),
        ("my tension is 22 sts and 30 rows to 10 cm", "Kept: your tension 22 sts and 30 rows to 10 cm."),
        ("Tomas’s inside leg is 81 cm", "Kept: Tomas's inside leg 81 cm."),
        ("Ines' hip is 98 cm", "Kept: Ines's hip 98 cm."),
        ("my hips are 98 cm", "Kept: your hip 98 cm."),
        ("Remember: my bust is 88 cm", "Kept: your bust 88 cm."),
        ("Ines has a 70 cm waist", "Kept: Ines's waist 70 cm."),
        ("Ines is 70 cm round the waist", "Kept: Ines's waist 70 cm."),
        ("Tomas is 5 ft 11 tall", "Kept: Tomas's height 5 ft 11."),
        ("my daughter's waist is 58 cm", "Kept: your daughter's waist 58 cm."),
        ("Ines's measurements: bust 92 cm, waist 70 cm", "Kept: Ines's bust 92 cm and waist 70 cm."),
        ("measurements for Ines: bust 92 cm, waist 70 cm", "Kept: Ines's bust 92 cm and waist 70 cm."),
    ],
)
def test_ways_to_say_a_measure(book: Book, said: str, kept: str) -> None:
    assert book.done(said) == kept


def test_a_measure_said_again_takes_the_place_of_the_first_and_says_so(book: Book) -> None:
    book.done("my hip is 92 cm")
    made = book.ask("my hip is 94 cm")
    assert made.notes == ("Before, hip was 92 cm.",)
    assert book.told("what's my hip") == "Your hip: 94 cm."


def test_all_measures_of_a_person_are_told_and_forgotten(book: Book) -> None:
    book.done("Ines's bust is 92 cm", "Ines's waist is 70 cm", "my waist is 66 cm")
    assert book.told("what are Ines's measurements?") == "Ines's measures: bust 92 cm and waist 70 cm."
    assert book.done("forget Ines") == "Forgotten: Ines's bust 92 cm and waist 70 cm."
    assert book.told("my measures") == "Your measures: waist 66 cm."


def test_a_number_without_a_unit_is_asked_about_and_not_guessed(book: Book) -> None:
    assert (
        book.refused("my waist is 66")
        == "I read the number 66, but not its unit, so nothing was kept. Type: 66 in, or 66 cm."
    )
    book.done("work in centimetres")
    assert book.done("my waist is 66") == "Kept: your waist 66 cm."


@pytest.mark.parametrize("said", ["my waist is 0 cm", "my waist is -3 cm"])
def test_a_measure_must_be_more_than_nothing(book: Book, said: str) -> None:
    assert "must be more than nothing" in book.refused(said)
    assert not book.path.exists()


def test_the_result_is_there_for_programs(book: Book) -> None:
    book.done("my waist is 66 cm")
    (result,) = book.ask("what is my waist?").results
    assert (result.name, result.value, result.unit, result.text) == ("waist", 66, "cm", "66 cm")


# -- used in questions -------------------------------------------------------------------------------------------------


def whence(book: Book, line: str) -> list[tuple[str, str]]:
    """(the text, why) of what an answer took from the notebook."""
    made = book.ask(line)
    assert made.status == "answered", made.message
    return [(value.text, value.why) for value in made.given if value.why.endswith("from the notebook")]


def test_elastic_for_my_waist(book: Book) -> None:
    book.done("my waist is 66 cm", "my hip is 92 cm")
    assert whence(book, "elastic for my waist") == [("66 cm", "your waist, from the notebook")]
    typed = book.ask("elastic for a 66 cm waist")
    assert book.ask("elastic for my waist").results == typed.results


def test_ease_at_the_bust_for_ines(book: Book) -> None:
    book.done("my bust is 88 cm", "Ines's bust is 92 cm")
    made = book.ask("ease at the bust for Ines if the blouse measures 96 cm")
    assert made.results[0].text == "4 cm"  # 96 - 92
    assert book.ask("ease at my bust if the blouse measures 96 cm").results[0].text == "8 cm"  # 96 - 88
    assert made.question == "ease at the bust for Ines if the blouse measures 96 cm"


def test_a_question_for_someone_takes_what_it_still_needs(chat: Book) -> None:
    chat.done("my waist is 66 cm", "Ines's waist is 70 cm", "Tomas's waist is 84 cm")
    assert whence(chat, "full circle skirt for Ines, 60 cm long, in 150 cm wide cloth") == [
        ("70 cm", "Ines's waist, from the notebook")
    ]
    assert whence(chat, "and for Tomas?") == [("84 cm", "Tomas's waist, from the notebook")]


def test_my_daughters_measure_is_not_mine(book: Book) -> None:
    book.done("my waist is 66 cm", "my daughter's waist is 58 cm")
    assert whence(book, "elastic for my daughter's waist") == [("58 cm", "your daughter's waist, from the notebook")]
    assert whence(book, "elastic for my waist") == [("66 cm", "your waist, from the notebook")]
    assert book.done("forget my daughter") == "Forgotten: your daughter's waist 58 cm."


def test_what_is_typed_goes_before_what_is_kept(book: Book) -> None:
    book.done("my waist is 66 cm")
    for line in (
        "elastic for my waist 70 cm",
        "elastic for my 70 cm waist",
        "elastic for my waist, 70 cm",
        "elastic, my waist measurement is 70 cm",
    ):
        made = book.ask(line)
        assert "70 cm" in [value.text for value in made.given], line
        assert "66 cm" not in [value.text for value in made.given], line


def test_a_question_that_names_nobody_takes_nothing(book: Book) -> None:
    book.done("my waist is 66 cm")
    made = book.ask("elastic for a waist")
    assert made.status == "incomplete"


def test_a_follow_up_of_a_filled_question_keeps_what_was_filled(chat: Book) -> None:
    chat.done("my waist is 66 cm")
    chat.told("elastic for my waist")
    made = chat.ask("in inches")
    assert ("66 cm", "your waist, from the notebook") in [(value.text, value.why) for value in made.given]


def test_a_number_with_a_word_of_its_own_is_not_the_measure(book: Book) -> None:
    book.done("remember my waist is 66 cm")
    assert whence(book, "elastic for my waist, 2.5 cm wide") == [("66 cm", "your waist, from the notebook")]
    assert book.ask("elastic for my waist, 70 cm, 2.5 cm wide").results[0].text == "67 cm"


def test_measures_are_kept_after_a_name_and_a_colon(book: Book) -> None:
    book.done("remember Ines: waist 72 cm, hips 98 cm, bust 90 cm")
    assert book.told("what is Ines's hip?").endswith("98 cm.")
