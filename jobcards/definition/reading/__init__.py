"""How a file is read: YAML into plain nodes, nodes into models."""
