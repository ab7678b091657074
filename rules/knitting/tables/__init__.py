"""Published tables of the knitting family: only cells that were printed, with the source beside each."""
