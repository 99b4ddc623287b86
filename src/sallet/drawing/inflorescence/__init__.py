"""Flowers in clusters: a frame in space, seen a little from above."""
