"""Lay plans: rectangles set out on a cloth of a given width so that they take the least length of it.

`lay_plan` in `pack` is the way in; `pieces` holds what goes in and comes out. The search itself knows only whole
numbers: `problem` scales to them exactly and back.
"""
