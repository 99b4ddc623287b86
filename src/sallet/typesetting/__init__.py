"""Templates and values → PDF: the one place that knows the typesetting engine."""
