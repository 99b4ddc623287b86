"""What can be learnt from the facts: the words used, what separates what."""
