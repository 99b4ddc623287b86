"""The grammar of what stands behind the colon: states, measures, counts, times, zones."""
