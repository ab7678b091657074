"""Plans: one declaration each, made of the rules of the other families."""
