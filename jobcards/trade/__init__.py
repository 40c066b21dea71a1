"""The arithmetic of the trade: pure functions of floats, one topic a module, each with its formula and source."""
