"""Tests of the ways in: command line, rendering, contract, saved tables, help."""
