-- The list of evaluations. changed: the number of the journal's last entry about an evaluation; absent until that is made. replaced_by: the
-- evaluation that counts in its place, where that is known. outcome, closing, closes_as, job_type as the evaluation and its record give them.
-- Where a visit was, by whom, and when it began; engineer_key and premises_key as they are compared, empty where the
-- record does not say. All absent of what was stored before, until it is read.
ALTER TABLE visits ADD COLUMN changed BIGINT;
ALTER TABLE visits ADD COLUMN replaced_by $text$;
ALTER TABLE visits ADD COLUMN outcome $text$;
ALTER TABLE visits ADD COLUMN closing $text$;
ALTER TABLE visits ADD COLUMN closes_as $text$;
ALTER TABLE visits ADD COLUMN job_type $text$;
ALTER TABLE visits ADD COLUMN engineer $text$;
ALTER TABLE visits ADD COLUMN engineer_key $text$;
ALTER TABLE visits ADD COLUMN premises $text$;
ALTER TABLE visits ADD COLUMN premises_key $text$;
ALTER TABLE visits ADD COLUMN started_at $text$;

CREATE INDEX journal_of_id ON journal (tenant, id);

UPDATE visits SET changed = (
    SELECT MAX(j.seq) FROM journal j WHERE j.tenant = visits.tenant AND j.id = visits.evaluation_id AND j.kind IN ('evaluation', 'supersession'))
WHERE in_journal = 1;

UPDATE visits SET replaced_by = (SELECT e.superseded_by FROM evaluations e WHERE e.tenant = visits.tenant AND e.evaluation_id = visits.evaluation_id)
WHERE audit_id IS NULL AND replaced_at IS NOT NULL;

UPDATE visits SET replaced_by = (
    SELECT COALESCE(l.corrected_by, l.audit_id || '.' || SUBSTR(CAST(1000000000 + l.superseded_by AS TEXT), 2)) FROM audit_lines l
    WHERE l.tenant = visits.tenant AND l.audit_id = visits.audit_id AND l.line = visits.line)
WHERE audit_id IS NOT NULL AND replaced_at IS NOT NULL;

CREATE INDEX visits_by_change ON visits (tenant, changed);
CREATE INDEX visits_by_day ON visits (tenant, SUBSTR(finished_at, 1, 10));
CREATE INDEX visits_of_engineer ON visits (tenant, engineer_key, changed);
CREATE INDEX visits_of_premises ON visits (tenant, premises_key, finished_at);
CREATE INDEX visits_unlisted ON visits (tenant, evaluation_id) WHERE outcome IS NULL;
