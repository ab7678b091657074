"""Quilting: patches, triangles, settings, borders, binding, backing, wadding."""
