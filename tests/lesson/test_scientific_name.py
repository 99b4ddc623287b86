"""Names taken apart, after the International Code of Nomenclature (Shenzhen Code, 2018).

The Articles beside the tests are the outside source, and the names those of its examples.
What stands there as `from memory` has not been compared with the page by a second reader.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.scientific_name import read_scientific_name


def faults(name: str) -> list[tuple[str, int, str, str]]:
    """Return the faults of a name: kind, place, word and what is offered."""
    found = read_scientific_name(name).faults
    return [(f.kind, f.text.span.start, f.text.value, f.offer) for f in found]


def silent(name: str) -> bool:
    """Return whether a name is well formed."""
    return faults(name) == []


@pytest.mark.parametrize(
    "name",
    ["Adiantum capillus-veneris", "Atropa bella-donna", "Impatiens noli-tangere",
     "Cornus sanguinea", "Papaver rhoeas"],
)  # fmt: skip
def test_a_species_is_a_genus_and_one_epithet(name: str) -> None:
    """Articles 23.1 and 23.2 with their first example (the last two names from memory)."""
    assert silent(name)


def test_the_words_of_an_epithet_are_joined_by_a_hyphen() -> None:
    """Article 23.1: epithets of two words are to be united or hyphenated."""
    assert faults("Adiantum capillus veneris") == [
        ("two epithets", 18, "veneris", "capillus-veneris")
    ]


def test_a_tautonym_is_no_name() -> None:
    """Article 23.4 with its example."""
    assert faults("Linaria linaria") == [("tautonym", 8, "linaria", "")]


def test_an_epithet_that_nearly_repeats_the_genus_is_let_pass() -> None:
    """Article 23.4 forbids exact repetition only; `Cajanus cajan` is in use (from memory)."""
    assert silent("Cajanus cajan (L.) Huth")


def test_a_genus_has_a_capital() -> None:
    """Article 20.1."""
    assert faults("allium ursinum L.") == [("genus capital", 0, "allium", "Allium")]
    assert faults("ALLIUM ursinum L.") == [("genus capital", 0, "ALLIUM", "Allium")]


def test_an_epithet_has_none() -> None:
    """Recommendation 60F.1."""
    assert faults("Allium Ursinum L.") == [("epithet capital", 7, "Ursinum", "ursinum")]


def test_marks_are_written_out() -> None:
    """Article 60.7."""
    assert faults("Hypericum mülleri") == [("marks", 10, "mülleri", "muelleri")]
    assert faults("Allium Mülleri") == [("epithet capital", 7, "Mülleri", "muelleri")]


def test_a_diaeresis_is_let_pass() -> None:
    """Article 60.7 with its examples of genera."""
    assert silent("Isoëtes lacustris L.")
    assert silent("Cephaëlis acuminata")


@pytest.mark.parametrize(
    "name",
    ["Rosa gallica L.", "Brassica nigra (L.) W. D. J. Koch",
     "Gossypium tomentosum Nutt. ex Seem.", "Lithocarpus polystachyus (Wall. ex A. DC.) Rehder",
     "Viburnum ternatum Rehder", "Lysimachia arvensis (L.) U.Manns & Anderb."],
)  # fmt: skip
def test_authors_are_let_pass(name: str) -> None:
    """Articles 46.1, 46.5 and 49.1 (the names with `ex` from memory)."""
    assert silent(name)


def test_authors_keep_their_place() -> None:
    """Article 49.1: the author of the name it rests on stands in parentheses."""
    name = read_scientific_name("Brassica nigra (L.) W. D. J. Koch")
    assert (name.genus, name.epithets) == ("Brassica", ("nigra",))
    assert name.authors == "(L.) W. D. J. Koch"


@pytest.mark.parametrize(
    "name",
    ["Viburnum ternatum Hook. f.", "Rhododendron dalhousieae Hook.f.", "Lilium album L. f. ex Sm."],
)
def test_f_behind_an_author_is_the_son(name: str) -> None:
    """Recommendation 46A: `f.` for filius (from memory)."""
    assert silent(name)


def test_f_before_an_epithet_is_a_form() -> None:
    """Article 24.1; Recommendation 5A for the short form."""
    name = read_scientific_name("Rosa canina L. f. alba")
    assert (name.ranks, name.epithets, name.faults) == (("f.",), ("canina", "alba"), ())


def test_an_autonym_follows_the_author() -> None:
    """Articles 22, 26.3 and 46.1: the author stands before the repeated epithet."""
    assert silent("Rosa gallica L. var. gallica")


def test_ranks_may_follow_one_another() -> None:
    """Article 24.1, example 1 (from memory)."""
    name = read_scientific_name(
        "Saxifraga aizoon var. aizoon subvar. brevifolia f. multicaulis "
        "subf. surculosa Engl. & Irmsch."
    )
    assert name.faults == ()
    assert name.ranks == ("var.", "subvar.", "f.", "subf.")


@pytest.mark.parametrize(
    ("written", "offer"),
    [("ssp.", "subsp."), ("subsp", "subsp."), ("variety", "var."), ("var", "var."),
     ("forma", "f."), ("nothossp.", "nothosubsp.")],
)  # fmt: skip
def test_a_rank_is_written_in_its_own_short_form(written: str, offer: str) -> None:
    """Recommendation 5A."""
    name = f"Allium ursinum {written} ucrainicum"
    assert faults(name) == [("rank spelling", 15, written, offer)]


def test_a_rank_wants_an_epithet() -> None:
    """Article 24.1."""
    assert faults("Allium ursinum subsp.") == [("rank alone", 15, "subsp.", "")]
    assert faults("Allium ursinum subsp. L.") == [("rank alone", 15, "subsp.", "")]


def test_an_epithet_below_the_species_wants_a_rank() -> None:
    """Article 24.1: the epithets are connected by a term that denotes the rank."""
    assert faults("Allium ursinum L. ucrainicum") == [("no rank", 18, "ucrainicum", "")]
    assert faults("Rosa gallica gallica") == [("no rank", 13, "gallica", "")]


@pytest.mark.parametrize(
    "name",
    ["×Agropogon littoralis (Sm.) C. E. Hubb.", "× Agropogon littoralis", "Salix ×capreola",
     "Salix × capreola", "Polypodium vulgare nothosubsp. mantoniae (Rothm.) Schidlay"],
)  # fmt: skip
def test_the_hybrid_sign_stands_before_genus_or_epithet(name: str) -> None:
    """Articles H.3.1 and H.3.2; the space behind it is free (the last name from memory)."""
    assert silent(name)


@pytest.mark.parametrize("name", ["Salix x capreola", "xAgropogon littoralis"])
def test_the_letter_x_is_let_pass(name: str) -> None:
    """Recommendation H.3A: it may stand where the sign is not to be had (from memory)."""
    assert silent(name)
    assert read_scientific_name(name).is_hybrid


@pytest.mark.parametrize(
    "name",
    ["Agrostis L. × Polypogon Desf.", "Salix aurita L. × S. caprea L.",
     "Agrostis stolonifera L. × Polypogon monspeliensis (L.) Desf.",
     "Mentha aquatica L. × M. arvensis L. × M. spicata L.", "Salix aurita x Salix caprea"],
)  # fmt: skip
def test_a_formula_joins_the_names_of_the_parents(name: str) -> None:
    """Article H.2.1 with its examples (the longer ones from memory)."""
    assert silent(name)


def test_a_capital_behind_the_sign_is_an_epithets_where_no_species_follows() -> None:
    """Recommendation 60F.1; the name with a small letter is an example of Article H.3."""
    assert faults("Mentha × Piperita L.") == [("epithet capital", 9, "Piperita", "piperita")]
    assert silent("Agrostis × Polypogon monspeliensis")


def test_a_formula_repeats_the_genus_or_its_initial() -> None:
    """Article H.2.1 and Recommendation H.2A."""
    assert faults("Mentha aquatica × spicata") == [("no genus", 18, "spicata", "M. spicata")]


@pytest.mark.parametrize("name", ["Rosa", "Rosa L.", "×Agropogon P. Fourn."])
def test_a_genus_alone_names_no_plant_of_a_lesson(name: str) -> None:
    assert [kind for kind, *_ in faults(name)] == ["no epithet"]


def test_a_species_that_is_not_named_is_none() -> None:
    assert faults("Rosa sp.") == [("no epithet", 5, "sp.", "")]


def test_a_genus_by_its_initial_is_too_short() -> None:
    assert faults("A. ursinum") == [("genus short", 0, "A.", "")]


def test_signs_in_a_name_are_reported_word_by_word() -> None:
    assert faults("*Allium ursinum* L.") == [
        ("letters", 0, "*Allium", ""),
        ("letters", 8, "ursinum*", ""),
    ]


@pytest.mark.parametrize(
    "name",
    ["Taraxacum officinale agg.", "Rubus fruticosus L. agg.", "Taraxacum sect. Taraxacum",
     "Rosa canina 'Abbotswood'", "Rosa canina sensu lato", "Rosa canina auct. non L."],
)  # fmt: skip
def test_what_the_trade_writes_beside_a_name_is_let_pass(name: str) -> None:
    assert silent(name)


@given(st.text(alphabet="Aa xX×.()-f L.subsp ëé'", max_size=40))
def test_any_text_is_read_and_its_words_are_kept_in_order(text: str) -> None:
    parts = read_scientific_name(text).parts
    starts = [part.text.span.start for part in parts]
    assert starts == sorted(starts)
    assert all(text[p.text.span.start : p.text.span.end] == p.text.value for p in parts)
    assert "".join(part.text.value for part in parts) == "".join(text.split())
