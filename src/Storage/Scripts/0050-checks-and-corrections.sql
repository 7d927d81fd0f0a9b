-- Whether a record is one of the checks that GSIUR 1998, regulation 36(3) counts; unknown of what was stored before, and then not counted.
ALTER TABLE evaluations ADD COLUMN landlord_check INTEGER;
ALTER TABLE audit_lines ADD COLUMN landlord_check INTEGER;

-- The line of the same audit whose record corrects this one.
ALTER TABLE audit_lines ADD COLUMN superseded_by BIGINT;

-- Records of an audit that correct an evaluation, with the hash of each record that they thereby replace.
CREATE TABLE audit_corrections (
    tenant        $text$ NOT NULL,
    audit_id      $text$ NOT NULL,
    replaced_hash $text$ NOT NULL,
    line          BIGINT NOT NULL,
    PRIMARY KEY (tenant, audit_id, replaced_hash, line)
);
