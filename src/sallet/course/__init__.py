"""A course: its place, its sessions, and which lessons it teaches."""
