-- The page of an audit shows the gravest findings first, and those of one rule.
CREATE INDEX audit_findings_by_grade ON audit_findings (tenant, audit_id, grade, line, ordinal);
