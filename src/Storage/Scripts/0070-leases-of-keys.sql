-- The row of a key is its lock: whoever has inserted it judges, and settles it in the transaction that writes the evaluation.
-- lease_until: until when the row is its holder's, in milliseconds since 1970 by the database's own clock; null once it is settled.
ALTER TABLE idempotency_keys ADD COLUMN lease_until BIGINT;

-- Rows of requests that came to nothing.
DELETE FROM idempotency_keys WHERE NOT EXISTS (
    SELECT 1 FROM evaluations e WHERE e.tenant = idempotency_keys.tenant AND e.evaluation_id = idempotency_keys.evaluation_id);

CREATE INDEX idempotency_keys_of_evaluation ON idempotency_keys (tenant, evaluation_id);
