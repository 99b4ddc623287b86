"""The field card of a plant: what stands on it, whether it fits, how cards lie on a sheet."""
