"""Markdown as words for paper: every mark falls away, no word does."""

from __future__ import annotations

from itertools import pairwise
from unicodedata import is_normalized, normalize

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.cards.plain import Run, joined, paragraphs, plain, runs, sentences, text_of


@pytest.mark.parametrize(
    ("markdown", "words"),
    [("Wash *well*, **twice**.", "Wash well, twice."),
     ("Wash _well_, __twice__.", "Wash well, twice."),
     ("See [leaves](#leaves) and [elder](<elder.md> 'the tree').", "See leaves and elder."),
     ("See [the society][1].\n\n[1]: https://example.org", "See the society."),
     ("<https://example.org/a>", "https://example.org/a"),
     ("`raw`", "raw"),
     ("## Cooking\n\nBoil.", "Cooking Boil."),
     ("> Boil.", "Boil."),
     ("1. Boil.\n2. Drain.", "Boil. Drain."),
     ("- Boil.\n- Drain.", "Boil. Drain."),
     ("| part | way |\n|---|---|\n| leaf | raw |", "part way leaf raw"),
     ("```\nBoil.\n```", "Boil."),
     ("    Boil.", "Boil."),
     ("Boil.\n\n---\n\nDrain.", "Boil. Drain."),
     ("Boil.\\\nDrain.", "Boil. Drain."),
     ("Boil.  \nDrain.", "Boil. Drain."),
     (r"2 \* 3 \_ \[x\]", "2 * 3 _ [x]"),
     ("1 &lt; 2 &amp; 3", "1 < 2 & 3")],
)  # fmt: skip
def test_no_mark_of_markdown_is_printed(markdown: str, words: str) -> None:
    assert text_of(runs(markdown)) == words


@pytest.mark.parametrize(
    ("markdown", "words"),
    [("Six petals.[^ages]", "Six petals."),
     ("Six[^a] petals[^memory], white.[^a][^b]", "Six petals, white."),
     ("Six petals [^ages], white.", "Six petals, white."),
     ("Six petals [^ages]. [^memory] White.", "Six petals. White."),
     ("*Six*[^a] petals", "Six petals"),
     ("Never **raw [^memory]**, never **[^a] cold**.", "Never raw, never cold."),
     ("Six [^a]petals", "Six petals")],
)  # fmt: skip
def test_no_citation_is_printed_nor_the_blank_before_it(markdown: str, words: str) -> None:
    assert text_of(runs(markdown)) == words


@pytest.mark.parametrize(
    "html",
    ["<b>raw</b>", "<!-- hidden -->", "<script>alert(1)</script>", "a <br> b", "<div>\nx\n</div>"],
)
def test_raw_html_is_read_as_the_words_it_is(html: str) -> None:
    """As on the pages: a caution inside a tag or a comment is never lost."""
    assert text_of(runs(html)) == " ".join(html.split())


def test_a_citation_in_code_is_code() -> None:
    """As on the pages."""
    assert text_of(runs("`[^ages]`")) == "[^ages]"


def test_a_blank_at_either_side_of_a_mark_is_one() -> None:
    assert runs("a **&#32;b&#32;** c") == (Run("a "), Run("b ", "strong"), Run("c"))
    assert runs("&#32;**&#32;b**") == (Run("b", "strong"),)


def test_a_picture_keeps_its_words() -> None:
    assert "a leaf" in text_of(runs("![a leaf](leaf.jpg)"))
    assert "leaf.jpg" not in text_of(runs("![a leaf](leaf.jpg)"))


def test_emphasis_and_weight_are_kept_as_styles() -> None:
    assert runs("Cut *every* **green** `part`, **the _root_ too**.") == (
        Run("Cut "), Run("every", "emphasis"), Run(" "), Run("green", "strong"), Run(" part, "),
        Run("the ", "strong"), Run("root", "emphasis"), Run(" too", "strong"), Run("."),
    )  # fmt: skip


def test_neighbours_of_one_style_are_one_run() -> None:
    assert runs("**Boil** **twice**") == (
        Run("Boil", "strong"), Run(" "), Run("twice", "strong"),
    )  # fmt: skip
    assert runs("a `b` [c](d.md) e") == (Run("a b c e"),)


def test_each_paragraph_step_and_cell_is_a_paragraph_of_its_own() -> None:
    markdown = "Wash.\n\n1. Boil\n   *long*.\n2. Drain.\n\n| a | b |\n|---|---|\n| c | d |\n"
    assert paragraphs(markdown) == (
        (Run("Wash."),),
        (Run("Boil "), Run("long", "emphasis"), Run(".")),
        (Run("Drain."),),
        *((Run(cell),) for cell in "abcd"),
    )  # fmt: skip


@pytest.mark.parametrize(
    "markdown", ["", " ", "\n\n", "[^memory]", "---", "[1]: https://example.org"]
)
def test_where_there_are_no_words_there_is_nothing(markdown: str) -> None:
    assert (paragraphs(markdown), runs(markdown)) == ((), ())


def test_letters_are_composed_and_a_no_break_space_stays() -> None:
    """Unicode's normal form C: an accent that stands alone might be printed beside its letter."""
    assert runs("cafe\u0301 of 5\u00a0cm") == (Run("caf\u00e9 of 5\u00a0cm"),)
    assert plain("e\u0301") == (Run("\u00e9"),)


def test_words_that_are_no_markdown_keep_their_marks() -> None:
    assert plain(" 2 * 3 * [x] <b> ", "strong") == (Run("2 * 3 * [x] <b>", "strong"),)


def test_runs_stand_behind_each_other_with_something_between_those_that_say_something() -> None:
    parts = (plain("March"), (), plain("raw", "strong"), plain(""), plain("cooked"))
    assert joined(parts, Run("; ")) == (Run("March; "), Run("raw", "strong"), Run("; cooked"))
    assert joined((), Run("; ")) == joined(((),), Run("; ")) == ()


@pytest.mark.parametrize(
    ("parts", "words"),
    [(("stringy", "Cut it."), "stringy. Cut it."),
     (("Cut it.", "Twice"), "Cut it. Twice"),
     (("Raw?", "Never!", "No…", "no"), "Raw? Never! No… no"),
     (("", "stringy", "", "tough"), "stringy. tough"),
     (("stringy", ""), "stringy"),
     ((), "")],
)  # fmt: skip
def test_sentences_are_parted_by_one_full_stop(parts: tuple[str, ...], words: str) -> None:
    assert text_of(sentences(*map(runs, parts))) == words


def test_a_sentence_may_end_in_any_style() -> None:
    assert sentences(runs("*soft.*"), runs("**hard**"), runs("x")) == (
        Run("soft.", "emphasis"), Run(" "), Run("hard", "strong"), Run(". x"),
    )  # fmt: skip


WORD = st.text("abcdefäé½—°0123456789", min_size=1, max_size=6)
WRAPPED = st.sampled_from(
    ["{}", "*{}*", "**{}**", "_{}_", "`{}`", "[{}](elder.md)", "{}[^a]", "{} [^memory]", "***{}***",
     "[*{}*](#x)", "{},"]
)  # fmt: skip
BETWEEN = st.sampled_from([" ", "  ", "\n", " \n", "\n\n", "\t"])
TEXTS = st.lists(st.tuples(WORD, WRAPPED, BETWEEN), min_size=1, max_size=12)


@given(TEXTS)
def test_no_word_is_lost_and_none_is_added(text: list[tuple[str, str, str]]) -> None:
    markdown = "".join(wrapped.format(word) + between for word, wrapped, between in text)
    words = [word + "," * wrapped.endswith(",") for word, wrapped, _ in text]
    found = text_of(runs("x " + markdown))
    assert found.split() == ["x", *words]
    assert "  " not in found
    assert found == found.strip()


@given(st.text(max_size=60))
def test_any_text_has_tidy_runs_of_which_none_is_empty(markdown: str) -> None:
    for paragraph in (*paragraphs(markdown), plain(markdown)):
        text = text_of(paragraph)
        assert all(run.text for run in paragraph)
        assert not text.startswith((" ", "\n", "\t"))
        assert not text.endswith((" ", "\n", "\t"))
        assert not {"\n", "\t"} & set(text)
        assert "  " not in text
        assert all(is_normalized("NFC", run.text) for run in paragraph)
        assert all(a.style != b.style for a, b in pairwise(paragraph))


@given(
    st.text(st.characters(codec="utf-8", exclude_categories=["Cs", "Cc", "Zl", "Zp"]), max_size=40)
)
def test_words_that_are_no_markdown_lose_no_letter(words: str) -> None:
    expected = normalize("NFC", " ".join(filter(None, words.split(" "))))
    assert text_of(plain(words)) == expected
