-- Moments are text in UTC of one fixed width, so that they sort as they are. Records and evaluations are kept as the bytes they were.
CREATE TABLE IF NOT EXISTS evaluations (
    tenant           $text$ NOT NULL,
    evaluation_id    $text$ NOT NULL,
    record_id        $text$ NOT NULL,
    maker            $text$,
    serial_number    $text$,
    finished_at      $text$ NOT NULL,
    evaluated_at     $text$ NOT NULL,
    outcome          $text$ NOT NULL,
    supersedes       $text$,
    superseded_by    $text$,
    input_hash       $text$ NOT NULL,
    result_hash      $text$ NOT NULL,
    rule_set_version $text$ NOT NULL,
    shown            $text$ NOT NULL,
    record           $blob$ NOT NULL,
    evaluation       $blob$ NOT NULL,
    PRIMARY KEY (tenant, evaluation_id)
);

CREATE INDEX IF NOT EXISTS evaluations_of_appliance ON evaluations (tenant, serial_number, maker, finished_at);

CREATE TABLE IF NOT EXISTS appliance_profiles (
    tenant     $text$ NOT NULL,
    profile_id $text$ NOT NULL,
    version    INTEGER NOT NULL,
    limits     $text$ NOT NULL,
    saved_at   $text$ NOT NULL,
    PRIMARY KEY (tenant, profile_id, version)
);
