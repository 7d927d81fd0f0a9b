-- What was said before of a record that is sent again: found by its record id, for it may have lost the serial number meanwhile.
CREATE INDEX visits_of_record ON visits (tenant, record_id, finished_at);
