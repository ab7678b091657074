"""Money: costs, prices, budgets."""
