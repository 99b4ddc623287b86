"""An integer programme in which one wish is met after another, solved by HiGHS.

It is solved on one thread, from a fixed seed, by no clock, so that the same course gets the same
plan on every day. Should a wish need more branchings than it is given, the best plan found by then
stands: everything that must hold does hold in it, only that no better one exists is unproven.
"""

from __future__ import annotations

from math import floor, inf
from typing import TYPE_CHECKING, Final

import highspy

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

NODES: Final = 1000
"""Branchings for one wish; trial courses of up to 136 plants in 40 sessions took up to 610."""
NO_LIMIT: Final = highspy.kHighsIInf
OPTIONS: Final[Mapping[str, bool | int | float]] = {
    "output_flag": False,
    "threads": 1,
    "random_seed": 1,
    "mip_rel_gap": 0.0,
    # Every wish is counted in whole numbers, so half of one is as good as none.
    "mip_abs_gap": 0.5,
    # To start over, and to search the neighbourhood of a plan, costs more than it saves here.
    "mip_allow_restart": False,
    "mip_heuristic_run_rens": False,
    "mip_heuristic_run_rins": False,
}
_TINY: Final = 1e-5
"""What the solver's sums may be out by; all that is summed are whole numbers."""


class _Quiet(highspy.Highs):
    """HiGHS without the heading that it prints while its callbacks are set up."""

    def __init__(self) -> None:
        super(highspy.Highs, self).__init__()


class Programme:
    """An integer programme in which one wish is met after another; columns run from 0 to 1.

    No solution is handed to HiGHS to start from: version 1.16 can then reckon a plan of its reduced
    programme at less than it costs, and stop before it has found the best.
    """

    def __init__(self) -> None:
        self.solver = _Quiet()
        for name, value in OPTIONS.items():
            self.solver.setOptionValue(name, value)
        self.values: list[float] = []
        self.whole: list[int] = []

    def column(self, *, whole: bool = False) -> int:
        """Return a new column; nothing is taken yet, which is always allowed."""
        number = len(self.values)
        self.solver.addVar(0.0, 1.0)
        self.values.append(0.0)
        if whole:
            self.solver.changeColIntegrality(number, highspy.HighsVarType.kInteger)
            self.whole.append(number)
        return number

    def row(self, terms: Mapping[int, int], least: float, most: float) -> None:
        """Ask that a sum of columns lies between two numbers."""
        factors = [float(factor) for factor in terms.values()]
        self.solver.addRow(float(least), float(most), len(terms), [*terms], factors)

    def minimise(self, cost: Mapping[int, int], nodes: int = NODES) -> None:
        """Make a sum as small as it can be with so many branchings, and hold it there."""
        if not any(cost.values()):
            return
        self.solver.setOptionValue("mip_max_nodes", nodes)
        columns = range(len(self.values))
        costs = [float(cost.get(column, 0)) for column in columns]
        self.solver.changeColsCost(len(costs), [*columns], costs)
        relaxed = self._solved(relaxed=True)
        self._take(relaxed.col_value if self._is_whole(relaxed) else None, cost)
        best = floor(_sum(cost, self.values) + _TINY)
        if best - _sum(cost, relaxed.col_value) < _TINY:
            self._keep_to(relaxed)
        else:
            self.row(cost, -inf, best)

    def _solved(self, *, relaxed: bool) -> highspy.HighsSolution:
        self.solver.setOptionValue("solve_relaxation", relaxed)
        self.solver.run()
        return self.solver.getSolution()

    def _is_whole(self, found: highspy.HighsSolution) -> bool:
        values = found.col_value
        return all(abs(values[column] - round(values[column])) < _TINY for column in self.whole)

    def _take(self, values: Sequence[float] | None, cost: Mapping[int, int]) -> None:
        # Where the branchings ran out, what was found before may still be the best.
        if values is None:
            found = self._solved(relaxed=False)
            values = found.col_value if found.value_valid else self.values
        self.values = min([*values], self.values, key=lambda those: _sum(cost, those))

    def _keep_to(self, best: highspy.HighsSolution) -> None:
        """Hold a wish that costs no more in whole numbers than in fractions.

        Whatever has a price in the solution in fractions stays as it is there: just so do all the
        other best solutions. This leaves the solver less to do than a row that holds the sum.
        """
        for column, (price, value) in enumerate(zip(best.col_dual, best.col_value, strict=True)):
            if abs(price) > _TINY:
                self.solver.changeColBounds(column, float(round(value)), float(round(value)))
        for row, (price, value) in enumerate(zip(best.row_dual, best.row_value, strict=True)):
            if abs(price) > _TINY:
                self.solver.changeRowBounds(row, float(round(value)), float(round(value)))


def _sum(cost: Mapping[int, int], values: Sequence[float]) -> float:
    return sum(price * values[column] for column, price in cost.items())
