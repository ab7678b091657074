"""The trade as declarations, and the engine that works them. No I/O, no clock, no printing."""
