"""How an expression is read: its words, its grammar, its tree and the kind of value it gives."""
