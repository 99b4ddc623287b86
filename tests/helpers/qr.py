"""Reads the squares of a QR code back, without correcting errors: ISO/IEC 18004, from memory.

Versions 1 to 6 in bytes, which is enough for an address of a hundred letters.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

_BLOCKS: Final = {1: (1, 16), 2: (1, 28), 3: (1, 44), 4: (2, 32), 5: (2, 43), 6: (4, 27)}
"""Of level M: how many blocks a version has, and how many bytes of data each."""
_MASKS: Final[tuple[Callable[[int, int], bool], ...]] = (
    lambda r, c: (r + c) % 2 == 0,
    lambda r, _: r % 2 == 0,
    lambda _, c: c % 3 == 0,
    lambda r, c: (r + c) % 3 == 0,
    lambda r, c: (r // 2 + c // 3) % 2 == 0,
    lambda r, c: r * c % 2 + r * c % 3 == 0,
    lambda r, c: (r * c % 2 + r * c % 3) % 2 == 0,
    lambda r, c: ((r + c) % 2 + r * c % 3) % 2 == 0,
)
_FORMAT_MASK: Final = 0x5412
_BYTES: Final = 0b0100
"""The mode in which each letter is a byte."""


def level_and_mask(squares: Sequence[str]) -> tuple[str, int]:
    """Return the level of error correction and the number of the mask."""
    places = [(8, c) for c in (0, 1, 2, 3, 4, 5, 7, 8)] + [(r, 8) for r in (7, 5, 4, 3, 2, 1, 0)]
    told = _number("".join(squares[r][c] for r, c in places)) ^ _FORMAT_MASK
    return "MLHQ"[told >> 13], told >> 10 & 7


def read_qr(squares: Sequence[str]) -> str:
    """Return the words of a code of level M; rows of `1` for dark and `0` for light."""
    level, mask = level_and_mask(squares)
    assert level == "M"
    size = len(squares)
    bits = "".join(
        str(int(squares[r][c]) ^ _MASKS[mask](r, c))
        for r, c in _way(size)
        if not _is_pattern(r, c, size)
    )
    data = _in_order([_number(bits[at : at + 8]) for at in range(0, len(bits) - 7, 8)], size)
    stream = "".join(f"{byte:08b}" for byte in data)
    mode, count = _number(stream[:4]), _number(stream[4:12])
    assert mode == _BYTES
    return bytes(_number(stream[at : at + 8]) for at in range(12, 12 + 8 * count, 8)).decode()


def _number(bits: str) -> int:
    return int(bits, 2)


def _way(size: int) -> Iterator[tuple[int, int]]:
    """Yield the squares as bits are laid: two columns at a time, up and down, from the right."""
    columns = [c for c in range(size - 1, 0, -2) if c > 6] + [5, 3, 1]
    for number, right in enumerate(columns):
        rows = range(size) if number % 2 else range(size - 1, -1, -1)
        yield from ((row, column) for row in rows for column in (right, right - 1))


def _is_pattern(row: int, column: int, size: int) -> bool:
    """Return whether a square belongs to what a reader finds the code by."""
    near, far = 8, size - 8
    finder = (row <= near and (column <= near or column >= far)) or (row >= far and column <= near)
    middle = size - 7
    aligned = size > 21 and abs(row - middle) <= 2 and abs(column - middle) <= 2
    return finder or aligned or 6 in (row, column)


def _in_order(codewords: Sequence[int], size: int) -> list[int]:
    """Return the data of all blocks, one behind the other: they are laid in turns."""
    blocks, each = _BLOCKS[(size - 17) // 4]
    return [codewords[at * blocks + block] for block in range(blocks) for at in range(each)]
