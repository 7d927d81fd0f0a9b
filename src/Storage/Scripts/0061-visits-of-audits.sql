-- Records of audits are visits as well: audit_id and line say where the record and what was said of it stand. Every stored visit has a row,
-- with an empty serial number where its record gives none. is_whole: 0 of what was stored before, until its facts and due dates are made.
ALTER TABLE visits ADD COLUMN audit_id $text$;
ALTER TABLE visits ADD COLUMN line BIGINT;
ALTER TABLE visits ADD COLUMN is_whole INTEGER NOT NULL DEFAULT 1;

-- The evaluation whose record corrects this one.
ALTER TABLE audit_lines ADD COLUMN corrected_by $text$;

UPDATE visits SET is_whole = 0 WHERE facts IS NULL;

INSERT INTO visits (tenant, evaluation_id, serial_number, maker_key, finished_at, record_id, known_at, replaced_at, is_whole)
SELECT e.tenant, e.evaluation_id, '', UPPER(TRIM(COALESCE(e.maker, ''))), e.finished_at, e.record_id, e.evaluated_at, s.evaluated_at, 0
FROM evaluations e LEFT JOIN evaluations s ON s.tenant = e.tenant AND s.evaluation_id = e.superseded_by
WHERE e.serial_number IS NULL;

INSERT INTO visits (tenant, evaluation_id, serial_number, maker_key, finished_at, record_id, known_at, replaced_at, audit_id, line, is_whole)
SELECT l.tenant, l.audit_id || '.' || SUBSTR(CAST(1000000000 + l.line AS TEXT), 2), COALESCE(l.serial_number, ''), UPPER(TRIM(COALESCE(l.maker, ''))),
    l.finished_at, l.record_id, COALESCE(a.finished_at, a.started_at, a.created_at),
    CASE WHEN l.superseded_by IS NULL THEN NULL ELSE COALESCE(a.finished_at, a.started_at, a.created_at) END, l.audit_id, l.line, 0
FROM audit_lines l JOIN audits a ON a.tenant = l.tenant AND a.audit_id = l.audit_id
WHERE l.finished_at IS NOT NULL AND l.record_id IS NOT NULL;

-- Of several of one visit the one that was said last counts.
UPDATE visits SET replaced_at = (
    SELECT MIN(n.known_at) FROM visits n
    WHERE n.tenant = visits.tenant AND n.serial_number = visits.serial_number AND n.maker_key = visits.maker_key AND n.record_id = visits.record_id
        AND n.finished_at > SUBSTR(visits.finished_at, 1, 10) AND n.finished_at < SUBSTR(visits.finished_at, 1, 10) || 'Z'
        AND (n.known_at, n.evaluation_id) > (visits.known_at, visits.evaluation_id))
WHERE replaced_at IS NULL;

CREATE INDEX visits_unfinished ON visits (tenant, evaluation_id) WHERE is_whole = 0;

DROP INDEX evaluations_current;
