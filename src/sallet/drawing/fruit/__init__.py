"""Fruit and seeds: whole, cut, with what holds and covers them."""
