"""YAML nodes → pydantic models: all faults at once, each at its place, the good fields kept."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches
from typing import TYPE_CHECKING, Any, Final, TypeVar

from pydantic import BaseModel, ValidationError

if TYPE_CHECKING:
    from collections.abc import Sequence

    from sallet.source import Span
    from sallet.yamltext import Node

M = TypeVar("M", bound=BaseModel)

ROUNDS: Final = 4
"""Times that values at fault are set aside: a mapping can lack a key once another is gone."""
_GONE: Final = object()
_EXPECTED: Final = {
    "float_parsing": "a number",
    "int_parsing": "a whole number",
    "string_type": "words",
    "missing": "a value",
    "list_type": "a list",
    "tuple_type": "a list",
    "dict_type": "lines of the form `key: value`",
    "model_type": "lines of the form `key: value`",
    "date_from_datetime_parsing": "a date such as 2027-03-06",
    "date_parsing": "a date such as 2027-03-06",
    "time_parsing": "a time such as 10:30",
    "url_parsing": "an address such as https://example.org/",
    "too_short": "at least one",
}


@dataclass(frozen=True)
class FieldFault:
    """A value that does not fit its field."""

    path: tuple[str | int, ...]
    key: str
    """The key at fault, or the last one above an item of a list."""
    words: str
    expected: str
    span: Span
    unknown: bool = False
    missing: bool = False
    hint: str = ""
    """What to do, where that can be told more exactly than from the key."""


def read_fields(model: type[M], node: Node) -> tuple[M, list[FieldFault]]:
    """Return the model of a mapping, without the values at fault, and the faults.

    The model must be valid when empty: whether a field must be there is for a check to say.
    """
    plain = _without_empty(node.plain())
    faults: list[FieldFault] = []
    for rounds in range(ROUNDS):
        try:
            return model.model_validate(plain), faults
        except ValidationError as error:
            found = [_fault(dict(e), node) for e in error.errors()]
            # A value set aside moves the list items behind it: places hold in round one only.
            faults.extend(fault for fault in found if rounds == 0 or not fault.path)
            for fault in found:
                _mark(plain, fault.path)
            plain = _purged(plain)
    return model.model_validate({}), faults


def json_schema(model: type[BaseModel]) -> dict[str, Any]:
    """Return the JSON Schema of a file's keys, for editors that complete and check as one types."""
    schema = model.model_json_schema(by_alias=True, mode="validation")
    for part in (schema, *schema.get("$defs", {}).values()):
        for name, field in part.get("properties", {}).items():
            if name not in part.get("required", ()):
                # A key with nothing behind it is one that is not filled in yet.
                part["properties"][name] = {"anyOf": [field, {"type": "null"}]}
    return {"$schema": "https://json-schema.org/draft/2020-12/schema"} | schema


def nearest_key(
    words: str, model: type[BaseModel], path: Sequence[str | int] = ()
) -> tuple[str, ...]:
    """Return the keys of a model spelt most like `words`, or all of them."""
    inner = _model_at(model, path[:-1])
    names = [field.alias or name for name, field in inner.model_fields.items()]
    return tuple(get_close_matches(words.casefold(), names, n=3, cutoff=0.5)) or tuple(names)


def _model_at(model: type[BaseModel], path: Sequence[str | int]) -> type[BaseModel]:
    for step in path:
        if isinstance(step, int):
            continue
        for name, field in model.model_fields.items():
            if step in {name, field.alias}:
                model = _inner_model(field.annotation) or model
    return model


def _inner_model(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for inner in getattr(annotation, "__args__", ()):
        found = _inner_model(inner)
        if found:
            return found
    return None


def _without_empty(plain: Any) -> Any:
    # `checked by:` with nothing behind it means that nothing has been filled in yet.
    if isinstance(plain, dict):
        return {k: _without_empty(v) for k, v in plain.items() if v not in ("", None)}
    if isinstance(plain, list):
        return [_without_empty(item) for item in plain]
    return plain


def _fault(error: dict[str, Any], root: Node) -> FieldFault:
    path: tuple[str | int, ...] = error["loc"]
    unknown = error["type"] == "extra_forbidden"
    node = root.reach(path)
    written = root.reach(path[:-1]).key(str(path[-1])) if path else None
    return FieldFault(
        path=path,
        key=next((step for step in reversed(path) if isinstance(step, str)), ""),
        words=str(path[-1]) if unknown else node.text or "",
        expected=_expected(error),
        span=written.span if unknown and written else node.span,
        unknown=unknown,
        missing=error["type"] == "missing",
    )


def _expected(error: dict[str, Any]) -> str:
    kind: str = error["type"]
    context = error.get("ctx", {})
    if kind in {"literal_error", "enum"}:
        return "one of " + str(context["expected"]).replace("'", "`")
    if kind == "value_error":
        return str(context["error"]).removeprefix("expected ")
    if kind == "greater_than_equal":
        return f"a number of at least {context['ge']:g}"
    if kind == "less_than_equal":
        return f"a number of at most {context['le']:g}"
    return _EXPECTED.get(kind, str(error["msg"]).removeprefix("Input should be "))


def _mark(plain: Any, path: Sequence[str | int]) -> None:
    """Mark the innermost value on a path that there is: for a key that is missing, its mapping."""
    holder, key, at = None, None, plain
    for step in path:
        inside = isinstance(at, dict) and step in at
        if not inside and not (isinstance(at, list) and isinstance(step, int) and step < len(at)):
            break
        holder, key, at = at, step, at[step]
    if holder is not None:
        holder[key] = _GONE


def _purged(plain: Any) -> Any:
    if isinstance(plain, dict):
        return {k: _purged(v) for k, v in plain.items() if v is not _GONE}
    if isinstance(plain, list):
        return [_purged(item) for item in plain if item is not _GONE]
    return plain
