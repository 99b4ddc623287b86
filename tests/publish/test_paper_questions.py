"""The test paper and its answers."""

from __future__ import annotations

import pytest

from helpers.courses import site_of
from helpers.papers import (
    HOSTILE,
    WRITTEN,
    assert_is_sound,
    bare,
    demo_site,
    info_of,
    letter_site,
    pages_of,
    pdfs_of,
    sizes_of,
    structure_of,
    text_of,
    words_of,
)
from helpers.workshop import lesson_of
from sallet.cards.plain import Run
from sallet.publish.paper_questions import (
    PaperQuestion,
    answers_data,
    letter,
    paper_data,
    paper_questions,
    question_papers,
)

ELDER = """---
name: Elder
---
## Questions
1. Which part is *never* eaten raw?[^f]
   - [ ] None of it.
   - [x] The **berries**.
   > They upset the stomach.
2. What is cut away?
   - [x] The stalks.
   - [ ] The flowers.

[^f]: A flora.
"""
YEW = "---\nname: Yew\n---\n## Questions\n1. Is it safe?\n   - [ ] Yes.\n   - [x] No.\n"
PAPERS = ["print/test-paper.pdf", "print/test-answers.pdf"]


# ---- the questions ------------------------------------------------------------------------


def test_questions_are_numbered_through_and_know_plant_letters_and_feedback() -> None:
    lessons = [lesson_of(ELDER), lesson_of(YEW)]
    assert paper_questions(lessons) == (
        PaperQuestion(
            number=1,
            plant="Elder",
            prompt=(Run("Which part is "), Run("never", "emphasis"), Run(" eaten raw?")),
            options=((Run("None of it."),), (Run("The "), Run("berries", "strong"), Run("."))),
            right=("B",),
            feedback=(Run("They upset the stomach."),),
        ),
        PaperQuestion(
            number=2,
            plant="Elder",
            prompt=(Run("What is cut away?"),),
            options=((Run("The stalks."),), (Run("The flowers."),)),
            right=("A",),
        ),
        PaperQuestion(
            number=3,
            plant="Yew",
            prompt=(Run("Is it safe?"),),
            options=((Run("Yes."),), (Run("No."),)),
            right=("B",),
        ),
    )


def test_a_draft_may_have_no_right_option_or_several() -> None:
    text = ELDER.replace("[ ] None", "[x] None").replace("[x] The stalks", "[ ] The stalks")
    assert [q.right for q in paper_questions([lesson_of(text)])] == [("A", "B"), ()]


@pytest.mark.parametrize(("at", "expected"), [(0, "A"), (25, "Z"), (26, "AA"), (51, "ZZ")])
def test_options_are_lettered(at: int, expected: str) -> None:
    assert letter(at) == expected


def test_questions_stand_in_the_order_of_the_season() -> None:
    early = YEW + "\n## Season\n- leaves: January\n\n## Edible parts\n- leaves: January; raw\n"
    late = ELDER + "\n## Season\n- fruit: September\n\n## Edible parts\n- fruit: September; raw\n"
    site = site_of({"course.yml": "", "a.md": late, "b.md": early})
    assert [q.plant for q in paper_questions(site.ordered)] == ["Yew", "Elder", "Elder"]


# ---- what the templates are given ---------------------------------------------------------


def test_the_paper_is_given_no_answer() -> None:
    site = site_of({"course.yml": "title: Hedge\n", "elder.md": ELDER})
    data = paper_data(paper_questions(site.ordered), site)
    assert data == {
        "title": "Test paper · Hedge",
        "course": "Hedge",
        "author": [],
        "language": "en",
        "paper": {"width": 210, "height": 297},
        "draft": False,
        "count": 2,
        "plants": [
            {
                "name": "Elder",
                "questions": [
                    {
                        "number": 1,
                        "prompt": [
                            ["Which part is ", "plain"],
                            ["never", "emphasis"],
                            [" eaten raw?", "plain"],
                        ],
                        "letters": ["A", "B"],
                        "options": [
                            [["None of it.", "plain"]],
                            [["The ", "plain"], ["berries", "strong"], [".", "plain"]],
                        ],
                    },
                    {
                        "number": 2,
                        "prompt": [["What is cut away?", "plain"]],
                        "letters": ["A", "B"],
                        "options": [[["The stalks.", "plain"]], [["The flowers.", "plain"]]],
                    },
                ],
            }
        ],
    }


def test_the_answers_have_letter_words_and_feedback() -> None:
    site = site_of({"course.yml": "", "elder.md": ELDER})
    data = answers_data(paper_questions(site.ordered), site)
    assert data["title"] == "Answers to the test paper"
    assert data["unread"] == "Elder"
    assert data["plants"] == [
        {
            "name": "Elder",
            "questions": [
                {
                    "number": 1,
                    "right": [
                        ["B", [["The ", "plain"], ["berries", "strong"], [".", "plain"]]],
                    ],
                    "feedback": [["They upset the stomach.", "plain"]],
                },
                {"number": 2, "right": [["A", [["The stalks.", "plain"]]]], "feedback": []},
            ],
        }
    ]


def test_a_course_without_questions_has_neither_paper() -> None:
    assert (
        list(question_papers(site_of({"course.yml": "", "yew.md": "---\nname: Yew\n---\n"}))) == []
    )


# ---- in print -----------------------------------------------------------------------------


def test_which_option_is_right_changes_nothing_of_the_paper() -> None:
    """Not a byte: neither ink nor text layer, metadata or reading order can tell."""
    turned = ELDER.replace("[ ] None", "[x] None").replace("[x] The **", "[ ] The **")
    papers = [
        pdfs_of(question_papers(site_of({"course.yml": "", "elder.md": text})))
        for text in (ELDER, turned)
    ]
    paper, answers = PAPERS
    assert papers[0][paper] == papers[1][paper]
    assert papers[0][answers] != papers[1][answers]


def test_the_words_of_a_lesson_are_never_read_as_commands() -> None:
    text = YEW.replace("Is it safe?", WRITTEN).replace("Yes.", WRITTEN).replace("No.", WRITTEN)
    for pdf in pdfs_of(question_papers(letter_site(**{"yew.md": text}))).values():
        assert bare(HOSTILE) in text_of(pdf)


def test_a_question_longer_than_a_page_is_not_cut() -> None:
    long = " ".join(f"word{number}" for number in range(2000))
    pdf = pdfs_of(question_papers(letter_site(**{"yew.md": YEW.replace("Is it safe?", long)})))
    assert bare(long) in text_of(pdf["print/test-paper.pdf"])


def test_a_draft_says_so_on_both_papers() -> None:
    site = site_of({"course.yml": "", "elder.md": ELDER}, draft=True)
    for pdf in pdfs_of(question_papers(site)).values():
        assert words_of(pdf).count("Draft. This course has faults that must be mended first.") == 1


def test_the_papers_of_the_demo_course() -> None:
    """Every question whole on one page, with its options; every answer with its feedback."""
    site = demo_site()
    papers = pdfs_of(question_papers(site))
    assert list(papers) == PAPERS
    for pdf in papers.values():
        assert_is_sound(pdf)
        assert set(sizes_of(pdf)) == {(210, 297)}
    paper, answers = papers.values()
    pages, answered = pages_of(paper), text_of(answers)
    for question in paper_questions(site.ordered):
        words = "".join(run.text for run in question.prompt)
        options = ("".join(run.text for run in option) for option in question.options)
        lettered = (a + o for a, o in zip(question.letters, options, strict=True))
        whole = bare("".join([f"{question.number}.", words, *lettered]))
        feedback = bare("".join(run.text for run in question.feedback))
        assert [whole in page for page in pages].count(True) == 1
        assert feedback in answered
        assert feedback not in "".join(pages)
    for told in (words_of(paper), structure_of(paper), *info_of(paper).values()):
        assert "correct" not in told.casefold()


def test_the_same_course_gives_the_same_bytes() -> None:
    site = letter_site(**{"elder.md": ELDER})
    assert pdfs_of(question_papers(site)) == pdfs_of(question_papers(site))
