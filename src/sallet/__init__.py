"""sallet: one Markdown file per wild plant in, a checked course out."""

__version__ = "0.1.0"
