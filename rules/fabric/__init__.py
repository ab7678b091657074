"""Fabric: how much cloth."""
