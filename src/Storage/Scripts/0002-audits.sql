-- Whether a record falls under the landlord's duty to keep it; unknown of what was stored before, and then kept as if it did.
ALTER TABLE evaluations ADD COLUMN landlord INTEGER;

-- state: receiving (its records are still arriving), queued, running, completed, cancelled, failed.
CREATE TABLE audits (
    tenant          $text$ NOT NULL,
    audit_id        $text$ NOT NULL,
    state           $text$ NOT NULL,
    created_at      $text$ NOT NULL,
    heard_at        $text$ NOT NULL,
    started_at      $text$,
    finished_at     $text$,
    looked_at_on    $text$ NOT NULL,
    idempotency_key $text$,
    body_hash       $text$,
    records_read    BIGINT NOT NULL,
    reason          $text$,
    summary         $blob$,
    PRIMARY KEY (tenant, audit_id)
);

CREATE UNIQUE INDEX audits_of_key ON audits (tenant, idempotency_key);

-- What is still to be judged: some records each, by the number of the first. claim and lease_until: who works on it, and until when
-- nobody else does. Judged, a chunk keeps its sums and gives its records up.
CREATE TABLE audit_chunks (
    tenant      $text$ NOT NULL,
    audit_id    $text$ NOT NULL,
    chunk       BIGINT NOT NULL,
    records     INTEGER NOT NULL,
    is_done     INTEGER NOT NULL,
    attempts    INTEGER NOT NULL,
    claim       $text$,
    lease_until $text$,
    judged      INTEGER NOT NULL,
    rejected    INTEGER NOT NULL,
    payload     $blob$ NOT NULL,
    sums        $blob$,
    PRIMARY KEY (tenant, audit_id, chunk)
);

CREATE INDEX audit_chunks_open ON audit_chunks (tenant, audit_id, chunk) WHERE is_done = 0;

-- answer: the line as it is shown, packed; record: the record as it was sent, packed.
CREATE TABLE audit_lines (
    tenant        $text$ NOT NULL,
    audit_id      $text$ NOT NULL,
    line          BIGINT NOT NULL,
    record_id     $text$,
    maker         $text$,
    serial_number $text$,
    finished_at   $text$,
    landlord      INTEGER,
    outcome       $text$ NOT NULL,
    result_hash   $text$,
    record        $blob$ NOT NULL,
    answer        $blob$ NOT NULL,
    PRIMARY KEY (tenant, audit_id, line)
);

CREATE INDEX audit_lines_of_appliance ON audit_lines (tenant, serial_number, maker, finished_at);

-- grade sorts by gravity. A fault of a rejected record is a row as well.
CREATE TABLE audit_findings (
    tenant        $text$ NOT NULL,
    audit_id      $text$ NOT NULL,
    line          BIGINT NOT NULL,
    ordinal       INTEGER NOT NULL,
    record_id     $text$ NOT NULL,
    maker         $text$ NOT NULL,
    model         $text$ NOT NULL,
    serial_number $text$ NOT NULL,
    engineer      $text$ NOT NULL,
    rule_id       $text$ NOT NULL,
    topic         $text$ NOT NULL,
    grade         $text$ NOT NULL,
    outcome       $text$ NOT NULL,
    subject       $text$ NOT NULL,
    message       $text$ NOT NULL,
    PRIMARY KEY (tenant, audit_id, line, ordinal)
);
