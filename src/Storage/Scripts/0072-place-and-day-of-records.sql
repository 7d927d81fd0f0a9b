-- Where an audited record's visit was and on which day, as the record says it; empty where it does not. Absent of what was stored before,
-- until it is read from the record.
ALTER TABLE audit_lines ADD COLUMN premises $text$;
ALTER TABLE audit_lines ADD COLUMN visited_on $text$;

CREATE INDEX audit_lines_unplaced ON audit_lines (tenant, audit_id, line) WHERE visited_on IS NULL;
