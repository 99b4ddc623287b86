"""One flower: from above, from the side, as a head of florets."""
