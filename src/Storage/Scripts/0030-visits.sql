-- Visits as an appliance's history sees them: one row for each evaluation with a serial number. replaced_at: since when another evaluation
-- of the same visit counts instead, because it superseded this one or was asked for later on the same day under the same record id.
-- facts: what the rules over history read, packed; empty for what was stored before this table, and then made from the record.
CREATE TABLE visits (
    tenant        $text$ NOT NULL,
    evaluation_id $text$ NOT NULL,
    serial_number $text$ NOT NULL,
    maker_key     $text$ NOT NULL,
    finished_at   $text$ NOT NULL,
    record_id     $text$ NOT NULL,
    known_at      $text$ NOT NULL,
    replaced_at   $text$,
    facts         $blob$,
    PRIMARY KEY (tenant, evaluation_id)
);

INSERT INTO visits (tenant, evaluation_id, serial_number, maker_key, finished_at, record_id, known_at, replaced_at)
SELECT e.tenant, e.evaluation_id, e.serial_number, UPPER(TRIM(COALESCE(e.maker, ''))), e.finished_at, e.record_id, e.evaluated_at, s.evaluated_at
FROM evaluations e LEFT JOIN evaluations s ON s.tenant = e.tenant AND s.evaluation_id = e.superseded_by
WHERE e.serial_number IS NOT NULL;

CREATE INDEX visits_of_appliance ON visits (tenant, serial_number, finished_at);
