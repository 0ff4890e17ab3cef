"""Step 8, drafting: which findings are proposed, made to agree, and looked at twice."""
