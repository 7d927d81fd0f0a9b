-- Moments are text in UTC of one fixed width, so that they sort as they are. Records and evaluations are kept as the bytes they were.
CREATE TABLE IF NOT EXISTS evaluations (
    tenant           TEXT NOT NULL,
    evaluation_id    TEXT NOT NULL,
    record_id        TEXT NOT NULL,
    maker            TEXT,
    serial_number    TEXT,
    finished_at      TEXT NOT NULL,
    evaluated_at     TEXT NOT NULL,
    outcome          TEXT NOT NULL,
    supersedes       TEXT,
    superseded_by    TEXT,
    input_hash       TEXT NOT NULL,
    result_hash      TEXT NOT NULL,
    rule_set_version TEXT NOT NULL,
    shown            TEXT NOT NULL,
    record           BLOB NOT NULL,
    evaluation       BLOB NOT NULL,
    PRIMARY KEY (tenant, evaluation_id)
);

CREATE INDEX IF NOT EXISTS evaluations_of_appliance ON evaluations (tenant, serial_number, maker, finished_at);

CREATE TABLE IF NOT EXISTS appliance_profiles (
    tenant     TEXT NOT NULL,
    profile_id TEXT NOT NULL,
    version    INTEGER NOT NULL,
    limits     TEXT NOT NULL,
    saved_at   TEXT NOT NULL,
    PRIMARY KEY (tenant, profile_id, version)
);
