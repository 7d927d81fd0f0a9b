-- What falls due by what the records say: some rows for each evaluation. Of one kind and subject (an appliance, an instrument, an
-- engineer's category) the row of the latest visit counts; those of an evaluation that is replaced are removed.
CREATE TABLE due_dates (
    tenant        $text$ NOT NULL,
    evaluation_id $text$ NOT NULL,
    kind          $text$ NOT NULL,
    subject_key   $text$ NOT NULL,
    finished_at   $text$ NOT NULL,
    due_on        $text$ NOT NULL,
    detail        $text$ NOT NULL,
    PRIMARY KEY (tenant, evaluation_id, kind, subject_key)
);

CREATE INDEX due_dates_by_day ON due_dates (tenant, due_on, kind, subject_key);

CREATE INDEX due_dates_of_subject ON due_dates (tenant, kind, subject_key, finished_at, evaluation_id);
