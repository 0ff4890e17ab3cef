"""Step 7, findings: the rules, a file for each part of the record. Each takes a scene, lays findings on the desk."""
