"""One plant's lesson: its format, its words, and the values its facts hold."""
