"""Leaves: blades, divided leaves, how they are set and held."""
