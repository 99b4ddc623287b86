"""When a plant can be met, and in which order the plants of a course come."""
