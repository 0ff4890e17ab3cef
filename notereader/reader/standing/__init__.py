"""Step 5, standing: whether what is said is a finding of this operation."""
