-- The one journal of a tenant: what was said and what changed it, each under the next number. Only ever added to.
-- input_hash, result_hash, law_hash, code_hash: SHA-256, lower-case hex, absent where there is none. salt: 16 random bytes, by which
-- something can be said of an entry without saying whose it is.
CREATE TABLE journal (
    tenant      $text$ NOT NULL,
    seq         BIGINT NOT NULL,
    kind        $text$ NOT NULL,
    id          $text$ NOT NULL,
    input_hash  $text$,
    result_hash $text$,
    law_hash    $text$,
    code_hash   $text$,
    at          $text$ NOT NULL,
    key_id      $text$,
    salt        $blob$ NOT NULL,
    PRIMARY KEY (tenant, seq)
);

-- Whose key posted an audit; absent: none was asked for.
ALTER TABLE audits ADD COLUMN key_id $text$;

-- 0 of what an older version wrote, until its entries are made.
ALTER TABLE visits ADD COLUMN in_journal INTEGER NOT NULL DEFAULT 0;
ALTER TABLE visits ADD COLUMN replaced_in_journal INTEGER NOT NULL DEFAULT 0;
ALTER TABLE appliance_profiles ADD COLUMN in_journal INTEGER NOT NULL DEFAULT 0;

CREATE INDEX visits_unjournaled ON visits (tenant, known_at, evaluation_id) WHERE in_journal = 0;
CREATE INDEX visits_replaced_unjournaled ON visits (tenant, replaced_at, evaluation_id) WHERE replaced_at IS NOT NULL AND replaced_in_journal = 0;
CREATE INDEX appliance_profiles_unjournaled ON appliance_profiles (tenant, saved_at, profile_id, version) WHERE in_journal = 0;
