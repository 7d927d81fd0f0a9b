-- A key in full is known to its holder alone: here is the SHA-256 of it. A revoked key stays, so that it cannot be forgotten that keys
-- are asked for. scopes: names with blanks between.
CREATE TABLE api_keys (
    key_id      $text$ NOT NULL,
    tenant      $text$ NOT NULL,
    hash        $text$ NOT NULL,
    scopes      $text$ NOT NULL,
    note        $text$ NOT NULL,
    created_at  $text$ NOT NULL,
    expires_at  $text$,
    revoked_at  $text$,
    PRIMARY KEY (key_id)
);

-- Who has signed in with a browser: the SHA-256 of what the browser holds, and the key that it was given for.
CREATE TABLE page_sessions (
    hash       $text$ NOT NULL,
    key_id     $text$ NOT NULL,
    expires_at $text$ NOT NULL,
    PRIMARY KEY (hash)
);
