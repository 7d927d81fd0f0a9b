-- Written before the evaluation that it names: a crash in between leaves a key without an evaluation, which is free.
CREATE TABLE IF NOT EXISTS idempotency_keys (
    tenant          TEXT NOT NULL,
    idempotency_key TEXT NOT NULL,
    fingerprint     TEXT NOT NULL,
    evaluation_id   TEXT NOT NULL,
    PRIMARY KEY (tenant, idempotency_key)
);
