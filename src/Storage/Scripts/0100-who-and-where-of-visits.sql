-- Where a visit was, by whom, and when it began: by that it is known again under another record id or without its serial number. Empty where the
-- record does not say; absent of what was stored before, until it is read from the record.
ALTER TABLE visits ADD COLUMN premises $text$;
ALTER TABLE visits ADD COLUMN engineer $text$;
ALTER TABLE visits ADD COLUMN started_at $text$;

CREATE INDEX visits_of_premises ON visits (tenant, premises, finished_at);
CREATE INDEX visits_unplaced ON visits (tenant, evaluation_id) WHERE premises IS NULL;
