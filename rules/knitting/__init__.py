"""Knitting, and the yarn arithmetic of crochet."""
