-- Written before the evaluation that it names: a crash in between leaves a key without an evaluation, which is free.
CREATE TABLE IF NOT EXISTS idempotency_keys (
    tenant          $text$ NOT NULL,
    idempotency_key $text$ NOT NULL,
    fingerprint     $text$ NOT NULL,
    evaluation_id   $text$ NOT NULL,
    PRIMARY KEY (tenant, idempotency_key)
);
