"""A lesson's Markdown → HTML: citations become links to its sources, raw HTML stays text."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import TYPE_CHECKING, Any, Final
from urllib.parse import unquote, urlsplit

from markdown_it import MarkdownIt
from markupsafe import Markup

from sallet.lesson.citations import CITATION
from sallet.lesson.model import MEMORY
from sallet.lesson.places import place_named
from sallet.lesson.reading import slug_of
from sallet.publish.anchors import TOP

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from markdown_it.renderer import RendererHTML
    from markdown_it.rules_inline import StateInline
    from markdown_it.token import Token

LESSON_END: Final = ".md"
PAGE_END: Final = ".html"
FROM_MEMORY: Final = Markup(
    '<span aria-hidden="true">[m]</span><span class="unseen">from memory, not yet checked</span>'
)
RANGED: Final = {
    "text-align:left": "ranged-left",
    "text-align:center": "centred",
    "text-align:right": "ranged-right",
}
"""How a column of a table is set, as classes: the pages allow no style inside the text."""


@dataclass(frozen=True)
class Scribe:
    """Renders the prose of one page."""

    numbers: Mapping[str, int] = field(default_factory=dict)
    """The number of each source on the page, by its key."""
    plants: str = ""
    """The way from the page to the folder of plant pages, ending in a slash if not empty."""
    places: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    """The ids of every plant's page by heading, by the page's name: where links may lead."""
    here: str = ""
    """The name of the page, where it is a plant's."""
    page: str = ""
    """The way to the plant's page, where its words are set on another one; else nothing."""

    def text(self, markdown: str) -> Markup:
        """Return running text as paragraphs and lists."""
        html = _parser().render(markdown, {"scribe": self})
        return Markup(html.strip())  # noqa: S704 - markdown-it escapes all text

    def line(self, markdown: str) -> Markup:
        """Return a run of words, without a paragraph round it."""
        html = _parser().renderInline(" ".join(markdown.split()), {"scribe": self})
        return Markup(html)  # noqa: S704 - as above

    def mark(self, key: str) -> Markup:
        """Return the mark of one citation."""
        if key == MEMORY:
            # Only a plant's page lists its sources; the words of course.yml have none to lead to.
            if not self.here:
                return Markup('<sup class="cite">{}</sup>').format(FROM_MEMORY)
            return Markup('<sup class="cite"><a href="{}#source-memory">{}</a></sup>').format(
                self.page, FROM_MEMORY
            )
        number = self.numbers.get(key)
        if number is None:
            return Markup('<sup class="cite">[{}]</sup>').format(key)
        return Markup(
            '<sup class="cite"><a href="{1}#source-{0}">'
            '<span class="unseen">source </span>[{0}]</a></sup>'
        ).format(number, self.page)

    def way(self, target: str) -> str | None:
        """Return where a link inside the course leads; None to a lesson that has no page here."""
        path, _, place = unquote(target).partition("#")
        name = slug_of(path) if path else self.here
        if name not in self.places or (path and not path.endswith((LESSON_END, PAGE_END))):
            return None if path.endswith(LESSON_END) else target
        page = f"{self.plants}{name}{PAGE_END}" if path else self.page
        ident = self.places[name].get(place_named(place), "" if path else TOP)
        return f"{page}#{ident}" if ident else page

    def marks(self, keys: Sequence[str]) -> Markup:
        """Return the marks of some citations, each once."""
        return Markup("").join(self.mark(key) for key in dict.fromkeys(keys))


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False}).enable("table")
    parser.disable(["image"])
    parser.inline.ruler.before("link", "citation", _citation)
    parser.add_render_rule("citation", _render_citation)
    parser.add_render_rule("link_open", _render_link)
    parser.add_render_rule("th_open", _render_cell)
    parser.add_render_rule("td_open", _render_cell)
    return parser


def _citation(state: StateInline, silent: bool) -> bool:  # noqa: FBT001 - the parser's signature
    match = CITATION.match(state.src, state.pos, state.posMax)
    if match is None:
        return False
    if not silent:
        state.push("citation", "", 0).content = match[1]
    state.pos = match.end()
    return True


def _render_citation(
    renderer: RendererHTML,  # noqa: ARG001
    tokens: Sequence[Token],
    index: int,
    options: Mapping[str, Any],  # noqa: ARG001
    env: Mapping[str, Any],
) -> str:
    return str(env["scribe"].mark(tokens[index].content))


def _render_link(
    renderer: RendererHTML,
    tokens: Sequence[Token],
    index: int,
    options: Any,
    env: Any,
) -> str:
    token = tokens[index]
    target = str(token.attrGet("href") or "")
    if urlsplit(target).scheme:
        token.attrSet("rel", "noopener noreferrer")
        return renderer.renderToken(tokens, index, options, env)
    way = env["scribe"].way(target)
    if way is None:
        # The words stay, without a link: not every lesson at hand is taught in every course.
        ends = (t for t in tokens[index:] if t.type == "link_close")
        next(ends).tag = token.tag = "span"
        token.attrs = {}
    else:
        token.attrSet("href", way)
    return renderer.renderToken(tokens, index, options, env)


def _render_cell(
    renderer: RendererHTML, tokens: Sequence[Token], index: int, options: Any, env: Any
) -> str:
    style = tokens[index].attrs.pop("style", None)
    if style:
        tokens[index].attrSet("class", RANGED[str(style)])
    return renderer.renderToken(tokens, index, options, env)
