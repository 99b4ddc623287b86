"""From lessons to a folder of plain files."""
