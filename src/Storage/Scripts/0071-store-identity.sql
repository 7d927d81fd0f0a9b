-- One row. store_id: which store it is, for as long as it lives, copies included. generation: how often it was restored from a copy.
-- probe: what readiness writes to see whether anything can be written.
CREATE TABLE store_identity (
    store_id   $text$ NOT NULL,
    generation BIGINT NOT NULL,
    probe      $blob$,
    PRIMARY KEY (store_id)
);
