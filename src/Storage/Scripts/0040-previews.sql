-- What a job of the queue does: audit, or preview: judge stored evaluations anew by the rules in force and by a candidate (packed JSON).
ALTER TABLE audits ADD COLUMN kind $text$ NOT NULL DEFAULT 'audit';
ALTER TABLE audits ADD COLUMN candidate $blob$;

-- The evaluations that count, without reading their records.
CREATE INDEX evaluations_current ON evaluations (tenant, evaluation_id, finished_at) WHERE superseded_by IS NULL;

-- One row for each finding that the candidate would bring, change or take away, and for each evaluation that could not be judged anew.
CREATE TABLE preview_changes (
    tenant         $text$ NOT NULL,
    audit_id       $text$ NOT NULL,
    line           BIGINT NOT NULL,
    ordinal        INTEGER NOT NULL,
    change         $text$ NOT NULL,
    evaluation_id  $text$ NOT NULL,
    record_id      $text$ NOT NULL,
    finished_on    $text$ NOT NULL,
    maker          $text$ NOT NULL,
    model          $text$ NOT NULL,
    serial_number  $text$ NOT NULL,
    engineer       $text$ NOT NULL,
    rule_id        $text$ NOT NULL,
    topic          $text$ NOT NULL,
    subject        $text$ NOT NULL,
    outcome        $text$ NOT NULL,
    outcome_before $text$ NOT NULL,
    message        $text$ NOT NULL,
    message_before $text$ NOT NULL,
    PRIMARY KEY (tenant, audit_id, line, ordinal)
);

CREATE INDEX preview_changes_of_evaluation ON preview_changes (tenant, evaluation_id);
