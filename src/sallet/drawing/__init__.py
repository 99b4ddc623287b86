"""Plants drawn from their recorded characters: ink on paper, as SVG.

A drawing shows what a lesson records and nothing else. What is missing is left out, or dotted
where a line cannot do without it, and said.
"""
