"""Step 7, findings: the rules, one file for each part of the record. Each takes a scene and lays findings on the desk."""
