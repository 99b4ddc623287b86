"""Stems: cut across, a piece from the side, how they grow."""
